#include "hatch_item.h"

#include "hatch.h"

namespace groundcount::paint {

void HatchItem::paint(QPainter* painter)
{
    drawHatch(*painter, boundingRect(), m_brick ? palette().fail : palette().ink2, 8.5, 1.2);
}

} // namespace groundcount::paint
