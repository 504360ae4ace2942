#include "gis/hand_over.h"

#include "book/provenance.h"
#include "book/read_view.h"
#include "gis/geopackage_extras.h"
#include "gis/geopackage_writer.h"
#include "gis/job_crs.h"
#include "gis/layer_source.h"
#include "gis/layer_style.h"
#include "gis/plain_layer.h"
#include "gis/staged_file.h"

#include <algorithm>
#include <filesystem>

namespace groundcount::gis {
namespace {

namespace fs = std::filesystem;

struct Work {
    const book::Store& store;
    const HandOverAsk& ask;
    Crs crs;
    std::vector<Layer> layers;  ///< named and mapped
    std::vector<std::optional<LayerStyle>> styles;  ///< one per layer
};

const char* endingOf(HandOverFormat format)
{
    switch (format) {
    case HandOverFormat::GeoPackage:
        return ".gpkg";
    case HandOverFormat::GeoJson:
        return ".geojson";
    case HandOverFormat::Csv:
        return ".csv";
    case HandOverFormat::Shapefile:
        return ".shp";
    case HandOverFormat::Kml:
        return ".kml";
    }
    return "";
}

PlainFormat plainOf(HandOverFormat format)
{
    return format == HandOverFormat::Csv         ? PlainFormat::Csv
           : format == HandOverFormat::Shapefile ? PlainFormat::Shapefile
           : format == HandOverFormat::Kml       ? PlainFormat::Kml
                                                 : PlainFormat::GeoJson;
}

/// A file of the format, not a folder to be.
bool isFile(const HandOverAsk& ask)
{
    return ask.path.ends_with(endingOf(ask.format)) || (ask.format == HandOverFormat::GeoJson && ask.path.ends_with(".json"));
}

Result<void> choose(std::vector<Layer>& layers, const HandOverAsk& ask)
{
    auto wanted = ask.layers;
    if (wanted.empty() && ask.format != HandOverFormat::GeoPackage && isFile(ask))
        wanted = {"density_test"};
    for (const auto& name : wanted)
        if (std::none_of(layers.begin(), layers.end(), [&](const Layer& layer) { return layer.name == name; }))
            return refused("There is no layer \"" + name + "\" to hand over.");
    if (!wanted.empty())
        std::erase_if(layers, [&](const Layer& layer) { return std::find(wanted.begin(), wanted.end(), layer.name) == wanted.end(); });
    if (ask.format != HandOverFormat::GeoPackage && isFile(ask) && layers.size() != 1)
        return refused("A " + std::string(endingOf(ask.format)) + " file holds one layer; " + std::to_string(layers.size()) + " are asked for.");
    return {};
}

/// The question of the writing, asked while all of it is read again.
KeepReading stillWanted(const ExportOptions& options, const std::vector<LayerCount>& written)
{
    std::int64_t rows = 0;
    for (const LayerCount& layer : written)
        rows += layer.rows;
    return options.keepOn ? [ask = options.keepOn, rows] { return ask(static_cast<std::size_t>(rows)); } : KeepReading();
}

Result<HandedOver> writeGeoPackage(Work& work)
{
    const auto provenance = book::provenanceOf(work.store);
    const auto photos = book::photosOf(work.store);
    if (!provenance || !photos)
        return tl::unexpected(provenance ? photos.error() : provenance.error());
    auto file = StagedFile::beside(work.ask.path);
    if (!file)
        return tl::unexpected(file.error());
    auto writer = GeoPackageWriter::create(file->path(), work.crs, provenance->latestAt);
    if (!writer)
        return tl::unexpected(writer.error());
    std::set<std::string> shown;
    for (const auto& photo : *photos)
        shown.insert(photo.subject);
    writer->remember(std::move(shown));
    HandedOver done;
    for (const Layer& layer : work.layers) {
        const auto count = writer->add(layer, work.ask.options);
        if (!count)
            return tl::unexpected(count.error());
        done.layers.push_back(*count);
    }
    const auto attached = addPhotos(*writer, work.store, *photos);
    if (!attached)
        return tl::unexpected(attached.error());
    done.photos = *attached;
    if (const auto styled = addStyles(*writer, work.layers, work.styles); !styled)
        return tl::unexpected(styled.error());
    if (const auto told = addProvenance(*writer, provenance->text); !told)
        return tl::unexpected(told.error());
    if (const auto finished = writer->finish(); !finished)
        return tl::unexpected(finished.error());
    if (const auto checked = checkGeoPackage(file->path(), done.layers, stillWanted(work.ask.options, done.layers)); !checked)
        return tl::unexpected(checked.error());
    if (const auto placed = file->putInPlace(); !placed)
        return tl::unexpected(placed.error());
    return done;
}

Result<void> writePlain(const std::string& path, const Layer& layer, const Work& work, HandedOver& done)
{
    const auto written = writePlainLayer(path, plainOf(work.ask.format), layer, work.crs, work.ask.options);
    if (!written)
        return tl::unexpected(written.error());
    done.layers.push_back(written->count);
    done.cutTexts += written->cutTexts;
    // A file without a row has no columns in CSV and no layer in KML to be found again.
    if (written->count.rows == 0)
        return {};
    LayerCount expected = written->count;
    expected.layer.clear();  // a CSV's layer is called as its file
    if (work.ask.format == HandOverFormat::Csv && layer.kind == ShapeKind::Point)
        expected.shapes = 0;  // X and Y are read again as two figures, WKT as a shape
    return checkLayers(path, {expected}, stillWanted(work.ask.options, done.layers));
}

Result<HandedOver> writeFile(const Work& work)
{
    auto file = StagedFile::beside(work.ask.path);
    if (!file)
        return tl::unexpected(file.error());
    HandedOver done;
    if (const auto written = writePlain(file->path(), work.layers.front(), work, done); !written)
        return tl::unexpected(written.error());
    if (const auto placed = file->putInPlace(); !placed)
        return tl::unexpected(placed.error());
    return done;
}

Result<HandedOver> writeFolder(const Work& work)
{
    std::error_code unknown;
    if (fs::exists(work.ask.path, unknown))
        return refused("The folder to write must not exist yet; \"" + work.ask.path + "\" does.");
    auto folder = StagedFile::beside(work.ask.path);
    if (!folder)
        return tl::unexpected(folder.error());
    if (!fs::create_directory(folder->path(), unknown))
        return unavailable("Cannot make a folder beside " + work.ask.path + ".");
    HandedOver done;
    for (const Layer& layer : work.layers)
        if (const auto written = writePlain((fs::path(folder->path()) / (layer.name + endingOf(work.ask.format))).string(), layer, work, done); !written)
            return tl::unexpected(written.error());
    if (const auto placed = folder->putInPlace(); !placed)
        return tl::unexpected(placed.error());
    return done;
}

}  // namespace

Result<HandOverFormat> handOverFormat(const std::string& word)
{
    for (const auto& [name, format] : {std::pair{"gpkg", HandOverFormat::GeoPackage}, {"geojson", HandOverFormat::GeoJson}, {"csv", HandOverFormat::Csv},
                                       {"shp", HandOverFormat::Shapefile}, {"kml", HandOverFormat::Kml}})
        if (word == name)
            return format;
    return refused("A format must be gpkg, geojson, csv, shp or kml; it is \"" + word + "\".");
}

Result<HandedOver> handOver(const book::Store& store, const HandOverAsk& ask)
{
    if (!store.damage().empty())
        return refused("A damaged book is not handed over: " + store.damage());
    if (ask.format == HandOverFormat::GeoPackage && !isFile(ask))
        return refused("The name of a GeoPackage must end in .gpkg; it is \"" + ask.path + "\".");
    if (ask.format == HandOverFormat::Shapefile && isFile(ask))
        return refused("A Shapefile is several files: name a folder to be made for them; it is \"" + ask.path + "\".");
    const auto moment = book::ReadView::begin(store);
    if (!moment)
        return tl::unexpected(moment.error());
    const auto source = layerSource(store);
    if (!source)
        return tl::unexpected(source.error());
    const auto crs = jobCrs((*source)->job);
    if (!crs)
        return tl::unexpected(crs.error());
    auto layers = layersOf(*source, ask.options);
    if (!layers)
        return tl::unexpected(layers.error());
    if (const auto chosen = choose(*layers, ask); !chosen)
        return tl::unexpected(chosen.error());
    Work work{store, ask, *crs, std::move(*layers), {}};
    for (const Layer& layer : work.layers)
        work.styles.push_back(styleOf(layer.name));
    const auto before = work.layers;
    if (const auto mapped = applyFieldMap(ask.map, work.layers); !mapped)
        return tl::unexpected(mapped.error());
    for (std::size_t i = 0; i < work.layers.size(); ++i)
        if (work.styles[i])
            renameFields(*work.styles[i], before[i].name, ask.map);
    if (ask.format == HandOverFormat::GeoPackage)
        return writeGeoPackage(work);
    return isFile(ask) ? writeFile(work) : writeFolder(work);
}

}  // namespace groundcount::gis
