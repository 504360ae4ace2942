#pragma once

#include "book/record.h"
#include "method/error.h"
#include "method/site/clearance.h"
#include "view/limit_scale.h"
#include "view/number_entry.h"
#include "view/sheet_book.h"
#include "view/sheet_facts.h"

#include <QJsonObject>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace groundcount::view {

enum class Hazard { VerticalFace, People, Vehicles, OtherGauges };

/// One hazard of step 2: what is required, what the map, the tape or the eye say, and what can be done about it.
class HazardCard : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(HazardCard)
    QML_UNCREATABLE("belongs to a ClearStep")
    Q_PROPERTY(QString key READ key CONSTANT)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString known MEMBER m_known NOTIFY changed)
    Q_PROPERTY(int mark READ mark NOTIFY changed)
    Q_PROPERTY(QString word MEMBER m_word NOTIFY changed)
    Q_PROPERTY(bool isSealed MEMBER m_isSealed NOTIFY changed)
    Q_PROPERTY(bool settled READ isSettled NOTIFY changed)
    Q_PROPERTY(groundcount::view::LimitFigure line MEMBER m_line NOTIFY changed)
    Q_PROPERTY(QString remark MEMBER m_remark NOTIFY changed)
    Q_PROPERTY(bool wantsTrenchOffset MEMBER m_wantsTrenchOffset NOTIFY changed)
    Q_PROPERTY(QStringList acts MEMBER m_acts NOTIFY changed)
    Q_PROPERTY(bool canOverride READ canOverride NOTIFY changed)
    Q_PROPERTY(QString overrideReason READ overrideReason NOTIFY changed)

public:
    HazardCard(Hazard hazard, SheetFacts& facts, QObject* parent);

    QString key() const;
    QString name() const;
    int mark() const { return static_cast<int>(m_mark); }
    bool isSettled() const { return m_isSettled; }
    bool canOverride() const { return !m_isSettled && m_measured && m_answer == method::ClearanceAnswer::TooClose; }
    QString overrideReason() const { return typed("reason"); }
    bool isOverridden() const { return m_isOverridden; }

    /// Does act number `index` of `acts`.
    Q_INVOKABLE void act(int index);
    /// Goes on in spite of the rule; the test becomes information only.
    Q_INVOKABLE void overrideWith(const QString& reason);
    /// Takes back what was said about this hazard.
    Q_INVOKABLE void startOver();

    void derive(const QJsonObject& texts, bool sealed);
    const QJsonObject& texts() const { return m_texts; }
    /// @error Refused while it is not settled
    Result<book::Body> body() const;
    static QJsonObject textOf(const book::Body& hazard);
    /// The hazard as it stands in a record: "vertical face".
    std::string recordWord() const;

signals:
    void changed();
    void typedText(const QJsonObject& texts);
    void tapeWanted();
    void moveWanted();

private:
    enum class Act { TrenchCorrection, MoveTest, EnterTape, NoneInside, HaveMoved, HaveWaited };
    QString typed(const char* key) const { return m_texts.value(QLatin1String(key)).toString(); }
    void say(const QJsonObject& texts);
    RuleLength required() const;
    void measureOnMap(const RuleLength& required);
    void measureOtherGauges(const RuleLength& required);
    void offerActs();
    void settle();
    void draw(const RuleLength& required);
    QString actWord(Act act) const;
    bool isNear(const std::string& obstacleKind) const;

    const Hazard m_hazard;
    SheetFacts& m_facts;
    QJsonObject m_texts;

    struct Measured {
        double value = 0, uncertainty = 0;  // unit of the requirement
        QString name;
    };
    std::optional<Measured> m_onMap, m_measured;
    std::optional<method::ClearanceAnswer> m_answer;
    std::vector<Act> m_actList;
    QStringList m_acts;
    bool m_wantsTrenchOffset = false;
    QString m_known, m_word, m_remark, m_knownBy;
    Mark m_mark = Mark::CannotTell;
    bool m_isSettled = false, m_isOverridden = false, m_isSealed = false;
    LimitFigure m_line;
};

}  // namespace groundcount::view
