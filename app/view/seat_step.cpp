#include "view/seat_step.h"

#include "book/kinds.h"
#include "method/site/hole_depth.h"
#include "view/figure_text.h"
#include "view/sheet_book.h"

#include <algorithm>

namespace groundcount::view {

QString SeatStep::modeOf(const QString& depthIn)
{
    return depthIn.toDouble() > 0 ? QStringLiteral("direct") : QStringLiteral("backscatter");
}

QString SeatStep::caution() const
{
    return tr("Driving the rod: hands clear of the hammer's path, eyes and ears protected. Buried utilities are located first. Local rules and the licence govern.");
}

void SeatStep::pickSurface(int index)
{
    type("surface", index == 0 ? QStringLiteral("smooth") : QStringLiteral("filled"));
}

void SeatStep::pickRock(int index)
{
    type("rocks", index == 0 ? QStringLiteral("no") : QStringLiteral("yes"));
}

void SeatStep::pickDepth(int index)
{
    if (index >= 0 && index < m_depths.size())
        type("depth", m_depths[index]);
}

void SeatStep::typeHole()
{
    auto* entry = new NumberEntry(tr("Hole"), m_depthIndex >= 0 ? m_depthWords[m_depthIndex] : QString(), tr("Use this depth"), this);
    entry->add(tr("Hole depth"), QStringLiteral("in."), typed("hole"));
    open(entry, {"hole"});
}

void SeatStep::judgeEntry(NumberEntry& entry)
{
    entry.field(0)->setDoubt(m_holeTrouble);
    entry.setNote(m_holeTrouble.isEmpty() ? m_holeNeed : QString(), {}, Mark::Nothing);
    entry.setNotYet(entry.typedAt(0).isEmpty() ? tr("Type the depth of the hole") : QString());
}

void SeatStep::listDepths()
{
    m_depths.clear();
    m_depthWords.clear();
    m_depthIndex = -1;
    std::vector<std::string> depths;
    const auto& gauge = m_facts.session->gauge();
    if (const auto calibration = gauge ? m_facts.book->calibration(gauge->id) : std::nullopt)
        for (const auto& curve : calibration->at("curves"))
            depths.push_back(book::textAt(curve, "depth_in"));
    if (isSealed() && std::find(depths.begin(), depths.end(), typed("depth").toStdString()) == depths.end())
        depths.push_back(typed("depth").toStdString());
    std::sort(depths.begin(), depths.end(), [](const auto& a, const auto& b) { return QString::fromStdString(a).toDouble() < QString::fromStdString(b).toDouble(); });
    for (const auto& depth : depths) {
        const QString text = QString::fromStdString(depth);
        if (text == typed("depth"))
            m_depthIndex = static_cast<int>(m_depths.size());
        m_depths.append(text);
        m_depthWords.append(text.toDouble() > 0 ? tr("%1 in.").arg(text) : tr("Surface"));
    }
}

void SeatStep::refresh()
{
    listDepths();
    m_needsHole = m_depthIndex < 0 || typed("depth").toDouble() > 0;
    m_liftThickness.clear();
    if (m_facts.place)
        if (const auto lift = m_facts.book->lift(m_facts.place->lift))
            m_liftThickness = lift->thicknessInText;
    m_lift = m_liftThickness.empty() ? tr("Lift thickness is not in the book") : tr("Lift is %1 in. thick").arg(QString::fromStdString(m_liftThickness));
    const auto voidDepth = m_facts.book->length("seat.void_depth");
    m_voids = tr("Voids filled with native fines, at most %1 %2 deep").arg(QString::fromStdString(voidDepth.text), voidDepth.unit);
    checkTheHole();
    setNotYet(isSealed() ? QString() : whyNotYet());
}

void SeatStep::checkTheHole()
{
    m_holeTrouble.clear();
    m_holeNeed.clear();
    if (m_depthIndex < 0 || !m_needsHole)
        return;
    const auto margin = m_facts.book->length("seat.hole_below_depth");
    const Length depth = Length::inches(typed("depth").toDouble());
    m_holeNeed = tr("At least %1 in., %2 %3 below the test").arg(figureText(depth.inches() + margin.length().inches(), 1), QString::fromStdString(margin.text), margin.unit);
    // Without the lift's thickness only the hole is checked: the test's own depth stands for the lift.
    const Length lift = m_liftThickness.empty() ? depth : Length::inches(QString::fromStdString(m_liftThickness).toDouble());
    const Length hole = has("hole") ? Length::inches(typed("hole").toDouble()) : Length::inches(depth.inches() + margin.length().inches());
    const auto checked = method::checkHole(depth, hole, margin.length(), lift);
    if (!checked)
        m_holeTrouble = QString::fromStdString(checked.error().what);
}

QString SeatStep::whyNotYet() const
{
    if (surfaceIndex() < 0)
        return tr("Seal: say how the surface is");
    if (rockIndex() < 0)
        return tr("Seal: does the gauge sit flat?");
    if (rockIndex() == 1)
        return tr("Seal: the gauge must not rock");
    if (m_depthIndex < 0)
        return m_depths.isEmpty() ? tr("Seal: the gauge has no calibrated depth") : tr("Seal: choose the depth");
    if (m_needsHole && !has("hole"))
        return tr("Seal: type the depth of the hole");
    if (!m_holeTrouble.isEmpty())
        return tr("Seal: hole and depth break the rule");
    return {};
}

Result<std::vector<book::Entry>> SeatStep::entries() const
{
    if (const QString why = whyNotYet(); !why.isEmpty())
        return refused((m_holeTrouble.isEmpty() ? why : m_holeTrouble).toStdString());
    book::Body body{{"surface", typed("surface").toStdString()}, {"rocks", false}, {"depth_in", typed("depth").toStdString()}};
    if (m_needsHole)
        body["hole_depth_in"] = typed("hole").toStdString();
    if (!m_liftThickness.empty())
        body["lift_thickness_in"] = m_liftThickness;
    return std::vector{entry("seating", std::move(body))};
}

QJsonObject SeatStep::textOf(const book::Body& seating)
{
    const auto text = [&](const char* key) { return QString::fromStdString(book::textAt(seating, key)); };
    return {{QStringLiteral("surface"), text("surface")}, {QStringLiteral("rocks"), QStringLiteral("no")}, {QStringLiteral("depth"), text("depth_in")}, {QStringLiteral("hole"), text("hole_depth_in")}};
}

}  // namespace groundcount::view
