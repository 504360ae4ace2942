#pragma once

#include "ink_item.h"

#include <QList>

namespace groundcount::paint {

/// A lot as a strip from its first to its last station, parted into sublots, with what stands in it. `along` and `across` are fractions
/// (0 to 1, left to right and top to bottom) of the symbols in `marks`; the three lists go together.
class LotStripItem : public groundcount::paint::InkItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QList<qreal> dividers MEMBER m_dividers NOTIFY stripChanged)
    Q_PROPERTY(QList<int> marks MEMBER m_marks NOTIFY stripChanged)
    Q_PROPERTY(QList<qreal> along MEMBER m_along NOTIFY stripChanged)
    Q_PROPERTY(QList<qreal> across MEMBER m_across NOTIFY stripChanged)

public:
    explicit LotStripItem(QQuickItem* parent = nullptr);

    void paint(QPainter* painter) override;

signals:
    void stripChanged();

private:
    QList<qreal> m_dividers;
    QList<int> m_marks;
    QList<qreal> m_along;
    QList<qreal> m_across;
};

} // namespace groundcount::paint
