// The thing on the map that was touched.
#include "book/state_query.h"
#include "view/figure_text.h"
#include "view/map_view.h"
#include "view/test_rows.h"
#include "view/whereabouts.h"

#include <algorithm>

namespace groundcount::view {

void MapView::showFacts(const book::TestRow& test)
{
    const QString density = m_session->job().densityUnit == "kg/m3" ? tr("kg/m³") : tr("lb/ft³");
    const auto add = [&](const QString& label, const QString& fact) {
        if (fact.trimmed().isEmpty())
            return;
        m_chosenFactLabels << label;
        m_chosenFacts << fact;
    };
    const auto pair = [](const std::string& a, const std::string& b) { return a.empty() || b.empty() ? QString() : shownDecimal(a) + QStringLiteral(", ") + shownDecimal(b); };
    add(tr("Moisture"), test.contentPct.empty() ? QString() : shownDecimal(test.contentPct) + QStringLiteral(" %"));
    add(tr("Dry, wet"), test.dry.empty() ? QString() : pair(test.dry, test.wet) + ' ' + density);
    add(tr("Maximum"), test.maximum.empty() ? QString() : shownDecimal(test.maximum) + ' ' + density + ' ' + QString::fromStdString(test.proctorName));
    add(tr("Gauge"), QString::fromStdString(test.gaugeName) + (test.depthInText.empty() ? QString() : ", " + tr("%1 in.").arg(shownDecimal(test.depthInText))));
    add(tr("By"), QString::fromStdString(test.personName) + ", " + localText(test.startedAt, test.offsetMinutes, QStringLiteral("MMM d, h:mm")));
    add(tr("Retest of"), QString::fromStdString(test.retestOfNumber));
    add(tr("Record"), QString::fromStdString(test.recordHash.substr(0, 8)));
}

void MapView::chooseTest(const book::TestRow& test)
{
    m_chosen = testRow(test);
    m_chosen.title = tr("Test %1, %2").arg(QString::fromStdString(test.number), wordOf(test.state).toLower());
    m_chosen.second = stationOffsetText(test.stationFt, test.offsetFt) + ", " + QString::fromLatin1(book::word(test.purpose));
    m_chosen.figure += m_chosen.figure.isEmpty() ? QString() : QStringLiteral(" %");
    m_chosenIsTest = true;
    showFacts(test);
}

void MapView::choose(const QString& id)
{
    m_chosenId = id;
    m_chosen = {};
    m_chosenIsTest = false;
    m_chosenFacts.clear();
    m_chosenFactLabels.clear();
    const Snapshot& all = m_session->snapshot();
    if (m_session->isReading()) {
        if (const auto test = book::StateQuery(m_session->store()).test(id.toStdString()))
            chooseTest(*test);
    } else {
        const std::string wanted = id.toStdString();
        const auto test = std::find_if(all.tests.begin(), all.tests.end(), [&](const auto& one) { return one.id == wanted; });
        if (test != all.tests.end())
            chooseTest(*test);
    }
    for (const auto& site : all.sites) {
        if (QString::fromStdString(site.draw + "/" + std::to_string(site.number)) != id)
            continue;
        m_chosen.mark = Mark::Owed;
        m_chosen.title = tr("Site %1, owed").arg(site.number);
        m_chosen.second = siteWords(site);
    }
    for (const auto& obstacle : all.obstacles) {
        if (QString::fromStdString(obstacle.id) == id) {
            m_chosen.title = QString::fromStdString(obstacle.name);
            m_chosen.second = QString::fromStdString(obstacle.obstacleKind);
        }
    }
    if (m_chosen.title.isEmpty())
        m_chosenId.clear();
    emit chosenChanged();
}

void MapView::touch(double east, double north)
{
    m_touchedText.clear();
    if (const auto& lines = m_session->lines(); !lines.isEmpty()) {
        const auto foot = lines.nearest(north + m_origin.north, east + m_origin.east);
        m_touchedText = foot ? lines.words(*foot) : tr("Beside the alignment's ends");
    }
    m_isHeld = false;
    emit touchedChanged();
}

void MapView::hold(double east, double north, double pixelsPerMetre)
{
    // Half of the 48 px that a fingertip in a glove covers.
    constexpr double kFingertipPixels = 24;
    choose({});
    touch(east, north);
    m_isHeld = true;
    m_heldNorth = north + m_origin.north;
    m_heldEast = east + m_origin.east;
    m_heldUncertainty = pixelsPerMetre > 0 ? kFingertipPixels / pixelsPerMetre : 0;
    emit touchedChanged();
}

void MapView::letGo()
{
    m_isHeld = false;
    emit touchedChanged();
}

}  // namespace groundcount::view
