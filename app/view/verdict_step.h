#pragma once

#include "method/accept/explain.h"
#include "view/arithmetic_model.h"
#include "view/limit_scale.h"
#include "view/row_list.h"
#include "view/sheet_book.h"
#include "view/sheet_step.h"

#include <optional>

namespace groundcount::view {

/// Step 6: percent compaction against the requirement, moisture against its window, the arithmetic, and what to do next.
/// The figures come out of the sealed records; nothing is typed here.
class VerdictStep : public groundcount::view::SheetStep { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_NAMED_ELEMENT(VerdictStep)
    QML_UNCREATABLE("belongs to a TestSheet")
    Q_PROPERTY(bool isKnown MEMBER m_isKnown NOTIFY changed)
    Q_PROPERTY(QString refusal MEMBER m_refusal NOTIFY changed)
    Q_PROPERTY(int mark READ mark NOTIFY changed)
    Q_PROPERTY(QString word MEMBER m_word NOTIFY changed)
    Q_PROPERTY(QString reasons MEMBER m_reasons NOTIFY changed)
    Q_PROPERTY(QString compaction MEMBER m_compaction NOTIFY changed)
    Q_PROPERTY(QString compactionSpread MEMBER m_compactionSpread NOTIFY changed)
    Q_PROPERTY(groundcount::view::LimitFigure compactionLine MEMBER m_compactionLine NOTIFY changed)
    Q_PROPERTY(QString moisture MEMBER m_moisture NOTIFY changed)
    Q_PROPERTY(QString moistureSpread MEMBER m_moistureSpread NOTIFY changed)
    Q_PROPERTY(groundcount::view::LimitFigure moistureLine MEMBER m_moistureLine NOTIFY changed)
    Q_PROPERTY(bool hasWindow MEMBER m_hasWindow NOTIFY changed)
    Q_PROPERTY(QString densityUnit READ densityUnit NOTIFY changed)
    Q_PROPERTY(QString wet MEMBER m_wet NOTIFY changed)
    Q_PROPERTY(QString dry MEMBER m_dry NOTIFY changed)
    Q_PROPERTY(QString maximum MEMBER m_maximum NOTIFY changed)
    Q_PROPERTY(QString coarse MEMBER m_coarse NOTIFY changed)
    Q_PROPERTY(groundcount::view::ArithmeticModel* arithmetic READ arithmetic CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* nextSteps READ nextSteps CONSTANT)

public:
    VerdictStep(SheetFacts& facts, QObject* parent) : SheetStep(facts, parent) {}

    int mark() const { return static_cast<int>(m_mark); }
    QString densityUnit() const { return m_facts.book->densityUnit(); }
    ArithmeticModel* arithmetic() { return &m_arithmetic; }
    RowList* nextSteps() { return &m_nextSteps; }

    /// Whether the earlier steps are sealed; before that the step says which one is missing.
    void setReady(const QString& missing);
    QString sealText() const override { return tr("Seal the verdict"); }
    Result<std::vector<book::Entry>> entries() const override;

protected:
    void refresh() override;

private:
    void show(const SheetBook::Judged& judged);
    void showDensity(const SheetBook::Judged& judged);
    void showMoisture(const SheetBook::Judged& judged);
    void sayNext(const SheetBook::Judged& judged);
    void addNext(const QString& title, const QString& second);
    void addRework(const SheetBook::Judged& judged);
    void addNextSite();

    QString m_missing;
    bool m_isKnown = false, m_hasWindow = false;
    QString m_refusal, m_word, m_reasons, m_compaction, m_compactionSpread, m_moisture, m_moistureSpread, m_wet, m_dry, m_maximum, m_coarse;
    Mark m_mark = Mark::Waiting;
    LimitFigure m_compactionLine, m_moistureLine;
    ArithmeticModel m_arithmetic;
    RowList m_nextSteps;
    std::vector<Row> m_next;
};

}  // namespace groundcount::view
