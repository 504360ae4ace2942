#pragma once

#include "view/kit_form.h"

namespace groundcount::view {

/// A lot: its ground between two stations of a line, what it is built of and what it must reach. Of a lot with corners (site file)
/// the corners stay as they are. A change of a sealed lot says why.
class LotSheet : public groundcount::view::KitForm {  // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isOld READ isOld NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString zone READ zone NOTIFY changed)
    Q_PROPERTY(bool hasCorners READ hasCorners NOTIFY changed)
    Q_PROPERTY(QStringList lineWords READ lineWords NOTIFY changed)
    Q_PROPERTY(int lineIndex READ lineIndex NOTIFY changed)
    Q_PROPERTY(QString stations MEMBER m_stations NOTIFY changed)
    Q_PROPERTY(QString sides MEMBER m_sides NOTIFY changed)
    Q_PROPERTY(QStringList referenceWords READ referenceWords NOTIFY changed)
    Q_PROPERTY(int referenceIndex READ referenceIndex NOTIFY changed)
    Q_PROPERTY(QString compaction MEMBER m_compaction NOTIFY changed)
    Q_PROPERTY(QStringList windowWords READ windowWords CONSTANT)
    Q_PROPERTY(int windowIndex READ windowIndex NOTIFY changed)
    Q_PROPERTY(QString driest MEMBER m_driest NOTIFY changed)
    Q_PROPERTY(QString wettest MEMBER m_wettest NOTIFY changed)
    Q_PROPERTY(QString tests READ tests NOTIFY changed)
    Q_PROPERTY(QString sublots READ sublots NOTIFY changed)
    /// What the book lacks before a lot can be sealed: a line, a reference test.
    Q_PROPERTY(bool lacksLine MEMBER m_lacksLine NOTIFY changed)
    Q_PROPERTY(bool lacksReference MEMBER m_lacksReference NOTIFY changed)
    Q_PROPERTY(bool asksWhy MEMBER m_asksWhy NOTIFY changed)
    Q_PROPERTY(QString why READ why NOTIFY changed)

public:
    explicit LotSheet(QObject* parent = nullptr) : KitForm(parent) {}

    bool isOld() const { return row() != nullptr; }
    bool hasCorners() const;
    QString name() const { return typed("name"); }
    QString zone() const { return typed("zone"); }
    QStringList lineWords() const;
    int lineIndex() const;
    QStringList referenceWords() const;
    int referenceIndex() const;
    QStringList windowWords() const { return {tr("None"), tr("Points off optimum"), tr("Percent of optimum")}; }
    int windowIndex() const { return typed("window").toInt(); }
    QString tests() const { return typed("tests"); }
    QString sublots() const { return typed("sublots"); }
    QString why() const { return typed("why"); }

    Q_INVOKABLE void setName(const QString& text) { type(QStringLiteral("name"), text); }
    Q_INVOKABLE void setZone(const QString& text) { type(QStringLiteral("zone"), text); }
    Q_INVOKABLE void setWhy(const QString& text) { type(QStringLiteral("why"), text); }
    Q_INVOKABLE void pickLine(int index);
    Q_INVOKABLE void pickReference(int index);
    Q_INVOKABLE void pickWindow(int index) { type(QStringLiteral("window"), index > 0 ? QString::number(index) : QString()); }
    Q_INVOKABLE void typeStations();
    Q_INVOKABLE void typeSides();
    Q_INVOKABLE void typeCompaction();
    Q_INVOKABLE void typeDriest();
    Q_INVOKABLE void typeWettest();
    Q_INVOKABLE void typeTests();

protected:
    const char* draftName() const override { return "lot"; }
    QJsonObject fromBook() const override;
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;
    void afterSeal() override { setSubjectQuietly(m_newId); }

private:
    const book::LotRow* row() const;
    QString notYet() const;
    QString groundNotYet() const;
    QString goalNotYet() const;
    QString windowNotYet() const;
    QString testsNotYet() const;
    bool isPoints() const { return windowIndex() == 1; }
    /// A limit of the window with its sign, as it is sealed: points below optimum are negative.
    QString limit(const char* key, bool belowFirst) const;
    void typeLimit(const QString& title, const char* key, bool belowFirst);

    mutable std::string m_newId;
    QString m_stations, m_sides, m_compaction, m_driest, m_wettest;
    bool m_lacksLine = false, m_lacksReference = false, m_asksWhy = false;
};

}  // namespace groundcount::view
