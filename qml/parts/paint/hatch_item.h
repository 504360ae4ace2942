#pragma once

#include "ink_item.h"

namespace groundcount::paint {

/// A hatched ground. `brick` draws an open failure's area, else the second ink.
class HatchItem : public groundcount::paint::InkItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool brick READ brick WRITE setBrick NOTIFY brickChanged)

public:
    using InkItem::InkItem;

    bool brick() const { return m_brick; }
    void setBrick(bool brick) { assign(m_brick, brick, &HatchItem::brickChanged); }

    void paint(QPainter* painter) override;

signals:
    void brickChanged();

private:
    bool m_brick = false;
};

} // namespace groundcount::paint
