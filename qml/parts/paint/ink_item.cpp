#include "ink_item.h"

#include <QGuiApplication>

namespace groundcount::paint {

InkItem::InkItem(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void InkItem::setInks(InkSet* inks)
{
    if (m_inks == inks) {
        return;
    }
    if (m_inks) {
        disconnect(m_inks, nullptr, this, nullptr);
    }
    m_inks = inks;
    if (m_inks) {
        connect(m_inks, &InkSet::changed, this, [this] { update(); });
    }
    emit inksChanged();
    update();
}

const InkSet& InkItem::palette() const
{
    static const InkSet day;
    return m_inks ? *m_inks : day;
}

QFont InkItem::font(qreal pixelSize, int weight) const
{
    QFont result = QGuiApplication::font();
    result.setPixelSize(qRound(pixelSize * palette().textScale));
    result.setWeight(static_cast<QFont::Weight>(weight));
    return result;
}

} // namespace groundcount::paint
