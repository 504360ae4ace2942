#include "view/site_file_sheet.h"

#include "method/site/station.h"
#include "view/system_rows.h"

#include <QFileInfo>
#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

constexpr const char* kUnits[] = {"ft", "ftUS", "m"};
constexpr double kMostTests = 1000;

}  // namespace

SiteFileSheet::SiteFileSheet(QObject* parent) : KitForm(parent)
{
    connect(&m_reading, &SiteReading::ended, this, &SiteFileSheet::derive);
}

std::vector<SiteFileSheet::Kind> SiteFileSheet::kindsOf(const gis::SiteLayer& layer)
{
    if (layer.isAlignment)
        return {Kind::LeaveOut, Kind::Alignment};
    switch (layer.form) {
    case gis::SiteForm::Area: return {Kind::LeaveOut, Kind::Lot, Kind::Wall, Kind::Pipe, Kind::Structure};
    case gis::SiteForm::Line: return {Kind::LeaveOut, Kind::Alignment, Kind::Wall, Kind::Pipe, Kind::Structure};
    case gis::SiteForm::Point: break;
    }
    return {Kind::LeaveOut, Kind::Wall, Kind::Pipe, Kind::Structure};
}

QString SiteFileSheet::keyOf(const gis::SiteLayer& layer) const
{
    return layer.isAlignment ? QStringLiteral("alignment/%1").arg(layer.alignmentIndex)
                             : QStringLiteral("%1/%2").arg(static_cast<int>(layer.form)).arg(QString::fromStdString(layer.name));
}

SiteFileSheet::Kind SiteFileSheet::kindOf(const gis::SiteLayer& layer) const
{
    const auto kinds = kindsOf(layer);
    const int index = typed("as " + keyOf(layer)).toInt();
    return index > 0 && index < static_cast<int>(kinds.size()) ? kinds[static_cast<std::size_t>(index)] : Kind::LeaveOut;
}

QStringList SiteFileSheet::unitWords() const
{
    return {tr("ft, international"), tr("ft, US survey"), tr("metre")};
}

void SiteFileSheet::chooseFile(const QUrl& file)
{
    readPath(file.isLocalFile() ? file.toLocalFile() : file.toString());
}

void SiteFileSheet::readPath(const QString& path)
{
    // Another file, other answers; the same one is read again.
    m_doneText.clear();
    m_refusal.clear();
    m_layerId.clear();
    QJsonObject cleared;
    for (const QString& key : draft().keys())
        cleared.insert(key, QString());
    cleared.insert(QStringLiteral("path"), path.trimmed());
    m_reading.start(path.trimmed());
    typeAll(cleared);
    derive();
}

void SiteFileSheet::pickLayer(const QString& id)
{
    m_layerId = id;
    derive();
}

void SiteFileSheet::pickKind(int index)
{
    type("as " + m_layerId, index > 0 ? QString::number(index) : QString());
}

void SiteFileSheet::searchSystem(const QString& words)
{
    auto rows = systemRows(words);
    m_refusal = rows ? QString() : QString::fromStdString(rows.error().what);
    m_systems.setRows(rows ? std::move(*rows) : std::vector<Row>());
    emit changed();
}

void SiteFileSheet::pickSystem(const QString& code)
{
    m_refusal.clear();
    m_systems.setRows({});
    type(QStringLiteral("crs"), code);
}

void SiteFileSheet::pickUnit(int index)
{
    type(QStringLiteral("units"), index == m_unit ? QString() : QString::fromLatin1(kUnits[std::clamp(index, 0, 2)]));
}

void SiteFileSheet::pickReference(int index)
{
    const auto& all = m_session->snapshot().proctors;
    if (index >= 0 && index < static_cast<int>(all.size()))
        type(QStringLiteral("proctor"), QString::fromStdString(all[static_cast<std::size_t>(index)].id));
}

void SiteFileSheet::typeTests()
{
    auto* entry = new NumberEntry(tr("Tests per lift"), tr("as the specification asks"), tr("Use this number"), this);
    entry->add(tr("Tests per lift"), {}, typed("tests"));
    open(entry, {QStringLiteral("tests")});
}

void SiteFileSheet::typeBegin()
{
    auto* entry = new NumberEntry(tr("Begin station"), tr("station of the line's first corner"), tr("Use this station"), this);
    entry->add(tr("Station"), QString::fromStdString(m_session->job().gridUnit), typed("begin"));
    open(entry, {QStringLiteral("begin")});
}

gis::SiteAnswers SiteFileSheet::answers() const
{
    gis::SiteAnswers answers;
    if (m_asksSystem && has("crs"))
        answers.epsg = typed("crs").toInt();
    answers.unit = m_asksUnit ? text("units") : std::string();
    answers.fileName = QFileInfo(path()).fileName().toStdString();
    return answers;
}

Result<gis::LotAnswers> SiteFileSheet::lotAnswers() const
{
    const auto& proctors = m_session->snapshot().proctors;
    const auto proctor = std::find_if(proctors.begin(), proctors.end(), [&](const auto& p) { return p.id == text("proctor"); });
    if (proctor == proctors.end())
        return refused(tr("The lots of the file need a reference test; choose one.").toStdString());
    const double tests = number(QStringLiteral("tests")).value_or(0);
    if (!(tests >= 1 && tests <= kMostTests && tests == std::floor(tests)))
        return refused(tr("Tests per lift must be a whole number from 1 to 1000; it is \"%1\".").arg(typed("tests")).toStdString());
    return gis::LotAnswers{proctor->material, proctor->id, static_cast<int>(tests), {}};
}

Result<std::vector<book::Body>> SiteFileSheet::bodiesOf(const gis::SiteLayer& layer) const
{
    const auto& job = m_session->job();
    const Kind kind = kindOf(layer);
    if (kind == Kind::Alignment) {
        const auto station = method::parseStation(text("begin"), job.gridUnit == "m" ? 1000.0 : 100.0);
        return gis::alignmentBodies(gis::onlyLayer(*m_reading.file(), layer), job, answers(),
                                    station ? QString::number(*station, 'f', 3).toStdString() : text("begin"));
    }
    std::vector<gis::SiteFeature> features;
    std::copy_if(m_placed.begin(), m_placed.end(), std::back_inserter(features), [&](const auto& f) { return f.form == layer.form && f.layer == layer.name; });
    if (kind != Kind::Lot)
        return gis::obstacleBodies(features, job, kind == Kind::Wall ? "wall" : kind == Kind::Pipe ? "pipe" : "structure", answers().fileName);
    const auto lot = lotAnswers();
    return lot ? gis::lotBodies(features, job, *lot) : tl::unexpected(lot.error());
}

Result<std::vector<book::Entry>> SiteFileSheet::entries() const
{
    std::vector<book::Entry> all;
    for (const auto& layer : m_fileLayers) {
        const Kind kind = kindOf(layer);
        if (kind == Kind::LeaveOut)
            continue;
        const auto bodies = bodiesOf(layer);
        if (!bodies)
            return tl::unexpected(bodies.error());
        for (const auto& body : *bodies) {
            book::Entry entry;
            entry.kind = kind == Kind::Alignment ? "alignment" : kind == Kind::Lot ? "lot" : "obstacle";
            entry.subject = Session::newId();
            entry.body = body;
            all.push_back(std::move(entry));
        }
    }
    return all;
}

void SiteFileSheet::afterSeal()
{
    m_doneText = tr("%1 is taken over: its things are sealed and stand on the map.").arg(QFileInfo(m_reading.path()).fileName());
    m_layerId.clear();
    m_reading.start({});
}

}  // namespace groundcount::view
