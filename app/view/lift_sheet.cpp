#include "view/lift_sheet.h"

#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

constexpr double kMostLifts = 1000;
constexpr double kThickest = 60;  // inches: past it somebody typed millimetres

}  // namespace

std::vector<book::LiftRow> LiftSheet::known() const
{
    std::vector<book::LiftRow> lifts;
    if (m_session)
        std::copy_if(m_session->snapshot().lifts.begin(), m_session->snapshot().lifts.end(), std::back_inserter(lifts), [&](const auto& lift) { return lift.lot == m_subject; });
    std::sort(lifts.begin(), lifts.end(), [](const auto& a, const auto& b) { return a.number > b.number; });
    return lifts;
}

int LiftSheet::next() const
{
    const auto lifts = known();
    return lifts.empty() ? 1 : lifts.front().number + 1;
}

void LiftSheet::typeLift()
{
    auto* entry = new NumberEntry(tr("New lift"), {}, tr("Use these"), this);
    entry->add(tr("Number"), {}, numberText());
    entry->add(tr("Thickness, compacted"), tr("in."), thickness());
    open(entry, {QStringLiteral("number"), QStringLiteral("thickness")});
    entry->goTo(1);
}

void LiftSheet::refresh()
{
    const auto& lots = m_session->snapshot().lots;
    const auto lot = std::find_if(lots.begin(), lots.end(), [&](const auto& l) { return l.id == m_subject; });
    m_title = tr("New lift");
    m_context = lot == lots.end() ? QString() : tr("Lot %1").arg(QString::fromStdString(lot->name));
    const auto lifts = known();
    std::vector<Row> rows;
    for (const auto& lift : lifts)
        rows.push_back(Row::ofWords(tr("Lift %1").arg(lift.number), {}, lift.thicknessInText.empty() ? QString() : tr("%1 in.").arg(QString::fromStdString(lift.thicknessInText))));
    m_lifts.setRows(std::move(rows));
    const auto wanted = KitForm::number(QStringLiteral("number")).value_or(next());
    const auto thick = KitForm::number(QStringLiteral("thickness"));
    const bool isThere = std::any_of(lifts.begin(), lifts.end(), [&](const auto& lift) { return lift.number == wanted; });
    m_sealText = tr("Seal lift %1").arg(numberText());
    m_sealNotYet = lot == lots.end()   ? tr("Seal: a lot comes first")
                   : wanted != std::floor(wanted) || std::abs(wanted) > kMostLifts ? tr("The lift's number is %1; allowed: whole numbers from %2 to %3").arg(wanted).arg(-kMostLifts).arg(kMostLifts)
                   : isThere           ? tr("Seal: the lot has a lift %1 already").arg(wanted)
                   : !thick            ? tr("Seal: type the thickness")
                   : !(*thick > 0 && *thick <= kThickest) ? tr("The thickness is %1 in.; allowed: above 0 to %2").arg(*thick).arg(kThickest)
                                                          : QString();
}

Result<std::vector<book::Entry>> LiftSheet::entries() const
{
    book::Entry entry;
    entry.kind = "lift";
    entry.subject = Session::newId();
    entry.body = {{"lot", m_subject}, {"number", numberText().toInt()}, {"thickness_in", text("thickness")}};
    return std::vector{entry};
}

}  // namespace groundcount::view
