#pragma once

#include "method/gauge/stability.h"
#include "view/kit_form.h"
#include "view/limit_scale.h"
#include "view/row_list.h"

#include <vector>

namespace groundcount::view {

/// The stability test of a gauge that failed its standard counts: single counts, untouched, their scatter against a band.
class StabilityTest : public groundcount::view::KitForm { // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString typedText MEMBER m_typedText NOTIFY changed)
    Q_PROPERTY(QString bandText MEMBER m_bandText NOTIFY changed)
    Q_PROPERTY(QString densityText MEMBER m_densityText NOTIFY changed)
    Q_PROPERTY(QString moistureText MEMBER m_moistureText NOTIFY changed)
    Q_PROPERTY(groundcount::view::LimitFigure densityLine MEMBER m_densityLine NOTIFY changed)
    Q_PROPERTY(groundcount::view::LimitFigure moistureLine MEMBER m_moistureLine NOTIFY changed)
    Q_PROPERTY(int mark READ mark NOTIFY changed)
    Q_PROPERTY(QString word MEMBER m_word NOTIFY changed)
    Q_PROPERTY(QString follows MEMBER m_follows NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* history READ history CONSTANT)

public:
    explicit StabilityTest(QObject* parent = nullptr) : KitForm(parent) {}
    int mark() const { return static_cast<int>(m_mark); }
    RowList* history() { return &m_history; }

    Q_INVOKABLE void typeCounts();

protected:
    const char* draftName() const override { return "stability test"; }
    std::string defaultSubject() const override;
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;
    void judgeEntry(NumberEntry& entry) override;

private:
    struct Band {
        int counts = 20;
        double low = 0.75, high = 1.25;
        QString source;
    };
    Band band() const;
    std::optional<double> prescale() const;
    std::vector<double> counts(const char* stem) const;
    void show(const char* stem, QString& text, LimitFigure& line) const;
    void refreshHistory();

    Mark m_mark = Mark::Nothing;
    std::optional<method::StabilityCheck> m_density, m_moisture;
    QString m_typedText, m_bandText, m_densityText, m_moistureText, m_word, m_follows;
    LimitFigure m_densityLine, m_moistureLine;
    RowList m_history;
};

}  // namespace groundcount::view
