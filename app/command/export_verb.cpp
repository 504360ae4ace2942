#include "book/state_query.h"
#include "command/open_book.h"
#include "command/verb.h"
#include "gis/test_layer.h"

#include <filesystem>
#include <memory>

namespace groundcount::command {
namespace {

struct ExportFiles {
    std::string book, out;
};

Result<std::size_t> exportBook(const ExportFiles& files)
{
    const auto ending = std::filesystem::path(files.out).extension().string();
    if (ending != ".gpkg" && ending != ".geojson" && ending != ".json")
        return refused("The file to write must end in .gpkg, .geojson or .json; it is \"" + files.out + "\".");
    const auto store = book::Store::open(files.book, book::OpenMode::ReadOnly);
    if (!store)
        return tl::unexpected(store.error());
    if (!store->damage().empty())
        return refused("A damaged book is not handed over: " + store->damage());
    const book::StateQuery query(*store);
    const auto job = query.job();
    const auto tests = query.tests({});
    if (!job || !tests)
        return tl::unexpected(job ? tests.error() : job.error());
    const auto done = ending == ".gpkg" ? gis::exportTests(files.out, *job, *tests, {})
                                        : gis::exportTestsGeoJson(files.out, *job, *tests, {});
    if (!done)
        return tl::unexpected(done.error());
    return tests->size();
}

}  // namespace

void addExport(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("export", "Write the tests as a layer: GeoPackage or GeoJSON");
    auto files = std::make_shared<ExportFiles>();
    verb->add_option("BOOK", files->book, "Field book")->required();
    verb->add_option("OUT", files->out, "OUT.gpkg in the job's coordinate system, or OUT.geojson in WGS 84; an older file is replaced whole")
        ->required();
    verb->footer("The columns are in docs/geopackage-layers.md. Nothing is half written: the layer is made beside its place, read\n"
                 "again and only then put there.");
    verb->callback([files, &status] {
        const auto count = exportBook(*files);
        status = count ? kDone : refuse(count.error());
        if (count)
            print(files->out + ": layer density_test, " + std::to_string(*count) + " tests");
    });
}

}  // namespace groundcount::command
