#pragma once

#include "view/row_list.h"
#include "view/session.h"

#include <QAbstractListModel>
#include <QObject>

namespace groundcount::view {

/// One line of the gauge card: a standard count against its limit, ready to draw.
struct CountLine {
    QString label, figure, deviation;
    Mark mark = Mark::Nothing;
    double lowLimit = 0, highLimit = 0, value = 0;  ///< fractions of the limit line
    bool operator==(const CountLine&) const = default;
};

class CountLines : public QAbstractListModel {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using QAbstractListModel::QAbstractListModel;
    void setLines(std::vector<CountLine> lines);
    const std::vector<CountLine>& lines() const { return m_lines; }
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<CountLine> m_lines;
};

/// The technician's sheet for today: may I test, where next, what waits, how did it go.
class DayView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY sessionChanged REQUIRED)
    /// Whether today's tests are also looked up in their records: one that was amended after its verdict waits for another. Until it is set, as in a
    /// page's first frame, each stands as its verdict has it.
    Q_PROPERTY(bool whole READ isWhole WRITE setWhole NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString place READ place NOTIFY changed)
    Q_PROPERTY(bool hasJob READ hasJob NOTIFY changed)
    Q_PROPERTY(QString emptyText READ emptyText NOTIFY changed)
    Q_PROPERTY(QString gaugeName READ gaugeName NOTIFY changed)
    Q_PROPERTY(int gaugeMark READ gaugeMark NOTIFY changed)
    Q_PROPERTY(QString gaugeStanding READ gaugeStanding NOTIFY changed)
    Q_PROPERTY(QString gaugeMissing READ gaugeMissing NOTIFY changed)
    Q_PROPERTY(QString gaugePapers READ gaugePapers NOTIFY changed)
    Q_PROPERTY(QString kitAct MEMBER m_kitAct NOTIFY changed)
    Q_PROPERTY(QString kitActText MEMBER m_kitActText NOTIFY changed)
    Q_PROPERTY(groundcount::view::CountLines* counts READ counts CONSTANT)
    Q_PROPERTY(QString owedText READ owedText NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* owed READ owed CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* waiting READ waiting CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* results READ results CONSTANT)
    Q_PROPERTY(bool canStart READ canStart NOTIFY changed)
    Q_PROPERTY(bool canStartWithReason READ canStartWithReason NOTIFY changed)
    Q_PROPERTY(QString startText READ startText NOTIFY changed)

public:
    explicit DayView(QObject* parent = nullptr);
    Session* session() const { return m_session; }
    void setSession(Session* session);
    bool isWhole() const { return m_whole; }
    void setWhole(bool whole);

    QString title() const { return m_title; }
    QString place() const { return m_place; }
    bool hasJob() const { return m_hasJob; }
    QString emptyText() const { return m_emptyText; }
    QString gaugeName() const { return m_gaugeName; }
    int gaugeMark() const { return static_cast<int>(m_gaugeMark); }
    QString gaugeStanding() const { return m_gaugeStanding; }
    QString gaugeMissing() const { return m_gaugeMissing; }
    QString gaugePapers() const { return m_gaugePapers; }
    CountLines* counts() { return &m_counts; }
    QString owedText() const { return m_owedText; }
    RowList* owed() { return &m_owed; }
    RowList* waiting() { return &m_waiting; }
    RowList* results() { return &m_results; }
    bool canStart() const { return m_canStart; }
    /// The gauge is not ready: a test may be started all the same, its place asks for the reason and seals it.
    bool canStartWithReason() const { return m_canStartWithReason; }
    /// The button's words; when it cannot be pressed, the reason.
    QString startText() const { return m_startText; }

signals:
    void sessionChanged();
    void changed();

private:
    void refresh();
    void refreshGauge();
    void refreshKitAct();
    void refreshOwed();
    void refreshTests();

    QString m_kitAct, m_kitActText;  ///< the sheet of Kit that settles what the gauge lacks (Desk::kit), and the button's words
    Session* m_session = nullptr;
    QString m_title, m_place, m_emptyText, m_gaugeName, m_gaugeStanding, m_gaugeMissing, m_gaugePapers, m_owedText, m_startText;
    bool m_whole = false, m_hasJob = false, m_canStart = false, m_canStartWithReason = false;
    Mark m_gaugeMark = Mark::Nothing;
    CountLines m_counts;
    RowList m_owed, m_waiting, m_results;
};

}  // namespace groundcount::view
