#include "limit_line_item.h"

#include <QtGlobal>

namespace groundcount::paint {

LimitLineItem::LimitLineItem(QQuickItem* parent) : InkItem(parent)
{
    setImplicitSize(112, 28);
    connect(this, &InkItem::inksChanged, this, [this] {
        refresh();
        if (inks()) {
            connect(inks(), &InkSet::changed, this, &LimitLineItem::refresh);
        }
    });
}

void LimitLineItem::refresh()
{
    m_line.labels.clear();
    for (qsizetype i = 0; i < qMin(m_labels.size(), m_labelAt.size()); ++i) {
        m_line.labels << LimitLabel{m_labelAt[i], m_labels[i], i == m_measuredLabel};
    }
    setImplicitHeight(limitLineHeight(m_line, fonts()));
    emit lineChanged();
    update();
}

LimitLineFonts LimitLineItem::fonts() const
{
    return {font(16, palette().bodyWeight), font(22, palette().strongWeight)};
}

void LimitLineItem::paint(QPainter* painter)
{
    drawLimitLine(*painter, m_line, width(), palette(), fonts());
}

} // namespace groundcount::paint
