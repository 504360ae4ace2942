#pragma once

#include "view/number_entry.h"
#include "view/session.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace groundcount::view {

/// A wall, structure, pipe, vehicle or other gauge placed on the map: at a touched point, or by tape and direction from a test.
class ObstacleSheet : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(ObstacleSheet)
    QML_UNCREATABLE("belongs to the desk")
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY changed)
    Q_PROPERTY(QString placeText MEMBER m_placeText NOTIFY changed)
    Q_PROPERTY(bool byTape READ byTape NOTIFY changed)
    Q_PROPERTY(QStringList kindWords READ kindWords NOTIFY changed)
    Q_PROPERTY(int kindIndex MEMBER m_kind NOTIFY changed)
    Q_PROPERTY(QStringList directionWords READ directionWords NOTIFY changed)
    Q_PROPERTY(int directionIndex MEMBER m_direction NOTIFY changed)
    Q_PROPERTY(QString distanceText MEMBER m_distanceText NOTIFY changed)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed)
    Q_PROPERTY(QString notYet MEMBER m_notYet NOTIFY changed)
    Q_PROPERTY(QString trouble MEMBER m_trouble NOTIFY changed)
    Q_PROPERTY(groundcount::view::NumberEntry* entry READ entry NOTIFY entryChanged)

public:
    ObstacleSheet(Session* session, QObject* parent) : QObject(parent), m_session(session) {}

    bool isOpen() const { return m_isOpen; }
    bool byTape() const { return m_byTape; }
    QStringList kindWords() const { return {tr("Wall"), tr("Structure"), tr("Pipe"), tr("Vehicle"), tr("Gauge")}; }
    QStringList directionWords() const { return {tr("N"), tr("NE"), tr("E"), tr("SE"), tr("S"), tr("SW"), tr("W"), tr("NW")}; }
    QString name() const { return m_name; }
    void setName(const QString& name);
    NumberEntry* entry() const { return m_entry; }

    /// At a point of the map, in the job's grid; how well a finger or a receiver knows it is `uncertaintyMetres`.
    Q_INVOKABLE void openAt(double north, double east, double uncertaintyMetres, const QString& placeText);
    /// Seen from a place whose circle is `uncertaintyMetres`: distance by tape, direction by eye.
    Q_INVOKABLE void openFrom(double north, double east, double uncertaintyMetres, const QString& placeText);
    Q_INVOKABLE void pickKind(int index);
    Q_INVOKABLE void pickDirection(int index);
    Q_INVOKABLE void typeDistance();
    Q_INVOKABLE void closeEntry();
    /// @return whether it is on disk; on refusal `trouble` has the sentence and everything chosen stays
    Q_INVOKABLE bool seal();
    Q_INVOKABLE void close();

signals:
    void changed();
    void entryChanged();
    void sealed();

private:
    void open(double north, double east, double uncertaintyMetres, const QString& placeText);
    void derive();
    void setEntry(NumberEntry* entry);

    Session* m_session;
    double m_north = 0, m_east = 0, m_uncertaintyMetres = 0;
    bool m_isOpen = false, m_byTape = false;
    int m_kind = -1, m_direction = -1;
    QString m_placeText, m_distance, m_distanceText, m_name, m_notYet, m_trouble;
    NumberEntry* m_entry = nullptr;
};

}  // namespace groundcount::view
