#include "view/site_file_sheet.h"

#include "gis/crs.h"
#include "view/figure_text.h"
#include "view/map_content.h"

#include <QFileInfo>
#include <QLocale>
#include <algorithm>
#include <set>

namespace groundcount::view {
namespace {

constexpr std::size_t kMostThings = 2000;  // sealed at once while a person waits; more go through groundbook
constexpr double kFarFeet = 5 * 5280.0;    // a site is smaller than that; farther, an answer is wrong more often than not

QString distanceText(Length away, const std::string& gridUnit)
{
    if (gridUnit == "m")
        return away.metres() < 2000 ? SiteFileSheet::tr("%1 m").arg(figureText(away.metres(), 0)) : SiteFileSheet::tr("%1 km").arg(figureText(away.metres() / 1000, 1));
    return away.feet() < 5280 ? SiteFileSheet::tr("%1 ft").arg(figureText(away.feet(), 0)) : SiteFileSheet::tr("%1 mi").arg(figureText(away.feet() / 5280, 1));
}

QString counted(const gis::SiteLayer& layer)
{
    const bool one = layer.things == 1;
    const QString n = QLocale().toString(static_cast<qulonglong>(layer.things));
    if (layer.isAlignment)
        return one ? SiteFileSheet::tr("line of 1 element") : SiteFileSheet::tr("line of %1 elements").arg(n);
    switch (layer.form) {
    case gis::SiteForm::Area: return one ? SiteFileSheet::tr("1 area") : SiteFileSheet::tr("%1 areas").arg(n);
    case gis::SiteForm::Line: return one ? SiteFileSheet::tr("1 line") : SiteFileSheet::tr("%1 lines").arg(n);
    case gis::SiteForm::Point: break;
    }
    return one ? SiteFileSheet::tr("1 point") : SiteFileSheet::tr("%1 points").arg(n);
}

}  // namespace

QString SiteFileSheet::word(Kind kind)
{
    switch (kind) {
    case Kind::LeaveOut: break;
    case Kind::Alignment: return tr("Alignment");
    case Kind::Lot: return tr("Lot");
    case Kind::Wall: return tr("Wall");
    case Kind::Pipe: return tr("Pipe");
    case Kind::Structure: return tr("Structure");
    }
    return tr("Left out");
}

void SiteFileSheet::refresh()
{
    m_title = tr("Site file");
    m_context = m_sealText = m_sealNotYet = QString();
    if (m_reading.path() != path())  // a draft that waited in the book
        m_reading.start(path());
    m_fileLayers = isThere() ? gis::siteLayers(*m_reading.file()) : std::vector<gis::SiteLayer>();
    if (isThere())
        m_context = QFileInfo(path()).fileName();
    showFile();
    showLayers();
    showQuestions();
    place();
    showDoubts();
    showAct();
}

void SiteFileSheet::showFile()
{
    std::vector<Row> rows;
    if (isThere()) {
        const auto& file = *m_reading.file();
        rows.push_back(Row::ofWords(tr("Format"), {}, QString::fromStdString(file.format)));
        rows.push_back(Row::ofWords(tr("Coordinate system"), file.crsName.empty() ? tr("the file does not say") : QString::fromStdString(file.crsName), {}));
        if (!file.unit.empty())
            rows.push_back(Row::ofWords(tr("Unit"), {}, QString::fromStdString(file.unit)));
        if (const auto box = gis::siteExtent(file.features); box.any)
            rows.push_back(Row::ofWords(tr("Extent"), tr("north %1 to %2, east %3 to %4").arg(figureText(box.south, 2), figureText(box.north, 2), figureText(box.west, 2), figureText(box.east, 2)), {}));
        for (const auto& note : file.notes)
            rows.push_back(Row::ofWords(QString::fromStdString(note), {}, {}));
    }
    m_found.setRows(std::move(rows));
}

void SiteFileSheet::showLayers()
{
    std::vector<Row> rows;
    m_kindWords.clear();
    m_layerName.clear();
    if (m_layerId.isEmpty() && !m_fileLayers.empty())
        m_layerId = keyOf(m_fileLayers.front());
    for (const auto& layer : m_fileLayers) {
        QStringList names;
        for (const auto& name : layer.names)
            names << QString::fromStdString(name);
        // A file of one layer that has no name of its own lends it the copy's.
        const QString title = layer.name == "site" ? QFileInfo(path()).completeBaseName() : QString::fromStdString(layer.name);
        Row row = Row::ofWords(title, counted(layer) + (names.isEmpty() ? QString() : ": " + names.join(", ")), word(kindOf(layer)));
        row.id = keyOf(layer);
        if (row.id == m_layerId) {
            m_layerName = row.title;
            const auto kinds = kindsOf(layer);
            m_kind = static_cast<int>(std::find(kinds.begin(), kinds.end(), kindOf(layer)) - kinds.begin());
            for (const Kind kind : kinds)
                m_kindWords << word(kind);
        }
        rows.push_back(std::move(row));
    }
    m_layers.setRows(std::move(rows));
}

void SiteFileSheet::showQuestions()
{
    const auto wanted = [&](Kind kind) { return std::any_of(m_fileLayers.begin(), m_fileLayers.end(), [&](const auto& l) { return kindOf(l) == kind; }); };
    const bool isLandXml = isThere() && m_reading.file()->format == "LandXML";
    m_asksSystem = isThere() && (isLandXml ? m_reading.file()->crsName.empty() : m_reading.file()->crsWkt.empty());
    m_asksUnit = m_asksSystem && !isLandXml;
    m_systemText = tr("not said yet");
    QString own;
    if (m_asksSystem && has("crs")) {
        const auto system = gis::Crs::fromEpsg(typed("crs").toInt());
        m_systemText = system ? QString::fromStdString(system->name()) + QStringLiteral(", EPSG:") + typed("crs") : QString::fromStdString(system.error().what);
        own = system ? QString::fromStdString(system->unitName()) : QString();
    }
    const auto& job = m_session->job();
    if (m_asksSystem && !has("crs") && m_systems.count() == 0 && job.epsg > 0) {
        Row row = Row::ofWords(tr("The job's own system"), QString::fromStdString(job.crsName), {});
        row.id = row.figure = QString::number(job.epsg);
        m_systems.setRows({row});
    }
    m_unit = text("units") == "ft" ? 0 : text("units") == "ftUS" ? 1 : text("units") == "m" ? 2 : -1;
    const auto box = isThere() ? gis::siteExtent(m_reading.file()->features) : gis::SiteExtent();
    m_unitNote = !m_asksUnit ? QString()
                 : tr("The international and the US survey foot lie %1 ft apart at these coordinates. The drawing's author knows which it is.").arg(figureText(gis::feetApart(box), 2));
    if (m_asksUnit && m_reading.file()->format != "DXF" && m_unit < 0 && !own.isEmpty())
        m_unitNote = tr("Without an answer: the unit of the system, %1.").arg(own);
    m_asksLot = wanted(Kind::Lot);
    m_asksBegin = wanted(Kind::Alignment) && !isLandXml;
    m_testsText = typed("tests");
    m_beginText = typed("begin");
    m_referenceWords.clear();
    m_reference = -1;
    for (const auto& proctor : m_session->snapshot().proctors) {
        if (proctor.id == text("proctor"))
            m_reference = static_cast<int>(m_referenceWords.size());
        m_referenceWords << QString::fromStdString(proctor.name);
    }
}

void SiteFileSheet::showDoubts()
{
    m_doubt.clear();
    m_placeNote.clear();
    const map::MapVertex origin = sceneOrigin(*m_session);
    if (const auto box = gis::siteExtent(m_placed); m_isPlaced && box.any && (origin.north != 0 || origin.east != 0)) {
        const Length away = gis::awayFrom(box, {origin.north, origin.east}, m_session->metresPerGridUnit());
        m_placeNote = away.metres() > 0 ? tr("Its middle lies %1 from the begin of the job's line.").arg(distanceText(away, m_session->job().gridUnit))
                                        : tr("The begin of the job's line lies within it.");
        if (away.feet() > kFarFeet)
            m_doubt = tr("The file lies %1 from the job: is the coordinate system or the unit another one?").arg(distanceText(away, m_session->job().gridUnit));
    }
    const Snapshot& all = m_session->snapshot();
    std::set<std::string> known;
    for (const auto& lot : all.lots)
        known.insert(lot.name);
    for (const auto& obstacle : all.obstacles)
        known.insert(obstacle.name);
    QString twice;
    for (const auto& layer : m_fileLayers)
        for (const auto& name : layer.names)
            if (kindOf(layer) != Kind::LeaveOut && known.contains(name))
                twice = QString::fromStdString(name);
    if (m_doubt.isEmpty() && !twice.isEmpty())
        m_doubt = tr("The book already has a thing called \"%1\"; sealed again, it stands there twice.").arg(twice);
    const bool byStations = std::any_of(all.lots.begin(), all.lots.end(), [](const auto& l) { return l.alignment.empty() && l.area.empty(); });
    if (m_doubt.isEmpty() && !m_session->lines().isEmpty() && byStations
        && std::any_of(m_fileLayers.begin(), m_fileLayers.end(), [&](const auto& l) { return kindOf(l) == Kind::Alignment; }))
        m_doubt = tr("The job has a line already, and its lots name none: with a second line their stations no longer say which one they mean.");
}

void SiteFileSheet::showAct()
{
    std::size_t things = 0;
    for (const auto& layer : m_fileLayers)
        things += kindOf(layer) == Kind::LeaveOut ? 0 : layer.isAlignment ? 1 : layer.things;
    m_sealText = things == 1 ? tr("Seal 1 thing") : tr("Seal %1 things").arg(QLocale().toString(static_cast<qulonglong>(things)));
    if (!isThere())
        m_sealNotYet = isReading() ? tr("Reading the file") : tr("Choose a file first");
    else if (m_asksSystem && !has("crs"))
        m_sealNotYet = tr("Say the coordinate system first");
    else if (m_asksUnit && m_unit < 0 && m_reading.file()->format == "DXF")
        m_sealNotYet = tr("Say the unit first");
    else if (!m_isPlaced)
        m_sealNotYet = tr("The file does not fit the job");
    else if (things == 0)
        m_sealNotYet = tr("Say what a layer is first");
    else if (m_asksLot && m_reference < 0)
        m_sealNotYet = tr("Choose the reference test first");
    else if (m_asksLot && !has("tests"))
        m_sealNotYet = tr("Type the tests per lift first");
    else if (m_asksBegin && !has("begin"))
        m_sealNotYet = tr("Type the begin station first");
    else if (things > kMostThings)
        m_sealNotYet = tr("At most %1 things at once; groundbook takes more").arg(QLocale().toString(static_cast<int>(kMostThings)));
}

}  // namespace groundcount::view
