#include "view/job_sheet.h"

#include "book/live.h"
#include "book/store.h"
#include "gis/crs.h"
#include "gis/new_job.h"
#include "view/system_rows.h"

#include <QFile>

namespace groundcount::view {
namespace {

constexpr qint64 kMostRulesBytes = 1'000'000;

}  // namespace

QJsonObject JobSheet::fromBook() const
{
    QJsonObject texts;
    const auto& job = m_session->job();
    for (const auto& [key, text] : {std::pair("name", job.name), std::pair("place", job.place)})
        if (!text.empty())
            texts.insert(QLatin1String(key), QString::fromStdString(text));
    return texts;
}

void JobSheet::searchSystem(const QString& words)
{
    auto rows = systemRows(words);
    m_systemTrouble = rows ? QString() : QString::fromStdString(rows.error().what);
    m_systems.setRows(rows ? std::move(*rows) : std::vector<Row>());
    emit changed();
}

void JobSheet::pickSystem(const QString& code)
{
    const auto system = gis::Crs::fromEpsg(code.toInt());
    const auto unit = system ? gis::gridUnitOf(*system) : tl::unexpected(system.error());
    m_systemTrouble = unit ? QString() : QString::fromStdString(unit.error().what);
    if (!unit)
        return emit changed();
    m_systems.setRows({});
    type(QStringLiteral("system"), code);
}

void JobSheet::takeRules(const QUrl& url)
{
    QFile file(url.toLocalFile());
    const auto text = file.open(QIODevice::ReadOnly) ? file.read(kMostRulesBytes) : QByteArray();
    const auto read = file.isOpen() ? method::ruleSetFromJson(std::string_view(text.constData(), static_cast<std::size_t>(text.size()))) : refused(tr("The file cannot be read: %1.").arg(file.errorString()).toStdString());
    m_rulesTrouble = read ? QString() : QString::fromStdString(read.error().what);
    if (read)
        return type(QStringLiteral("rules"), QString::fromUtf8(text));
    emit changed();
}

Result<method::RuleSet> JobSheet::rules() const
{
    return has("rules") ? method::ruleSetFromJson(typed("rules").toStdString()) : method::neutralRules();
}

void JobSheet::refresh()
{
    const auto& job = m_session->job();
    m_title = isOld() ? QString::fromStdString(job.name) : tr("New job");
    m_systemText = isOld()         ? QString::fromStdString(job.crsName) + (job.epsg > 0 ? QStringLiteral(", EPSG:%1").arg(job.epsg) : QString())
                   : has("system") ? systemName(typed("system").toInt())
                                   : tr("not chosen yet");
    const auto set = isOld() ? Result<method::RuleSet>(m_session->ruleSet()) : rules();
    m_rulesText = set ? QString::fromStdString(set->name + ", rev. " + set->revision) : QString::fromStdString(set.error().what);
    m_densityText = isOld() ? QString::fromStdString(job.densityUnit) : set ? QString::fromStdString(set->densityUnit) : QString();
    m_asksPerson = !isOld() && m_session->person().id.empty();
    QJsonObject now = draft();
    now.remove(QStringLiteral("why"));
    m_asksWhy = isOld() && now != fromBook();
    m_sealText = isOld() ? tr("Seal what changed") : tr("Begin the job");
    m_sealNotYet = notYet();
}

QString JobSheet::notYet() const
{
    if (name().trimmed().isEmpty())
        return tr("Seal: type the job's name");
    if (isOld())
        return !m_asksWhy ? tr("Nothing has changed") : why().trimmed().isEmpty() ? tr("Seal: say why it changes") : QString();
    if (!has("system"))
        return tr("Seal: choose the coordinate system");
    if (!m_asksPerson)
        return {};
    return person().trimmed().isEmpty() ? tr("Seal: type your name") : roleIndex() < 0 ? tr("Seal: choose your role") : QString();
}

Result<std::vector<book::Entry>> JobSheet::entries() const
{
    if (isOld())
        return amendment();
    auto set = rules();
    if (!set)
        return tl::unexpected(set.error());
    return gis::newJobEntries({.name = text("name"), .place = text("place"), .epsg = typed("system").toInt(), .rules = std::move(*set),
                               .by = m_asksPerson ? std::string() : m_session->person().id, .person = text("person"),
                               .role = roleIndex() == 1 ? "engineer" : "technician", .certificate = {}});
}

Result<std::vector<book::Entry>> JobSheet::amendment() const
{
    const auto records = m_session->store().records({.subject = m_subject, .kind = "job"});
    if (!records)
        return tl::unexpected(records.error());
    const auto* live = book::LiveRecords(*records).latest("job");
    if (!live)
        return refused("The job of this book has no record that speaks.");
    book::Entry job;
    job.kind = "job";
    job.subject = m_subject;
    job.amends = live->hash;
    job.reason = text("why");
    job.body = live->body;
    job.body["name"] = text("name");
    job.body.erase("place");
    put(job.body, "place", "place");
    return std::vector{job};
}

void JobSheet::afterSeal()
{
    setSubjectQuietly(m_session->job().id);
}

}  // namespace groundcount::view
