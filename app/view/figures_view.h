#pragma once

#include "book/explain_figures.h"
#include "book/lot_chart.h"
#include "view/arithmetic_model.h"
#include "view/lot_plot.h"
#include "view/row_list.h"
#include "view/session.h"

#include <QObject>
#include <QStringList>

namespace groundcount::view {

/// The statistics of a lot: each figure with its arithmetic, and its plots.
class FiguresView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY sessionChanged REQUIRED)
    Q_PROPERTY(QString lot READ lot WRITE setLot NOTIFY changed)
    Q_PROPERTY(QString title MEMBER m_title NOTIFY changed)
    Q_PROPERTY(QString trouble MEMBER m_trouble NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* figures READ figures CONSTANT)
    /// The figure that is unfolded, "" for none.
    Q_PROPERTY(QString unfolded READ unfolded WRITE unfold NOTIFY unfoldedChanged)
    Q_PROPERTY(groundcount::view::ArithmeticModel* arithmetic READ arithmetic CONSTANT)
    Q_PROPERTY(QStringList plotNames MEMBER m_plotNames NOTIFY changed)
    Q_PROPERTY(int shownPlot READ shownPlot WRITE showPlot NOTIFY plotChanged)
    Q_PROPERTY(groundcount::view::LotPlot plot READ plot NOTIFY plotChanged)

public:
    explicit FiguresView(QObject* parent = nullptr) : QObject(parent) {}
    Session* session() const { return m_session; }
    void setSession(Session* session);
    QString lot() const { return m_lot; }
    void setLot(const QString& id);
    RowList* figures() { return &m_figures; }
    QString unfolded() const { return m_unfolded; }
    /// Unfolds a figure by its id; the one that is unfolded folds again.
    void unfold(const QString& id);
    ArithmeticModel* arithmetic() { return &m_arithmetic; }
    int shownPlot() const { return m_shownPlot; }
    void showPlot(int index);
    LotPlot plot() const;

signals:
    void sessionChanged();
    void changed();
    void unfoldedChanged();
    void plotChanged();

private:
    using Steps = std::vector<method::ExplainStep>;
    void refresh();
    void fill(const book::LotRow& lot, const std::vector<book::TestRow>& tests);
    void addStatistics(const book::LotStatistics& lot, const book::StatisticsRules& rules);
    void addOutlier(const book::LotStatistics& lot, const book::StatisticsRules& rules);
    void addCharts(const std::vector<book::TestRow>& tests, const book::LotStatistics& lot, const book::StatisticsRules& rules);
    void addMoisture(const book::LotRow& lot, const std::vector<book::TestRow>& tests, int k);
    void addComparisons(const std::vector<book::TestRow>& tests);
    void addComparison(const QString& title, const book::Comparison& comparison, const book::ComparisonRules& rules);
    void addFigure(const QString& title, const QString& second, const QString& figure, const QString& unit, Steps steps);
    void addPlot(const QString& name, book::LotChart chart);

    Session* m_session = nullptr;
    QString m_lot, m_title, m_trouble, m_unfolded;
    RowList m_figures;
    std::vector<Row> m_rows;
    std::vector<Steps> m_steps;  ///< one list for each row
    ArithmeticModel m_arithmetic;
    QStringList m_plotNames;
    std::vector<LotPlot> m_plots;
    int m_shownPlot = 0, m_revision = 0;
};

}  // namespace groundcount::view
