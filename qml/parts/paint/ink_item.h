#pragma once

#include "ink_set.h"

#include <QFont>
#include <QPointer>
#include <QQuickPaintedItem>

namespace groundcount::paint {

/// A painted part: repaints when its inks change. Plain QPainter into an image node, so that the software renderer and the
/// graphics card show the same picture.
class InkItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("InkItem is the base of the painted parts")
    Q_PROPERTY(groundcount::paint::InkSet* inks READ inks WRITE setInks NOTIFY inksChanged)

public:
    explicit InkItem(QQuickItem* parent = nullptr);

    InkSet* inks() const { return m_inks; }
    void setInks(InkSet* inks);

signals:
    void inksChanged();

protected:
    /// The inks to paint with; the day set until a theme is given.
    const InkSet& palette() const;

    /// The application's font at `pixelSize` logical pixels, scaled as all text is, in `weight` (500, 700, 900).
    QFont font(qreal pixelSize, int weight) const;

    /// Stores `value` in `field`, tells `notify` and repaints, if it differs.
    template <class T, class Signal>
    void assign(T& field, const T& value, Signal notify)
    {
        if (field == value) {
            return;
        }
        field = value;
        emit (static_cast<typename SignalOwner<Signal>::Type*>(this)->*notify)();
        update();
    }

private:
    template <class S>
    struct SignalOwner;
    template <class Owner>
    struct SignalOwner<void (Owner::*)()> {
        using Type = Owner;
    };

    QPointer<InkSet> m_inks;
};

} // namespace groundcount::paint
