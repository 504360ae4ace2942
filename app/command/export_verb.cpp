#include "command/open_book.h"
#include "command/verb.h"
#include "gis/bundle_file.h"
#include "gis/hand_over.h"

#include <filesystem>
#include <fstream>
#include <memory>
#include <sstream>

namespace groundcount::command {
namespace {

struct ExportFiles {
    std::string book, out, format, columns;
    std::vector<std::string> layers;
};

/// The format by --format, else by the ending.
Result<gis::HandOverFormat> formatOf(const ExportFiles& files)
{
    if (!files.format.empty())
        return gis::handOverFormat(files.format);
    const auto ending = std::filesystem::path(files.out).extension().string();
    for (const auto& [end, word] : {std::pair{".gpkg", "gpkg"}, {".geojson", "geojson"}, {".json", "geojson"}, {".csv", "csv"}, {".kml", "kml"}})
        if (ending == end)
            return gis::handOverFormat(word);
    return refused("The file to write must end in .gpkg, .geojson, .json, .csv, .kml or " + std::string(gis::kBundleEnding) +
                   ", or --format must name the format of a folder; it is \"" + files.out + "\".");
}

Result<std::string> contentOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    std::stringstream content;
    if (!(content << file.rdbuf()))
        return unavailable("The file " + path + " cannot be read.");
    return content.str();
}

Result<gis::HandedOver> exportBook(const ExportFiles& files)
{
    const auto format = formatOf(files);
    if (!format)
        return tl::unexpected(format.error());
    gis::HandOverAsk ask;
    ask.path = files.out;
    ask.format = *format;
    ask.layers = files.layers;
    if (!files.columns.empty()) {
        const auto text = contentOf(files.columns);
        auto map = text ? gis::readFieldMap(*text) : Result<gis::FieldMap>(tl::unexpected(text.error()));
        if (!map)
            return tl::unexpected(map.error());
        ask.map = std::move(*map);
    }
    const auto store = book::Store::open(files.book, book::OpenMode::ReadOnly);
    if (!store)
        return tl::unexpected(store.error());
    return gis::handOver(*store, ask);
}

std::string text(const std::string& out, const gis::HandedOver& done)
{
    std::string lines = out + ":";
    for (const auto& layer : done.layers)
        lines += "\n  layer " + layer.layer + ", " + std::to_string(layer.rows) + " rows" + (layer.shapes == layer.rows ? "" : ", " + std::to_string(layer.shapes) + " on the map");
    if (done.photos != 0)
        lines += "\n  " + std::to_string(done.photos) + (done.photos == 1 ? " photo" : " photos");
    if (done.cutTexts != 0)
        lines += "\n  " + std::to_string(done.cutTexts) + " texts were cut at the 254 bytes of the format; a GeoPackage has them whole";
    return lines;
}

/// A bundle holds records, so that nothing of the layers can be asked of it.
Result<book::BundleWritten> exportBundle(const ExportFiles& files)
{
    if (!files.format.empty() || !files.layers.empty() || !files.columns.empty())
        return refused("A bundle holds records, not layers: --format, --layer and --columns do not go with " + files.out + ".");
    const auto store = book::Store::open(files.book, book::OpenMode::ReadOnly);
    return store ? gis::handOverBundle(*store, files.out, [](std::size_t) { return true; }) : tl::unexpected(store.error());
}

int writeBundle(const ExportFiles& files)
{
    const auto written = exportBundle(files);
    if (!written)
        return refuse(written.error());
    print(files.out + ": " + std::to_string(written->records) + " records, " + std::to_string(written->blobs) + " contents");
    return kDone;
}

int writeLayers(const ExportFiles& files)
{
    const auto done = exportBook(files);
    if (!done)
        return refuse(done.error());
    print(text(files.out, *done));
    return kDone;
}

}  // namespace

void addExport(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("export", "Hand the layers over: GeoPackage, GeoJSON, CSV, Shapefile or KML; or the records as a bundle");
    auto files = std::make_shared<ExportFiles>();
    verb->add_option("BOOK", files->book, "Field book")->required();
    verb->add_option("OUT", files->out, "File to write (.gpkg, .geojson, .csv, .kml, .fieldbundle; an older one is replaced whole), or a new folder with --format")->required();
    verb->add_option("--format", files->format, "gpkg, geojson, csv, shp or kml; without it the ending of OUT tells")->type_name("FORMAT");
    verb->add_option("--layer", files->layers, "Only this layer; can be repeated")->type_name("NAME");
    verb->add_option("--columns", files->columns, "JSON file with the owner's own names for layers and columns")->type_name("FILE");
    verb->footer("Layers and columns are in docs/geopackage-layers.md. A GeoPackage holds all layers in the job's coordinate system with styles,\n"
                 "photos and provenance. A .geojson, .csv or .kml file holds one layer, density_test unless --layer says another. A\n"
                 ".fieldbundle holds every sealed record and photo, for \"merge\" on another device. Nothing is half written: everything is made\n"
                 "beside its place, read again and only then put there.");
    verb->callback([files, &status] { status = files->out.ends_with(gis::kBundleEnding) ? writeBundle(*files) : writeLayers(*files); });
}

}  // namespace groundcount::command
