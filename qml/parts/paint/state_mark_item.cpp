#include "state_mark_item.h"

namespace groundcount::paint {

StateMarkItem::StateMarkItem(QQuickItem* parent) : InkItem(parent)
{
    setImplicitSize(24, 24);
}

void StateMarkItem::paint(QPainter* painter)
{
    static const InkSet day;
    const bool imagery = m_base == Imagery;
    const Ground ground = imagery ? Ground::Imagery : m_base == Drawn ? Ground::Drawn : Ground::Plain;
    drawMark(*painter, static_cast<view::Mark>(m_mark), boundingRect(), imagery ? day : palette(), ground);
}

} // namespace groundcount::paint
