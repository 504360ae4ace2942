#include "book/state_query.h"
#include "command/columns.h"
#include "command/open_book.h"
#include "command/verb.h"
#include "gis/crs_search.h"
#include "gis/site_bodies.h"
#include "gis/site_file.h"
#include "method/site/station.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <map>
#include <memory>
#include <random>

namespace groundcount::command {
namespace {

struct SiteOptions {
    std::string file, book, as, crs, units, layer, obstacleKind = "structure", material, proctor, minimum, station, by, key;
    int testsPerLift = 0;
};

const char* word(gis::SiteForm form)
{
    return form == gis::SiteForm::Point ? "point" : form == gis::SiteForm::Line ? "line" : "area";
}

std::string listed(const gis::SiteFile& file)
{
    std::string out = file.format + ", " + (file.crsName.empty() ? "no coordinate system named" : file.crsName)
                      + (file.unit.empty() ? "" : ", counted in " + file.unit);
    std::map<std::pair<std::string, gis::SiteForm>, int> counts;
    for (const auto& feature : file.features)
        ++counts[{feature.layer, feature.form}];
    Columns columns({Align::Left, Align::Left, Align::Right});
    for (const auto& [key, count] : counts)
        columns.add({key.first, word(key.second), std::to_string(count)});
    for (const auto& body : file.alignments)
        columns.add({nlohmann::json::parse(body).value("name", ""), "alignment", std::to_string(nlohmann::json::parse(body).at("elements").size()) + " elements"});
    out += "\n" + columns.text();
    for (const auto& note : file.notes)
        out += (out.ends_with('\n') ? "" : "\n") + std::string("note: ") + note;
    return out;
}

std::string freshId()
{
    std::random_device random;  // subjects need to be unique, not secret
    char text[40];
    std::snprintf(text, sizeof text, "%08x-%04x-4%03x-%04x-%08x%04x", random(), random() & 0xffffU, random() & 0xfffU, 0x8000U | (random() & 0x3fffU),
                  random(), random() & 0xffffU);
    return text;
}

Result<gis::SiteAnswers> answersOf(const SiteOptions& options)
{
    gis::SiteAnswers answers;
    answers.unit = options.units;
    answers.layer = options.layer;
    answers.fileName = std::filesystem::path(options.file).filename().string();
    if (options.crs.empty())
        return answers;
    const std::string digits = options.crs.starts_with("EPSG:") ? options.crs.substr(5) : options.crs;
    if (digits.empty() || digits.size() > 6 || !std::all_of(digits.begin(), digits.end(), [](char c) { return c >= '0' && c <= '9'; }))
        return refused("A coordinate system is named by its EPSG code, for example EPSG:6411; it is \"" + options.crs + "\". \"groundbook crs\" searches.");
    answers.epsg = std::stoi(digits);
    return answers;
}

template <class Row>
Result<std::string> calledOnly(const Result<std::vector<Row>>& rows, const std::string& name, const char* what)
{
    if (!rows)
        return tl::unexpected(rows.error());
    for (const auto& row : *rows)
        if (row.name == name)
            return row.id;
    return refused("A lot needs its " + std::string(what) + "; the book has none called \"" + name + "\".");
}

/// A station as the plans write it, or as its plain number, as decimal text; "" stays.
Result<std::string> decimalStation(std::string text, const book::JobRow& job)
{
    const auto plus = text.find('+');
    if (plus == std::string::npos)
        return text;
    if (const auto read = method::parseStation(text, job.gridUnit == "m" ? 1000.0 : 100.0); !read)
        return tl::unexpected(read.error());
    return text.erase(plus, 1);
}

Result<std::vector<book::Body>> bodiesOf(const gis::SiteFile& file, const SiteOptions& options, const book::Store& store)
{
    const book::StateQuery query(store);
    const auto job = query.job();
    const auto answers = answersOf(options);
    if (!job || !answers)
        return tl::unexpected(job ? answers.error() : job.error());
    if (options.as == "alignment") {
        const auto station = decimalStation(options.station, *job);
        return station ? gis::alignmentBodies(file, *job, *answers, *station) : tl::unexpected(station.error());
    }
    if (file.format == "LandXML")
        return refused("From a LandXML file only alignments are taken; asked for is " + options.as + ".");
    const auto features = gis::placedInJob(file, *job, *answers);
    if (!features)
        return tl::unexpected(features.error());
    if (options.as == "obstacle")
        return gis::obstacleBodies(*features, *job, options.obstacleKind, answers->fileName);
    const auto material = calledOnly(query.materials(), options.material, "material");
    const auto proctor = calledOnly(query.proctors(), options.proctor, "laboratory compaction test");
    if (!material || !proctor)
        return tl::unexpected(material ? proctor.error() : material.error());
    return gis::lotBodies(*features, *job, {*material, *proctor, options.testsPerLift, options.minimum});
}

Result<std::size_t> sealInto(const gis::SiteFile& file, const SiteOptions& options)
{
    auto store = openToWrite(options.book, options.key);
    if (!store)
        return tl::unexpected(store.error());
    const auto person = personCalled(*store, options.by);
    if (!person)
        return tl::unexpected(person.error());
    const auto bodies = bodiesOf(file, options, *store);
    if (!bodies)
        return tl::unexpected(bodies.error());
    const auto clock = now();
    std::vector<book::Entry> entries;
    for (const auto& body : *bodies) {
        book::Entry entry;
        entry.kind = options.as;
        entry.subject = freshId();
        entry.by = *person;
        entry.at = clock.at;
        entry.offsetMinutes = clock.offsetMinutes;
        entry.body = body;
        entries.push_back(std::move(entry));
    }
    const auto sealed = store->sealAll(entries);
    if (!sealed)
        return tl::unexpected(sealed.error());
    return sealed->size();
}

int site(const SiteOptions& options)
{
    std::error_code none;
    const std::string self = std::filesystem::read_symlink("/proc/self/exe", none).string();
    const auto file = gis::readSiteFile({self, "read-site"}, options.file, {});
    if (!file)
        return refuse(file.error());
    if (options.book.empty()) {
        print(listed(*file));
        return kDone;
    }
    const auto count = sealInto(*file, options);
    if (!count)
        return refuse(count.error());
    for (const auto& note : file->notes)
        print("note: " + note);
    print(std::to_string(*count) + " " + options.as + (*count == 1 ? " sealed" : "s sealed"));
    return kDone;
}

}  // namespace

void addSite(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("site", "Tell what a site file holds, or seal its alignments, lots or obstacles");
    auto o = std::make_shared<SiteOptions>();
    verb->add_option("FILE", o->file, "GeoPackage, Shapefile, GeoJSON, KML, DXF or LandXML; read in a process of its own")->required();
    auto* into = verb->add_option("--into", o->book, "Seal what was found into this field book")->type_name("BOOK");
    auto* as = verb->add_option("--as", o->as, "What it is: alignment, lot or obstacle")->check(CLI::IsMember({"alignment", "lot", "obstacle"}))->type_name("KIND");
    into->needs(as);
    as->needs(into);
    verb->add_option("--crs", o->crs, "Coordinate system, where the file names none: EPSG:CODE")->type_name("EPSG:CODE");
    verb->add_option("--units", o->units, "Unit of the coordinates, where the file names none: ft, ftUS or m")->check(CLI::IsMember({"ft", "ftUS", "m"}))->type_name("UNIT");
    verb->add_option("--layer", o->layer, "Take this layer only")->type_name("NAME");
    verb->add_option("--obstacle", o->obstacleKind, "Kind of obstacle: wall, structure or pipe")->check(CLI::IsMember({"wall", "structure", "pipe"}))->type_name("KIND");
    verb->add_option("--material", o->material, "Material of the lots, by its name in the book")->type_name("NAME");
    verb->add_option("--reference", o->proctor, "Laboratory compaction test of the lots, by its name in the book")->type_name("NAME");
    verb->add_option("--tests-per-lift", o->testsPerLift, "Tests that each lift of the lots needs")->type_name("NUMBER");
    verb->add_option("--minimum", o->minimum, "Least percent compaction of the lots")->type_name("PERCENT");
    verb->add_option("--begin-station", o->station, "Station of the first corner, where the file has none: 10+00 or 1000")->type_name("STATION");
    verb->add_option("--by", o->by, "Person who takes the file over; needed when the book knows several")->type_name("NAME");
    verb->add_option("--key", o->key, "Device key file")->type_name("FILE");
    verb->footer("What the file does not say is asked, never guessed. docs/site-files.md tells each format. A line from a drawing shows\n"
                 "where somebody drew it: call before digging, and mark what lies in the ground as local rules ask.");
    verb->callback([o, &status] { status = site(*o); });

    auto* child = app.add_subcommand("read-site", "Reads one file for the verb site")->group("");
    auto path = std::make_shared<std::string>();
    child->add_option("FILE", *path)->required();
    child->callback([path, &status] {
        const gis::SiteLimits limits;
        gis::boundReader(limits);
        const auto file = gis::parseSiteFile(*path, limits);
        status = file ? kDone : refuse(file.error());
        if (file)
            print(gis::siteFileText(*file));
    });
}

void addCrs(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("crs", "Find a coordinate system by code, name or place");
    auto words = std::make_shared<std::vector<std::string>>();
    verb->add_option("WORDS", *words, "All of them must occur, for example: Missouri Central 2011")->required();
    verb->callback([words, &status] {
        std::string all;
        for (const auto& one : *words)
            all += one + " ";
        const auto found = gis::findCrs(all, 200);
        status = !found ? refuse(found.error()) : found->empty() ? refuse({Fault::Refused, "No projected coordinate system has all of these words."}) : kDone;
        if (status != kDone)
            return;
        Columns columns({Align::Left, Align::Left, Align::Left});
        for (const auto& one : *found)
            columns.add({"EPSG:" + std::to_string(one.epsg), one.name, one.area.substr(0, 90)});
        print(columns.text());
    });
}

}  // namespace groundcount::command
