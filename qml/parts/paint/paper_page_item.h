#pragma once

#include "view/paper_sheet.h"

#include <QPointer>
#include <QQuickPaintedItem>

namespace groundcount::paint {

/// One page of a sheet on its white paper, as wide as the item.
class PaperPageItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::PaperSheet* sheet READ sheet WRITE setSheet NOTIFY changed)
    Q_PROPERTY(int page READ page WRITE setPage NOTIFY changed)

public:
    explicit PaperPageItem(QQuickItem* parent = nullptr);
    view::PaperSheet* sheet() const { return m_sheet; }
    void setSheet(view::PaperSheet* sheet);
    int page() const { return m_page; }
    void setPage(int page);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QPointer<view::PaperSheet> m_sheet;
    int m_page = 0;
};

}  // namespace groundcount::paint
