#pragma once

#include "ink_item.h"

#include <QList>
#include <QPointF>
#include <QVariantList>

namespace groundcount::paint {

/// The fixes of one place as a drawing, north up: squares of a stated size, each fix a dot, the mean a cross in the middle, the circle
/// that holds 95 % of positions, and the drawn site. All positions are in squares from the mean, x to the east and y to the north,
/// and come from outside; `squaresAcross` is the number of squares that fit the width.
class FixScatterItem : public groundcount::paint::InkItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList fixes MEMBER m_fixes NOTIFY scatterChanged)
    Q_PROPERTY(qreal circleRadius MEMBER m_circleRadius NOTIFY scatterChanged)
    Q_PROPERTY(bool hasSite MEMBER m_hasSite NOTIFY scatterChanged)
    Q_PROPERTY(QPointF site MEMBER m_site NOTIFY scatterChanged)
    Q_PROPERTY(qreal squaresAcross MEMBER m_squaresAcross NOTIFY scatterChanged)

public:
    explicit FixScatterItem(QQuickItem* parent = nullptr);

    void paint(QPainter* painter) override;

signals:
    void scatterChanged();

private:
    QVariantList m_fixes;
    qreal m_circleRadius = 0;
    bool m_hasSite = false;
    QPointF m_site;
    qreal m_squaresAcross = 3;
};

} // namespace groundcount::paint
