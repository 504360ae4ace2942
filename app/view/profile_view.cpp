#include "view/profile_view.h"

#include "gis/area_profile.h"
#include "view/review_view.h"
#include "view/standing_words.h"

#include <algorithm>

namespace groundcount::view {

void ProfileView::setSession(Session* session)
{
    if (m_session == session)
        return;
    m_session = session;
    connect(session, &Session::recordsChanged, this, &ProfileView::refresh);
    refresh();
    emit sessionChanged();
}

void ProfileView::setLot(const QString& id)
{
    if (id == m_lot)
        return;
    m_lot = id;
    refresh();
}

void ProfileView::refresh()
{
    if (!m_session || m_lot.isEmpty())
        return;
    const Snapshot& all = m_session->snapshot();
    const int revision = m_plot.revision + 1;
    m_plot = {};
    m_plot.revision = revision;
    m_plot.profile = book::lineProfile(all.lots, all.lifts, all.tests, m_lot.toStdString());
    m_note.clear();
    const auto chosen = std::find_if(all.lots.begin(), all.lots.end(), [&](const auto& lot) { return lot.id == m_lot.toStdString(); });
    if (chosen != all.lots.end() && !chosen->area.empty()) {
        m_plot.profile = gis::areaProfile(*chosen, all.job, all.lifts, all.tests);
        if (m_plot.isThere())
            m_note = tr("The lot is given by its corners: each lift against the distance along the longest side, azimuth %1°.").arg(qRound(m_plot.profile.azimuthDeg));
    }
    std::vector<Row> rows;
    QStringList spoken;
    if (const auto lot = reviewedLot(*m_session, m_lot)) {
        m_title = tr("Lot %1").arg(QString::fromStdString(lot->lot->name));
        for (const auto& lift : lot->lifts) {
            Row row;
            row.id = QString::fromStdString(lift.lift->id);
            row.mark = markOf(lift.standing);
            row.title = tr("Lift %1").arg(lift.lift->number);
            row.second = wordOf(lift.standing);
            row.figure = QString::number(lift.tally.made);
            row.unit = tr("of %1").arg(lift.tally.required);
            row.word = lift.tally.openFailures.empty() ? QString() : tr("%n failure(s) open", nullptr, static_cast<int>(lift.tally.openFailures.size()));
            row.wordMark = lift.tally.openFailures.empty() ? Mark::Nothing : Mark::Fail;
            spoken << row.title + ", " + row.second;
            rows.push_back(std::move(row));
        }
    }
    m_plot.spoken = spoken.join(QStringLiteral("; "));
    m_lifts.setRows(std::move(rows));
    emit changed();
}

}  // namespace groundcount::view
