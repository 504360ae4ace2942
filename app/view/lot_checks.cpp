// What a lot's sheet still lacks, or holds that cannot be.
#include "gis/lot_ground.h"
#include "view/lot_sheet.h"

#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

constexpr double kHighestPct = 150;  // beyond it the two numbers were swapped
constexpr double kMostTests = 1000;

}  // namespace

QString LotSheet::notYet() const
{
    if (m_session->job().id.empty())
        return tr("Seal: the book has no job yet");
    if (name().trimmed().isEmpty())
        return tr("Seal: type the lot's name");
    const auto& lots = m_session->snapshot().lots;
    if (std::any_of(lots.begin(), lots.end(), [&](const auto& lot) { return lot.name == text("name") && lot.id != m_subject; }))
        return tr("Seal: the book has a lot %1 already").arg(name().trimmed());
    for (const QString& missing : {groundNotYet(), goalNotYet()})
        if (!missing.isEmpty())
            return missing;
    return !isOld() ? QString() : !m_asksWhy ? tr("Nothing has changed") : why().trimmed().isEmpty() ? tr("Seal: say why it changes") : QString();
}

QString LotSheet::groundNotYet() const
{
    if (hasCorners())
        return {};
    if (lineIndex() < 0)
        return m_lacksLine ? tr("Seal: a line comes first") : tr("Seal: choose the line");
    const auto begin = number(QStringLiteral("begin")), end = number(QStringLiteral("end")), left = number(QStringLiteral("left")), right = number(QStringLiteral("right"));
    if (!begin || !end)
        return tr("Seal: type the stations");
    if (!left || !right)
        return tr("Seal: type the width");
    const Length unit = Length::metres(m_session->job().metresPerGridUnit);
    const auto ground = gis::stripGround(m_session->lines().all()[static_cast<std::size_t>(lineIndex())].line, *begin, *end, Length::feet(*left), Length::feet(*right), unit);
    return ground ? QString() : QString::fromStdString(ground.error().what);
}

QString LotSheet::goalNotYet() const
{
    if (referenceIndex() < 0)
        return tr("Seal: choose the reference test");
    const auto least = number(QStringLiteral("min")), most = number(QStringLiteral("max"));
    if (!least && !most)
        return tr("Seal: type the percent compaction");
    for (const auto& pct : {least, most})
        if (pct && !(*pct > 0 && *pct <= kHighestPct))
            return tr("Percent compaction is %1; allowed: above 0 to %2").arg(*pct).arg(kHighestPct);
    if (least && most && *least >= *most)
        return tr("At least %1 % and at most %2 % leave nothing between").arg(*least).arg(*most);
    const QString window = windowNotYet();
    return window.isEmpty() ? testsNotYet() : window;
}

QString LotSheet::windowNotYet() const
{
    if (windowIndex() == 0)
        return {};
    if (!has("low") || !has("high"))
        return tr("Seal: type the moisture window");
    return limit("low", true).toDouble() < limit("high", false).toDouble() ? QString() : tr("The window's wettest, %1, is not above its driest, %2").arg(m_wettest, m_driest);
}

QString LotSheet::testsNotYet() const
{
    const auto isCount = [](double value) { return value == std::floor(value) && value >= 1 && value <= kMostTests; };
    const auto tests = number(QStringLiteral("tests")), parts = number(QStringLiteral("sublots"));
    if (!tests)
        return tr("Seal: type the tests per lift");
    if (!isCount(*tests))
        return tr("Tests per lift are %1; allowed: whole numbers from 1 to %2").arg(*tests).arg(kMostTests);
    return !parts || isCount(*parts) ? QString() : tr("Sublots are %1; allowed: whole numbers from 1 to %2").arg(*parts).arg(kMostTests);
}

}  // namespace groundcount::view
