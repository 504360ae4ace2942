#pragma once

#include "ink_item.h"

namespace groundcount::paint {

/// Who stands where round a running gauge, to scale, north up: the ring hatched inside, the gauge in its middle, the person with the
/// circle of the position's own accuracy. Distances come as multiples of the ring's radius; NaN hides the person.
class StandBackRingItem : public groundcount::paint::InkItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal distanceInRings MEMBER m_distance NOTIFY ringChanged)
    Q_PROPERTY(qreal accuracyInRings MEMBER m_accuracy NOTIFY ringChanged)
    Q_PROPERTY(qreal bearing MEMBER m_bearing NOTIFY ringChanged)
    Q_PROPERTY(QString ringLabel MEMBER m_ringLabel NOTIFY ringChanged)
    Q_PROPERTY(QString gaugeLabel MEMBER m_gaugeLabel NOTIFY ringChanged)
    Q_PROPERTY(QString ownLabel MEMBER m_ownLabel NOTIFY ringChanged)

public:
    explicit StandBackRingItem(QQuickItem* parent = nullptr);

    void paint(QPainter* painter) override;

signals:
    void ringChanged();

private:
    void drawRing(QPainter& painter, QPointF gauge, qreal radius) const;
    void drawGauge(QPainter& painter, QPointF gauge) const;
    void drawPerson(QPainter& painter, QPointF gauge, qreal radius) const;
    void drawWord(QPainter& painter, const QString& word, QPointF centre) const;

    qreal m_distance;
    qreal m_accuracy;
    qreal m_bearing = 0;
    QString m_ringLabel;
    QString m_gaugeLabel;
    QString m_ownLabel;
};

} // namespace groundcount::paint
