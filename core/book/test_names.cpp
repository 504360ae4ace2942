#include "book/test_names.h"

#include <cstdlib>

namespace groundcount::book {

namespace {

constexpr const char* kLot = "SELECT name, material, proctor FROM lot_row WHERE id = ?";
constexpr const char* kLift = "SELECT CAST(number AS TEXT) FROM lift_row WHERE id = ?";
constexpr const char* kGauge = "SELECT name FROM gauge_row WHERE id = ?";
constexpr const char* kPerson = "SELECT name, certificate FROM person_row WHERE id = ?";
constexpr const char* kMaterial = "SELECT name FROM material_row WHERE id = ?";
constexpr const char* kProctor = "SELECT name FROM proctor_row WHERE id = ?";
constexpr const char* kStandard = "SELECT density, moisture, override_reason FROM standard_count_row"
                                  " WHERE id = (SELECT subject FROM record WHERE hash = ?)";
constexpr const char* kNumber = "SELECT number FROM test_row WHERE id = ?";

}  // namespace

Result<const TestNames::Texts*> TestNames::look(Memo& memo, const char* sql, std::string_view id)
{
    static const Texts kNone;
    if (id.empty())
        return &kNone;
    if (const auto known = memo.find(id); known != memo.end())
        return &known->second;
    auto query = m_db.use(sql);
    if (!query)
        return tl::unexpected(query.error());
    const auto found = query->bind(1, std::string(id)).step();
    if (!found)
        return tl::unexpected(found.error());
    Texts texts;
    for (int i = 0; *found && i < query->columns(); ++i)
        texts[static_cast<std::size_t>(i)] = query->text(i);
    return &memo.emplace(id, std::move(texts)).first->second;
}

Result<void> TestNames::fill(TestRow& t, std::string_view standardCount)
{
    Memo ofTheTest;  // a number is rarely asked for twice
    const auto lot = look(m_lots, kLot, t.lot);
    const auto lift = look(m_lifts, kLift, t.lift);
    const auto gauge = look(m_gauges, kGauge, t.gauge);
    const auto person = look(m_people, kPerson, t.person);
    const auto parent = look(ofTheTest, kNumber, t.retestOf);
    const auto standard = look(m_standards, kStandard, standardCount);
    for (const auto* answer : {&lot, &lift, &gauge, &person, &parent, &standard})
        if (!*answer)
            return tl::unexpected(answer->error());
    t.lotName = (**lot)[0];
    if (t.material.empty())
        t.material = (**lot)[1];
    if (t.proctor.empty())
        t.proctor = (**lot)[2];
    t.liftNumber = std::atoi((**lift)[0].c_str());
    t.gaugeName = (**gauge)[0];
    t.personName = (**person)[0];
    t.certificate = (**person)[1];
    t.retestOfNumber = (**parent)[0];
    t.densityStandard = (**standard)[0];
    t.moistureStandard = (**standard)[1];
    if (!(**standard)[2].empty())
        t.overrides += (t.overrides.empty() ? "" : "; ") + (**standard)[2];
    const auto material = look(m_materials, kMaterial, t.material);
    const auto proctor = look(m_proctors, kProctor, t.proctor);
    for (const auto* answer : {&material, &proctor})
        if (!*answer)
            return tl::unexpected(answer->error());
    t.materialName = (**material)[0];
    t.proctorName = (**proctor)[0];
    return {};
}

}  // namespace groundcount::book
