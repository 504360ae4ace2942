#pragma once

#include "ink_item.h"
#include "marks.h"

namespace groundcount::paint {

/// One state symbol, alone, on what `base` says lies under it. Its size is the box it is fitted to.
class StateMarkItem : public groundcount::paint::InkItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int mark READ mark WRITE setMark NOTIFY markChanged)
    Q_PROPERTY(groundcount::paint::StateMarkItem::Base base READ base WRITE setBase NOTIFY baseChanged)

public:
    enum Base { Plain, Drawn, Imagery };
    Q_ENUM(Base)

    explicit StateMarkItem(QQuickItem* parent = nullptr);

    int mark() const { return m_mark; }
    void setMark(int mark) { assign(m_mark, mark, &StateMarkItem::markChanged); }
    Base base() const { return m_base; }
    void setBase(Base base) { assign(m_base, base, &StateMarkItem::baseChanged); }

    void paint(QPainter* painter) override;

signals:
    void markChanged();
    void baseChanged();

private:
    int m_mark = 0;
    Base m_base = Plain;
};

} // namespace groundcount::paint
