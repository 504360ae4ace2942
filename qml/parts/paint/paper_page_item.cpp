#include "paper_page_item.h"

#include <QPainter>

namespace groundcount::paint {

PaperPageItem::PaperPageItem(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setFillColor(Qt::white);
    setAntialiasing(true);
}

void PaperPageItem::setSheet(view::PaperSheet* sheet)
{
    if (sheet == m_sheet)
        return;
    m_sheet = sheet;
    connect(sheet, &view::PaperSheet::changed, this, [this] { update(); });
    emit changed();
    update();
}

void PaperPageItem::setPage(int page)
{
    if (page == m_page)
        return;
    m_page = page;
    emit changed();
    update();
}

void PaperPageItem::paint(QPainter* painter)
{
    const auto* pages = m_sheet ? m_sheet->pages() : nullptr;
    if (!pages || m_page < 0 || m_page >= pages->count())
        return;
    const double scale = width() / pages->size().width();
    painter->scale(scale, scale);
    pages->paint(*painter, m_page);
}

}  // namespace groundcount::paint
