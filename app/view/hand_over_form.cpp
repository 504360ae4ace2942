#include "view/hand_over_form.h"

#include "view/session.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace groundcount::view {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(groundcount::view::HandOverForm)
};

/// A layer that can be chosen.
struct LayerWord {
    const char* name;
    const char* title;
    const char* what;
};
constexpr LayerWord kLayers[] = {
    {"density_test", QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "Tests"), QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "place, figures, verdict and who made it")},
    {"test_site_drawn", QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "Drawn sites"), QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "tested and owed")},
    {"lift_coverage", QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "Lifts"), QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "the ground that each test stands for")},
    {"lot", QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "Lots"), QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "requirement and how far they are")},
    {"obstacle", QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "Obstacles"), QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "what tests keep clear of")},
    {"obstacle_line", QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "Walls and pipes"), QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "obstacles that have a line")},
    {"alignment", QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "Alignments"), QT_TRANSLATE_NOOP("groundcount::view::HandOverForm", "lines that stations count along")},
};
constexpr int kLayerCount = static_cast<int>(std::size(kLayers));

/// How many the book has, -1 where nobody counted yet.
std::int64_t countOf(int layer, const Snapshot& all)
{
    const auto lines = std::count_if(all.obstacles.begin(), all.obstacles.end(), [](const book::ObstacleRow& one) { return !one.path.empty(); });
    switch (layer) {
    case 0: return static_cast<std::int64_t>(all.tests.size());
    case 1: return static_cast<std::int64_t>(all.sites.size());
    case 2: return static_cast<std::int64_t>(all.lifts.size());
    case 3: return static_cast<std::int64_t>(all.lots.size());
    case 4: return static_cast<std::int64_t>(all.obstacles.size());
    case 5: return lines;
    default: return -1;
    }
}

Row counted(const QString& title, const QString& second, std::int64_t count)
{
    Row row = Row::ofWords(title, second, {});
    if (count >= 0)
        row.figure = QLocale().toString(static_cast<qlonglong>(count));
    return row;
}

Row layerRow(int layer, const Snapshot& all)
{
    return counted(Words::tr(kLayers[layer].title), Words::tr(kLayers[layer].what), countOf(layer, all));
}

}  // namespace

QStringList handOverFormWords()
{
    return {QStringLiteral("GeoPackage"), QStringLiteral("GeoJSON"), QStringLiteral("CSV"), QStringLiteral("Shapefile"), QStringLiteral("KML"),
            Words::tr("Bundle")};
}

QString handOverFormNote(HandOverForm form)
{
    switch (form) {
    case HandOverForm::GeoPackage:
        return Words::tr("Everything in one file, in the job's coordinate system. A desktop GIS opens it with the symbols of this map.");
    case HandOverForm::GeoJson:
    case HandOverForm::Kml:
        return Words::tr("One layer, as longitude and latitude on WGS 84. Between NAD 83 and WGS 84 lie one to two metres on the ground.");
    case HandOverForm::Csv:
        return Words::tr("One layer, as a table; places in the job's coordinate system.");
    case HandOverForm::Shapefile:
        return Words::tr("A new folder with a Shapefile for each layer, in the job's coordinate system. Names end at 10 characters and texts at 254 bytes; a GeoPackage has them whole.");
    case HandOverForm::Bundle:
        return Words::tr("Every sealed record and photo, for another device of this job, which takes it in under Shared server. No server is needed.");
    }
    return {};
}

QString handOverEnding(HandOverForm form)
{
    switch (form) {
    case HandOverForm::GeoPackage: return QStringLiteral("gpkg");
    case HandOverForm::GeoJson: return QStringLiteral("geojson");
    case HandOverForm::Csv: return QStringLiteral("csv");
    case HandOverForm::Kml: return QStringLiteral("kml");
    case HandOverForm::Bundle: return QStringLiteral("fieldbundle");
    case HandOverForm::Shapefile: return {};
    }
    return {};
}

std::optional<gis::HandOverFormat> handOverFormat(HandOverForm form)
{
    switch (form) {
    case HandOverForm::GeoPackage: return gis::HandOverFormat::GeoPackage;
    case HandOverForm::GeoJson: return gis::HandOverFormat::GeoJson;
    case HandOverForm::Csv: return gis::HandOverFormat::Csv;
    case HandOverForm::Shapefile: return gis::HandOverFormat::Shapefile;
    case HandOverForm::Kml: return gis::HandOverFormat::Kml;
    case HandOverForm::Bundle: return {};
    }
    return {};
}

bool holdsOneLayer(HandOverForm form)
{
    return form == HandOverForm::GeoJson || form == HandOverForm::Csv || form == HandOverForm::Kml;
}

QStringList handOverLayerWords()
{
    QStringList words;
    for (const LayerWord& layer : kLayers)
        words << Words::tr(layer.title);
    return words;
}

std::string handOverLayer(int index)
{
    return index >= 0 && index < kLayerCount ? kLayers[index].name : std::string();
}

std::vector<Row> handOverContents(HandOverForm form, int layer, const Snapshot& all, std::int64_t records)
{
    if (form == HandOverForm::Bundle)
        return {counted(Words::tr("Sealed records"),
                        Words::tr("as they were sealed, with photos and notes"), records)};
    if (holdsOneLayer(form))
        return {layerRow(layer, all)};
    std::vector<Row> rows;
    for (int i = 0; i < kLayerCount; ++i)
        rows.push_back(layerRow(i, all));
    if (form == HandOverForm::GeoPackage)
        rows.push_back(Row::ofWords(Words::tr("Photos, symbols, rule sets"),
                                    Words::tr("and the hashes that tie the file to this book"), {}));
    return rows;
}

}  // namespace groundcount::view
