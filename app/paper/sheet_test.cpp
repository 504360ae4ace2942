#include "book/evidence.h"
#include "book/kinds.h"
#include "book/live.h"
#include "book/state_query.h"
#include "method/accept/explain.h"
#include "paper/paper_text.h"

#include <algorithm>

namespace groundcount::paper {
namespace {

/// A value of a body with the unit of its key: "17 in".
QString withUnitText(const book::Body& body, const char* stem, book::Unit family)
{
    const auto value = book::withUnit(body, stem, family);
    QString unit = text(value.unit);
    unit.replace(QStringLiteral("lb_ft3"), QStringLiteral("lb/ft³")).replace(QStringLiteral("kg_m3"), QStringLiteral("kg/m³"));
    return value.text.empty() ? QStringLiteral("–") : figure(value.text) + ' ' + unit;
}

QString number(const book::Body& body, const char* key)
{
    return body.contains(key) ? text(body.at(key).dump()).remove('"') : QString();
}

Table hazardTable(const book::Body& clearance)
{
    Table table{{{Words::tr("Hazard"), 1.2}, {Words::tr("Needed"), 0.8, Align::Right}, {Words::tr("Found"), 0.8, Align::Right}, {Words::tr("Unsure by"), 0.8, Align::Right}, {Words::tr("Known by"), 0.7}, {Words::tr("Answer"), 0.9}, {Words::tr("Remedy or override"), 2}}, {}, {}};
    for (const auto& hazard : clearance.at("hazards")) {
        const QString reason = text(book::textAt(hazard, "override_reason"));
        table.rows.push_back({text(book::textAt(hazard, "hazard")), withUnitText(hazard, "required", book::Unit::Length), withUnitText(hazard, "distance", book::Unit::Length), withUnitText(hazard, "uncertainty", book::Unit::Length),
                              text(book::textAt(hazard, "known_by")), text(book::textAt(hazard, "answer")), reason.isEmpty() ? text(book::textAt(hazard, "remedy")) : Words::tr("OVERRIDDEN: %1").arg(reason)});
    }
    return table;
}

Table readingTable(const std::vector<const book::Record*>& readings)
{
    Table table{{{Words::tr("Reading"), 0.6}, {Words::tr("Mode, depth in."), 1.1}, {Words::tr("Orientation"), 1}, {Words::tr("Seconds"), 0.6, Align::Right}, {Words::tr("Density count"), 0.9, Align::Right}, {Words::tr("Moisture count"), 0.9, Align::Right}, {Words::tr("Wet density"), 1, Align::Right}, {Words::tr("Water density"), 1, Align::Right}, {Words::tr("Moisture %"), 0.8, Align::Right}}, {}, Words::tr("No reading.")};
    for (const auto* record : readings) {
        const auto& b = record->body;
        table.rows.push_back({number(b, "number"), text(book::textAt(b, "mode")) + ", " + text(book::textAt(b, "depth_in")), text(book::textAt(b, "orientation")), number(b, "seconds"), number(b, "density_count"), number(b, "moisture_count"),
                              withUnitText(b, "wet_density", book::Unit::Density), withUnitText(b, "water_density", book::Unit::Density), figure(book::textAt(b, "water_content_pct"))});
    }
    return table;
}

void addEvidence(Document& sheet, const book::LiveRecords& live)
{
    if (const auto* clearance = live.latest("clearance")) {
        sheet.blocks.push_back(Heading{Words::tr("Clearances")});
        sheet.blocks.push_back(hazardTable(clearance->body));
    }
    if (const auto* seating = live.latest("seating"))
        sheet.blocks.push_back(Facts{{{Words::tr("Surface"), text(book::textAt(seating->body, "surface"))}, {Words::tr("Hole depth in."), figure(book::textAt(seating->body, "hole_depth_in"))},
                                      {Words::tr("Test depth in."), figure(book::textAt(seating->body, "depth_in"))}, {Words::tr("Lift thickness in."), figure(book::textAt(seating->body, "lift_thickness_in"))}}});
    sheet.blocks.push_back(Heading{Words::tr("Readings")});
    sheet.blocks.push_back(readingTable(live.all("reading")));
    if (const auto* sample = live.latest("sample"))
        sheet.blocks.push_back(Facts{{{Words::tr("Sample"), withUnitText(sample->body, "total_mass", book::Unit::Mass)}, {Words::tr("Retained on %1").arg(text(book::textAt(sample->body, "sieve"))), withUnitText(sample->body, "retained_mass", book::Unit::Mass)},
                                      {Words::tr("Over 3 in."), withUnitText(sample->body, "over_3in_mass", book::Unit::Mass)}, {Words::tr("Other moisture %"), figure(book::textAt(sample->body, "other_water_content_pct")) + ' ' + text(book::textAt(sample->body, "other_method"))}}});
}

/// A figure in the job's unit, and in the other system beside it.
QString bothUnits(const std::string& decimal, const book::JobRow& job)
{
    if (decimal.empty())
        return QStringLiteral("–");
    const double value = text(decimal).toDouble();
    const bool si = job.densityUnit == "kg/m3";
    const DryDensity density = si ? DryDensity::kgPerM3(value) : DryDensity::lbPerFt3(value);
    return Words::tr("%1 %2 (%3 %4)").arg(figure(decimal), densityUnit(job), si ? QString::number(density.lbPerFt3(), 'f', 1) : QString::number(density.kgPerM3(), 'f', 0), si ? QStringLiteral("lb/ft³") : QStringLiteral("kg/m³"));
}

void addVerdict(Document& sheet, const Source& source, const book::TestRow& test, const book::JobRow& job)
{
    sheet.blocks.push_back(Heading{Words::tr("Verdict: %1").arg(stateWord(test.state))});
    QStringList reasons;
    for (const auto& reason : test.reasons)
        reasons.append(text(reason));
    sheet.blocks.push_back(Facts{{{Words::tr("Percent compaction"), figure(test.compactionPct) + (test.uncertaintyPct.empty() ? QString() : QStringLiteral(" ± ") + figure(test.uncertaintyPct))}, {Words::tr("Needed %"), requiredText(test)},
                                  {Words::tr("Moisture %"), figure(test.contentPct)}, {Words::tr("Window %"), windowText(test)}, {Words::tr("Wet density"), bothUnits(test.wet, job)}, {Words::tr("Dry density"), bothUnits(test.dry, job)},
                                  {Words::tr("Maximum, corrected"), bothUnits(test.maximum, job)}, {Words::tr("Coarse particles %"), figure(test.coarsePct)}}});
    if (!reasons.isEmpty())
        sheet.blocks.push_back(Paragraph{Words::tr("Reasons: %1.").arg(reasons.join(QStringLiteral(", ")))});
    if (!test.overrides.empty())
        sheet.blocks.push_back(Paragraph{Words::tr("Overridden: %1. This test is for information only.").arg(text(test.overrides))});
    Table arithmetic{{{Words::tr("What"), 1.3}, {Words::tr("Formula"), 1.8}, {Words::tr("Numbers"), 2.2}, {Words::tr("Value"), 1, Align::Right}, {Words::tr("Source"), 1.1}}, {}, {}};
    if (const auto evidence = book::sealedEvidence(source.store, test.id)) {
        const auto rules = method::evaluationRules(evidence->rules);
        const auto evaluation = rules ? method::evaluate(evidence->input, *rules) : Result<method::Evaluation>(tl::unexpected(rules.error()));
        if (evaluation)
            for (const auto& step : method::explain(evidence->input, *rules, *evaluation))
                arithmetic.rows.push_back({text(step.name), text(step.formula), text(step.numbers), text(step.value), text(step.source)});
        arithmetic.none = evaluation ? QString() : text(evaluation.error().what);
    } else {
        arithmetic.none = text(evidence.error().what);
    }
    sheet.blocks.push_back(Heading{Words::tr("Arithmetic")});
    sheet.blocks.push_back(arithmetic);
}

void addRecords(Document& sheet, const std::vector<book::Record>& records, const std::vector<book::PersonRow>& people)
{
    Table table{{{Words::tr("Sealed"), 1.8}, {Words::tr("By"), 1.1}, {Words::tr("What"), 0.9}, {Words::tr("Why changed"), 2.2}, {Words::tr("Record hash"), 3.6}}, {}, {}};
    for (const auto& record : records) {
        const auto by = std::find_if(people.begin(), people.end(), [&](const auto& person) { return person.id == record.by; });
        table.rows.push_back({localTime(record.at, record.offsetMinutes), by == people.end() ? QStringLiteral("–") : text(by->name), text(record.kind), text(record.reason), text(record.hash)});
    }
    sheet.blocks.push_back(Heading{Words::tr("Records")});
    sheet.blocks.push_back(table);
}

}  // namespace

Result<Document> testSheet(const Source& source, const std::string& testId)
{
    const book::StateQuery query(source.store);
    const auto test = query.test(testId);
    const auto job = query.job();
    const auto records = source.store.records({.subject = testId, .kind = {}});
    const auto gauges = query.gauges();
    const auto people = query.people();
    if (!test || !job || !records || !gauges || !people)
        return tl::unexpected(!test ? test.error() : !job ? job.error() : !records ? records.error() : !gauges ? gauges.error() : people.error());
    Document sheet = headed(source, *job, Words::tr("Density test %1").arg(text(test->number)), localTime(test->startedAt, test->offsetMinutes));
    const auto gauge = std::find_if(gauges->begin(), gauges->end(), [&](const auto& g) { return g.id == test->gauge; });
    const QString kind = purposeWord(test->purpose) + (test->retestOfNumber.empty() ? QString() : Words::tr(" of %1").arg(text(test->retestOfNumber)));
    sheet.blocks.push_back(Facts{{{Words::tr("Lot, lift"), text(test->lotName) + ", " + QString::number(test->liftNumber)}, {Words::tr("Kind"), kind}, {Words::tr("Station"), stationText(test->stationFt)}, {Words::tr("Offset ft"), offsetText(test->offsetFt)},
                                  {Words::tr("Grid N, E (%1)").arg(text(job->gridUnit)), QString::number(test->north, 'f', 2) + ", " + QString::number(test->east, 'f', 2)}, {Words::tr("Position by"), text(test->fixKind) + (test->fixes ? Words::tr(", %1 fixes").arg(test->fixes) : QString())},
                                  {Words::tr("Material"), text(test->materialName)}, {Words::tr("Reference test"), text(test->proctorName)},
                                  {Words::tr("Technician"), text(test->personName) + (test->certificate.empty() ? QString() : QStringLiteral(", ") + text(test->certificate))}, {Words::tr("Gauge, serial"), text(test->gaugeName) + (gauge == gauges->end() ? QString() : QStringLiteral(", ") + text(gauge->serial))},
                                  {Words::tr("Standard counts"), figure(test->densityStandard) + " / " + figure(test->moistureStandard)}, {Words::tr("Calibration until"), gauge == gauges->end() ? QString() : text(gauge->calibrationExpires)}}});
    if (!test->rework.empty())
        sheet.blocks.push_back(Paragraph{Words::tr("Reworked before this test: %1.").arg(text(test->rework))});
    const book::LiveRecords live(*records);
    if (const auto* out = live.latest("void"))
        sheet.blocks.push_back(Paragraph{Words::tr("VOID: %1.").arg(text(out->reason))});
    addVerdict(sheet, source, *test, *job);
    addEvidence(sheet, live);
    addRecords(sheet, *records, *people);
    sheet.blocks.push_back(governs());
    sheet.blocks.push_back(Signatures{{Words::tr("Technician")}});
    sheet.code = text(test->recordHash);
    return sheet;
}

}  // namespace groundcount::paper
