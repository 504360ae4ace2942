#include "book/state_query.h"
#include "command/open_book.h"
#include "command/verb.h"
#include "gis/background.h"
#include "gis/job_crs.h"

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <memory>

namespace groundcount::command {
namespace {

Result<std::string> takenOver(const std::string& file, const std::string& bookPath)
{
    const auto store = book::Store::open(bookPath, book::OpenMode::ReadOnly);
    if (!store)
        return tl::unexpected(store.error());
    const auto job = book::StateQuery(*store).job();
    const auto crs = job ? gis::jobCrs(*job) : tl::unexpected(job.error());
    if (!crs)
        return tl::unexpected(crs.error());
    std::error_code none;
    const std::string self = std::filesystem::read_symlink("/proc/self/exe", none).string(), target = gis::backgroundPath(store->path());
    const auto facts = gis::takeBackground({self, "read-background"}, file, *crs, target, gis::backgroundLimits());
    if (!facts)
        return tl::unexpected(facts.error());
    char size[80];
    std::snprintf(size, sizeof size, "%d x %d pixels of %.3f m", facts->width, facts->height, facts->metresPerPixel);
    return facts->format + ", " + facts->crsName + ": " + size + (facts->isCoarser ? ", coarser than the file" : "") + "; kept as " + target;
}

int readAsChild(const std::vector<std::string>& words)
{
    gis::boundReader(gis::backgroundLimits());
    std::ifstream system(words[1]);
    const std::string wkt(std::istreambuf_iterator<char>(system), {});
    const auto facts = gis::makeBackground(words[0], wkt, words[2]);
    if (facts)
        print(gis::backgroundText(*facts));
    return facts ? kDone : refuse(facts.error());
}

}  // namespace

void addBackground(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("background", "Lay a picture of the ground under the map of a book, on this device");
    auto file = std::make_shared<std::string>(), book = std::make_shared<std::string>();
    verb->add_option("FILE", *file, "GeoTIFF, MBTiles or GeoPackage of tiles; read in a process of its own")->required();
    verb->add_option("--into", *book, "Field book under whose map it lies")->required()->type_name("BOOK");
    verb->footer("The picture is laid into the job's coordinate system and kept beside the book as BOOK-ground.tif. Nothing is sealed.");
    verb->callback([file, book, &status] {
        const auto answer = takenOver(*file, *book);
        status = answer ? kDone : refuse(answer.error());
        if (answer)
            print(*answer);
    });
    auto* child = app.add_subcommand("read-background", "Reads one file for the verb background")->group("");
    auto words = std::make_shared<std::vector<std::string>>();
    child->add_option("WORDS", *words)->required()->expected(3);
    child->callback([words, &status] { status = readAsChild(*words); });
}

}  // namespace groundcount::command
