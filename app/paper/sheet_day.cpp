#include "book/state_query.h"
#include "paper/paper_text.h"

#include <algorithm>
#include <set>

namespace groundcount::paper {
namespace {

Table testTable(const std::vector<book::TestRow>& tests, const QString& unit)
{
    Table table;
    table.columns = {{Words::tr("No."), 0.7}, {Words::tr("Kind"), 1.15}, {Words::tr("Lot, lift"), 0.85}, {Words::tr("Station, offset"), 2.05},
                     {Words::tr("Wet %1").arg(unit), 0.85, Align::Right}, {Words::tr("Water %1").arg(unit), 0.85, Align::Right}, {Words::tr("Dry %1").arg(unit), 0.85, Align::Right},
                     {Words::tr("Moisture %"), 1, Align::Right}, {Words::tr("Max. %1").arg(unit), 0.85, Align::Right}, {Words::tr("Compaction %"), 1.2, Align::Right},
                     {Words::tr("Needed %"), 0.85, Align::Right}, {Words::tr("Window %"), 1.5, Align::Right}, {Words::tr("Result"), 1.55}};
    for (const auto& test : tests)
        table.rows.push_back({text(test.number), purposeWord(test.purpose) + (test.retestOfNumber.empty() ? QString() : ' ' + text(test.retestOfNumber)),
                              text(test.lotName) + ", " + QString::number(test.liftNumber), stationText(test.stationFt) + ' ' + offsetText(test.offsetFt), figure(test.wet),
                              figure(test.water), figure(test.dry), figure(test.contentPct), figure(test.maximum), figure(test.compactionPct), requiredText(test), windowText(test),
                              stateWord(test.state)});
    table.none = Words::tr("No test.");
    return table;
}

QStringList remarksOf(const book::TestRow& test)
{
    QStringList remarks;
    if (!test.overrides.empty())
        remarks.append(Words::tr("overridden: %1").arg(text(test.overrides)));
    if (test.state == book::TestState::Fail) {
        QStringList reasons;
        for (const auto& reason : test.reasons)
            reasons.append(text(reason));
        remarks.append(reasons.join(QStringLiteral(", ")));
    }
    if (!test.rework.empty())
        remarks.append(Words::tr("reworked: %1").arg(text(test.rework)));
    if (!test.waitingFor.empty() && test.state == book::TestState::Waiting)
        remarks.append(Words::tr("waits for the %1").arg(text(test.waitingFor)));
    if (test.conflict)
        remarks.append(Words::tr("two amendments are in conflict"));
    return remarks;
}

}  // namespace

Result<Document> daySheet(const Source& source, const QDate& day, const std::string& person)
{
    const book::StateQuery query(source.store);
    const auto job = query.job();
    auto tests = query.tests({.lot = {}, .lift = {}, .person = person});
    const auto counts = query.standardCounts({});
    const auto gauges = query.gauges();
    if (!job || !tests || !counts || !gauges)
        return tl::unexpected(!job ? job.error() : !tests ? tests.error() : !counts ? counts.error() : gauges.error());
    std::erase_if(*tests, [&](const book::TestRow& test) { return localDay(test.startedAt, test.offsetMinutes) != day; });
    if (tests->empty())
        return refused("The book has no test of " + day.toString(Qt::ISODate).toStdString() + (person.empty() ? "." : " by this person."));
    std::set<QString> people;
    for (const auto& test : *tests)
        people.insert(text(test.personName) + (test.certificate.empty() ? QString() : QStringLiteral(", ") + text(test.certificate)));
    Document sheet = headed(source, *job, Words::tr("Density tests of the day"), day.toString(Qt::ISODate));
    const auto count = [&](book::TestState state) { return QString::number(std::count_if(tests->begin(), tests->end(), [&](const auto& t) { return t.state == state; })); };
    sheet.blocks.push_back(Facts{{{Words::tr("Technician"), QStringList(people.begin(), people.end()).join(QStringLiteral("; "))},
                                  {Words::tr("Tests"), QString::number(tests->size())},
                                  {Words::tr("Pass / fail"), count(book::TestState::Pass) + " / " + count(book::TestState::Fail)},
                                  {Words::tr("Provisional / information only / void"), count(book::TestState::Waiting) + " / " + count(book::TestState::InformationOnly) + " / " + count(book::TestState::Void)}}});
    sheet.blocks.push_back(Heading{Words::tr("Gauges")});
    Table gaugeTable{{{Words::tr("Gauge"), 1.2}, {Words::tr("Serial"), 0.8}, {Words::tr("Standard count taken"), 1.8}, {Words::tr("Density"), 0.8, Align::Right}, {Words::tr("Off the mean %"), 1, Align::Right},
                      {Words::tr("Moisture"), 0.8, Align::Right}, {Words::tr("Off the mean %"), 1, Align::Right}, {Words::tr("Accepted"), 0.9}, {Words::tr("Calibration until"), 1.4}, {Words::tr("Leak test until"), 1.4}}, {}, Words::tr("No gauge.")};
    const auto percent = [](const std::optional<double>& value) { return value ? (*value < 0 ? QChar(0x2212) : QChar('+')) + QString::number(std::abs(*value), 'f', 1) : QStringLiteral("–"); };
    for (const auto& gauge : *gauges) {
        if (std::none_of(tests->begin(), tests->end(), [&](const auto& t) { return t.gauge == gauge.id; }))
            continue;
        QStringList row{text(gauge.name), text(gauge.serial), Words::tr("none"), {}, {}, {}, {}, Words::tr("no"), text(gauge.calibrationExpires), text(gauge.leakTestExpires)};
        for (const auto& set : *counts) {
            if (set.gauge != gauge.id || localDay(set.at, set.offsetMinutes) != day)
                continue;
            row[2] = localTime(set.at, set.offsetMinutes);
            row[3] = QString::number(set.density, 'f', 0);
            row[4] = percent(set.densityDeviationPct);
            row[5] = QString::number(set.moisture, 'f', 0);
            row[6] = percent(set.moistureDeviationPct);
            row[7] = set.accepted ? Words::tr("yes") : set.overrideReason.empty() ? Words::tr("no") : Words::tr("overridden: %1").arg(text(set.overrideReason));
            break;
        }
        gaugeTable.rows.push_back(row);
    }
    sheet.blocks.push_back(gaugeTable);
    sheet.blocks.push_back(Heading{Words::tr("Tests")});
    sheet.blocks.push_back(testTable(*tests, densityUnit(*job)));
    Table remarks{{{Words::tr("No."), 0.6}, {Words::tr("Remark"), 6}, {Words::tr("Record"), 1.4}}, {}, Words::tr("No remark.")};
    for (const auto& test : *tests)
        if (const QStringList said = remarksOf(test); !said.isEmpty())
            remarks.rows.push_back({text(test.number), said.join(QStringLiteral("; ")), text(test.recordHash).left(16)});
    sheet.blocks.push_back(Heading{Words::tr("Remarks")});
    sheet.blocks.push_back(remarks);
    sheet.blocks.push_back(governs());
    sheet.blocks.push_back(Signatures{{Words::tr("Technician"), Words::tr("Project engineer")}});
    sheet.code = text(tests->back().recordHash);
    return sheet;
}

}  // namespace groundcount::paper
