#pragma once

#include "ink_item.h"

namespace groundcount::paint {

/// A dashed edge: round a frame (what is not yet possible), or along the foot (a blank to be filled in).
class DashItem : public groundcount::paint::InkItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(Shape shape READ shape WRITE setShape NOTIFY shapeChanged)

public:
    enum Shape { Frame, Foot };
    Q_ENUM(Shape)

    using InkItem::InkItem;

    Shape shape() const { return m_shape; }
    void setShape(Shape shape) { assign(m_shape, shape, &DashItem::shapeChanged); }

    void paint(QPainter* painter) override;

signals:
    void shapeChanged();

private:
    Shape m_shape = Frame;
};

} // namespace groundcount::paint
