#include "book/state_query.h"

#include "book/row_reader.h"
#include "book/test_stream.h"
#include "method/decimal.h"

namespace groundcount::book {

namespace {

/// A coordinate in the job's unit; the same number when the units agree, so that no digit moves.
double inGrid(double value, const std::string& from, const JobRow& job)
{
    const double per = metresPer(from);
    return from.empty() || per == job.metresPerGridUnit ? value : value * per / job.metresPerGridUnit;
}

const std::string kVoidText = std::to_string(static_cast<int>(TestState::Void));

/// @param where condition over s with ?1 and perhaps ?2
/// @param values of ?1 and ?2, then the state of a void test
Result<std::vector<SiteRow>> readSites(const Store& store, const std::string& where, std::initializer_list<std::string> values)
{
    const auto job = StateQuery(store).job();
    if (!job)
        return tl::unexpected(job.error());
    return readAll<SiteRow>(store.database(),
        "SELECT s.draw, s.lot, s.lift, s.number, s.station, s.offset_ft, s.north, s.east, s.grid_unit,"
        " coalesce((SELECT t.id FROM test_row t WHERE t.draw = s.draw AND t.draw <> '' AND t.site = s.number AND t.state <> ?3"
        " ORDER BY t.started_at DESC, t.id DESC LIMIT 1), '') FROM site_row s" + where + " ORDER BY s.lot, s.lift, s.number, s.draw",
        values,
        [&](RowReader row, SiteRow& s) {
            std::string unit;
            row >> s.draw >> s.lot >> s.lift >> s.number >> s.stationFt >> s.offsetFt >> s.north >> s.east >> unit >> s.testId;
            s.north = inGrid(s.north, unit, *job);
            s.east = inGrid(s.east, unit, *job);
        });
}

}  // namespace

Result<JobRow> StateQuery::job() const
{
    auto rows = readAll<JobRow>(m_store.database(),
        "SELECT j.id, j.name, j.place, j.density_unit, coalesce(c.unit, 'ftUS'), coalesce(c.epsg, 0), coalesce(c.name, ''),"
        " coalesce(c.wkt, ''), j.rule_set FROM job_row j LEFT JOIN crs_row c ON c.id = j.crs ORDER BY j.begun, j.id LIMIT 1",
        {}, [](RowReader row, JobRow& job) {
            row >> job.id >> job.name >> job.place >> job.densityUnit >> job.gridUnit >> job.epsg >> job.crsName >>
                job.crsWkt >> job.ruleSet;
        });
    if (!rows)
        return tl::unexpected(rows.error());
    JobRow job;
    job.densityUnit = "lb/ft3";
    job.gridUnit = "ftUS";
    if (!rows->empty())
        job = std::move(rows->front());
    job.metresPerGridUnit = metresPer(job.gridUnit);
    return job;
}

Result<std::vector<PersonRow>> StateQuery::people() const
{
    return readAll<PersonRow>(m_store.database(),
        "SELECT id, name, role, certificate, certificate_expires, hash FROM person_row ORDER BY name, id", {},
        [](RowReader row, PersonRow& p) { row >> p.id >> p.name >> p.role >> p.certificate >> p.certificateExpires >> p.hash; });
}

Result<std::vector<GaugeRow>> StateQuery::gauges() const
{
    return readAll<GaugeRow>(m_store.database(),
        "SELECT g.id, g.name, g.serial, g.hash, g.prescale, coalesce(c.hash, ''), coalesce(c.on_date, ''), coalesce(c.expires, ''),"
        " coalesce(l.on_date, ''), coalesce(l.expires, ''), coalesce(l.result, ''), g.custody_event, g.custody_by, g.custody_at,"
        " g.custody_place FROM gauge_row g"
        " LEFT JOIN calibration_row c ON c.id = (SELECT id FROM calibration_row WHERE gauge = g.id ORDER BY on_date DESC, hash DESC LIMIT 1)"
        " LEFT JOIN leak_test_row l ON l.id = (SELECT id FROM leak_test_row WHERE gauge = g.id ORDER BY on_date DESC, hash DESC LIMIT 1)"
        " ORDER BY g.name, g.id", {},
        [](RowReader row, GaugeRow& g) {
            row >> g.id >> g.name >> g.serial >> g.hash >> g.prescale >> g.calibrationHash >> g.calibratedOn >>
                g.calibrationExpires >> g.leakTestedOn >> g.leakTestExpires >> g.leakTestResult >> g.custodyEvent >>
                g.custodyBy >> g.custodyAt >> g.custodyPlace;
        });
}

Result<std::vector<StandardCountRow>> StateQuery::standardCounts(const std::string& gauge) const
{
    return readAll<StandardCountRow>(m_store.database(),
        "SELECT hash, gauge, by_person, at, offset_minutes, CAST(density AS REAL), CAST(moisture AS REAL), density_mean,"
        " moisture_mean, density_deviation_pct, moisture_deviation_pct, accepted, override_reason FROM standard_count_row"
        " WHERE ?1 = '' OR gauge = ?1 ORDER BY at DESC, hash DESC", {gauge},
        [](RowReader row, StandardCountRow& s) {
            row >> s.hash >> s.gauge >> s.by >> s.at >> s.offsetMinutes >> s.density >> s.moisture >> s.densityMean >>
                s.moistureMean >> s.densityDeviationPct >> s.moistureDeviationPct >> s.accepted >> s.overrideReason;
        });
}

Result<std::vector<MaterialRow>> StateQuery::materials() const
{
    return readAll<MaterialRow>(m_store.database(),
        "SELECT id, name, description, soil_class FROM material_row ORDER BY name, id", {},
        [](RowReader row, MaterialRow& m) { row >> m.id >> m.name >> m.description >> m.soilClass; });
}

Result<std::vector<ProctorRow>> StateQuery::proctors() const
{
    const auto job = this->job();
    if (!job)
        return tl::unexpected(job.error());
    return readAll<ProctorRow>(m_store.database(),
        "SELECT id, hash, name, material, standard, peak_by, maximum, optimum_pct, maximum_unit FROM proctor_row ORDER BY name, id",
        {}, [&](RowReader row, ProctorRow& p) {
            std::string unit;
            row >> p.id >> p.hash >> p.name >> p.material >> p.standard >> p.peakBy >> p.maximumText >> p.optimumText >> unit;
            const auto maximum = Decimal::parse(p.maximumText);
            const auto optimum = Decimal::parse(p.optimumText);
            const bool metric = unit == "kg_m3";
            const bool jobMetric = job->densityUnit == "kg/m3";
            p.maximum = maximum ? maximum->value() : 0;
            if (metric != jobMetric)
                p.maximum = metric ? DryDensity::kgPerM3(p.maximum).lbPerFt3() : DryDensity::lbPerFt3(p.maximum).kgPerM3();
            p.optimumPct = optimum ? optimum->value() : 0;
        });
}

Result<std::vector<LotRow>> StateQuery::lots() const
{
    return readAll<LotRow>(m_store.database(),
        "SELECT id, hash, name, material, proctor, zone, begin_station, end_station, left_ft, right_ft, minimum_pct, maximum_pct,"
        " window_kind, window_low, window_high, tests_per_lift, sublots, alignment, area FROM lot_row ORDER BY name, id", {},
        [](RowReader row, LotRow& l) {
            row >> l.id >> l.hash >> l.name >> l.material >> l.proctor >> l.zone >> l.beginStationFt >> l.endStationFt >>
                l.leftFt >> l.rightFt >> l.minimumPctText >> l.maximumPctText >> l.windowKind >> l.windowLowText >>
                l.windowHighText >> l.testsPerLift >> l.sublots >> l.alignment >> l.area;
        });
}

Result<std::vector<LiftRow>> StateQuery::lifts(const std::string& lot) const
{
    return readAll<LiftRow>(m_store.database(),
        "SELECT id, lot, number, thickness_in FROM lift_row WHERE ?1 = '' OR lot = ?1 ORDER BY lot, number, id", {lot},
        [](RowReader row, LiftRow& l) { row >> l.id >> l.lot >> l.number >> l.thicknessInText; });
}

Result<std::vector<SiteRow>> StateQuery::sites(const std::string& lot, const std::string& lift) const
{
    return readSites(m_store, " WHERE (?1 = '' OR s.lot = ?1) AND (?2 = '' OR s.lift = ?2)", {lot, lift, kVoidText});
}

Result<std::vector<SiteRow>> sitesOfDraw(const Store& store, const std::string& draw)
{
    return readSites(store, " WHERE s.id = (SELECT subject FROM record WHERE hash = ?1) AND s.draw = ?1", {draw, "", kVoidText});
}

Result<std::vector<ObstacleRow>> StateQuery::obstacles() const
{
    const auto job = this->job();
    if (!job)
        return tl::unexpected(job.error());
    return readAll<ObstacleRow>(m_store.database(),
        "SELECT id, name, obstacle_kind, north, east, radius_ft, uncertainty_ft, path, closed, grid_unit FROM obstacle_row ORDER BY name, id", {},
        [&](RowReader row, ObstacleRow& o) {
            std::string unit;
            row >> o.id >> o.name >> o.obstacleKind >> o.north >> o.east >> o.radiusFt >> o.uncertaintyFt >> o.path >> o.closed >> unit;
            o.north = inGrid(o.north, unit, *job);
            o.east = inGrid(o.east, unit, *job);
        });
}

Result<std::vector<AlignmentRow>> StateQuery::alignments() const
{
    return readAll<AlignmentRow>(m_store.database(), "SELECT id, name, hash, body FROM alignment_row ORDER BY name, id", {},
        [](RowReader row, AlignmentRow& a) { row >> a.id >> a.name >> a.hash >> a.body; });
}

Result<std::vector<std::string>> StateQuery::conflicts() const
{
    // live siblings: amendments of one record that nothing amends in turn
    return readAll<std::string>(m_store.database(),
        "SELECT DISTINCT r.subject FROM record r WHERE r.amends <> '' AND EXISTS (SELECT 1 FROM record p WHERE p.hash = r.amends"
        " AND p.subject = r.subject AND p.kind = r.kind) AND NOT EXISTS (SELECT 1 FROM record n WHERE n.amends = r.hash"
        " AND n.subject = r.subject AND n.kind = r.kind) AND EXISTS (SELECT 1 FROM record s WHERE s.subject = r.subject"
        " AND s.kind = r.kind AND s.amends = r.amends AND s.hash <> r.hash AND NOT EXISTS (SELECT 1 FROM record n"
        " WHERE n.amends = s.hash AND n.subject = r.subject AND n.kind = r.kind)) ORDER BY r.subject", {},
        [](RowReader row, std::string& subject) { row >> subject; });
}

}  // namespace groundcount::book
