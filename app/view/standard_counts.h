#pragma once

#include "method/gauge/standard_rule.h"
#include "view/count_plot.h"
#include "view/kit_form.h"
#include "view/limit_scale.h"
#include "view/row_list.h"
#include "view/standard_history.h"

namespace groundcount::view {

/// The daily standard counts of a gauge: what is to be seen before counting, four or more counts (or the gauge's own automatic
/// one), judged while they are typed by the rule set's rule against the earlier accepted sets.
class StandardCounts : public groundcount::view::KitForm { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList gaugeWords READ gaugeWords NOTIFY changed)
    Q_PROPERTY(int gaugeIndex READ gaugeIndex NOTIFY changed)
    Q_PROPERTY(QStringList howWords READ howWords CONSTANT)
    Q_PROPERTY(int howIndex READ howIndex NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* checks READ checks CONSTANT)
    Q_PROPERTY(QString checksText MEMBER m_checksText NOTIFY changed)
    Q_PROPERTY(QString typedText MEMBER m_typedText NOTIFY changed)
    Q_PROPERTY(QString typeText MEMBER m_typeText NOTIFY changed)
    Q_PROPERTY(bool asksForLog MEMBER m_asksForLog NOTIFY changed)
    Q_PROPERTY(QString logText MEMBER m_logText NOTIFY changed)
    Q_PROPERTY(int mark READ mark NOTIFY changed)
    Q_PROPERTY(QString word MEMBER m_word NOTIFY changed)
    Q_PROPERTY(QString densityFigure MEMBER m_densityFigure NOTIFY changed)
    Q_PROPERTY(QString moistureFigure MEMBER m_moistureFigure NOTIFY changed)
    Q_PROPERTY(QString densityText MEMBER m_densityText NOTIFY changed)
    Q_PROPERTY(QString moistureText MEMBER m_moistureText NOTIFY changed)
    Q_PROPERTY(QString densitySpread MEMBER m_densitySpread NOTIFY changed)
    Q_PROPERTY(QString moistureSpread MEMBER m_moistureSpread NOTIFY changed)
    Q_PROPERTY(groundcount::view::LimitFigure densityLine MEMBER m_densityLine NOTIFY changed)
    Q_PROPERTY(groundcount::view::LimitFigure moistureLine MEMBER m_moistureLine NOTIFY changed)
    Q_PROPERTY(groundcount::view::CountPlot densityPlot MEMBER m_densityPlot NOTIFY changed)
    Q_PROPERTY(groundcount::view::CountPlot moisturePlot MEMBER m_moisturePlot NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* todo READ todo CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* limits READ limits CONSTANT)
    Q_PROPERTY(bool isTaking MEMBER m_isTaking NOTIFY changed)
    Q_PROPERTY(bool failed MEMBER m_failed NOTIFY changed)
    Q_PROPERTY(bool asksForStability MEMBER m_asksForStability NOTIFY changed)
    Q_PROPERTY(QString reason READ reason NOTIFY changed)
    Q_PROPERTY(QString caution READ caution CONSTANT)

public:
    /// Fewest single counts of a set: common practice, no source.
    static constexpr int kLeastCounts = 4;

    explicit StandardCounts(QObject* parent = nullptr) : KitForm(parent) {}

    QStringList gaugeWords() const;
    int gaugeIndex() const;
    QStringList howWords() const { return {tr("Single counts"), tr("One automatic")}; }
    int howIndex() const { return typed("how") == "auto" ? 1 : 0; }
    RowList* checks() { return &m_checks; }
    RowList* todo() { return &m_todo; }
    RowList* limits() { return &m_limits; }
    int mark() const { return static_cast<int>(m_mark); }
    QString reason() const { return typed("reason"); }
    QString caution() const;

    Q_INVOKABLE void pickGauge(int index);
    Q_INVOKABLE void pickHow(int index);
    Q_INVOKABLE void see(const QString& check);
    /// Begins another set on a day that has an accepted one.
    Q_INVOKABLE void takeAnother() { type(QStringLiteral("another"), QStringLiteral("yes")); }
    Q_INVOKABLE void typeCounts();
    Q_INVOKABLE void addCount();
    Q_INVOKABLE void typeLog();
    Q_INVOKABLE void setReason(const QString& text) { type(QStringLiteral("reason"), text); }

protected:
    const char* draftName() const override { return "standard counts"; }
    std::string defaultSubject() const override;
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;
    void judgeEntry(NumberEntry& entry) override;

private:
    static constexpr int kSecondsPerCount = 60;    ///< one-minute counts, common practice, no source
    static constexpr int kAutomaticSeconds = 240;  ///< four-minute automatic count [IA-IM334]
    static constexpr int kLogCounts = 4;
    static const QStringList kChecks;  ///< what must be seen to before the counts
    /// The key of a channel's field that there are several of.
    static QString keyOf(method::Channel channel, int number);

    /// A count of one channel with everything that follows from it.
    struct Judged {
        std::string today;                ///< decimal text of the set's count, empty while too little is typed
        std::vector<std::string> before;  ///< accepted counts it was judged on, newest first
        std::optional<method::StandardVerdict> verdict;
        QString refusal;
    };
    Judged judge(method::Channel channel) const;
    std::vector<double> typedCounts(method::Channel channel) const;
    int countsAsked() const;
    const book::StandardCountRow* newestToday() const;
    void refreshChecks();
    void refreshHistory();
    void refreshFailure();
    void showChannel(const Judged& judged, method::Channel channel);
    QString spreadText(const Judged& judged, method::Channel channel) const;
    void setCountsDoubts(NumberEntry& entry) const;

    StandardHistory m_history;  ///< read once per refresh
    Mark m_mark = Mark::Nothing;
    bool m_isTaking = true, m_asksForLog = false, m_failed = false, m_asksForStability = false;
    QString m_checksText, m_typedText, m_typeText, m_logText, m_word, m_densityFigure, m_moistureFigure, m_densityText, m_moistureText,
        m_densitySpread, m_moistureSpread;
    LimitFigure m_densityLine, m_moistureLine;
    CountPlot m_densityPlot, m_moisturePlot;
    RowList m_checks, m_todo, m_limits;
};

}  // namespace groundcount::view
