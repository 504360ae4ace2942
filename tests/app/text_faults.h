#pragma once

#include "qml/gallery_walk.h"

#include <QQuickItem>
#include <QQuickWindow>

#include <vector>

/// Texts that a person cannot read as they stand: elided, cut, painted over another or out of the window.
namespace text_faults {

inline constexpr double kSlack = 1.5;  // pixels: side bearings of glyphs

struct Painted {
    QString text;
    QRectF at;                          ///< what is inked, in the window
    const QQuickItem* shownIn = nullptr;  ///< what clips it
};

inline const QQuickItem* clipperOf(const QQuickItem* item)
{
    for (const QQuickItem* at = item->parentItem(); at; at = at->parentItem())
        if (at->clip())
            return at;
    return nullptr;
}

inline QString described(const QQuickItem* item)
{
    QString path;
    for (const QQuickItem* at = item; at && path.count('/') < 4; at = at->parentItem())
        if (!at->objectName().isEmpty() || at == item)
            path.prepend('/' + at->objectName());
    return QStringLiteral("\"%1\" in %2").arg(item->property("text").toString(), path);
}

/// The faults of one text by itself; its inked place is added to `painted`.
inline QStringList faultsOf(const QQuickItem* item, QSizeF window, std::vector<Painted>& painted)
{
    QStringList faults;
    const double inkWidth = item->property("contentWidth").toDouble();
    const double inkHeight = item->property("contentHeight").toDouble();
    if (item->property("truncated").toBool())
        faults << QStringLiteral("elided: ") + described(item);
    if (inkWidth > item->width() + kSlack)
        faults << QStringLiteral("%1 px wide, %2 given: ").arg(inkWidth).arg(item->width()) + described(item);
    if (inkHeight > item->height() + 3)
        faults << QStringLiteral("%1 px tall, %2 given: ").arg(inkHeight).arg(item->height()) + described(item);
    const int align = item->property("effectiveHorizontalAlignment").toInt();
    const double room = item->width() - inkWidth;
    const double left = align == Qt::AlignRight ? room : align == Qt::AlignHCenter ? room / 2 : 0;
    const int vertical = item->property("verticalAlignment").toInt();
    const double high = item->height() - inkHeight;
    const double top = vertical == Qt::AlignBottom ? high : vertical == Qt::AlignVCenter ? high / 2 : 0;
    Painted ink{item->property("text").toString(), item->mapRectToScene(QRectF(left, top, inkWidth, inkHeight)), clipperOf(item)};
    const double right = ink.shownIn ? ink.shownIn->mapRectToScene(ink.shownIn->boundingRect()).right() : window.width();
    if (ink.at.left() < -kSlack || ink.at.right() > right + kSlack)
        faults << QStringLiteral("reaches from %1 to %2 of %3: ").arg(ink.at.left()).arg(ink.at.right()).arg(right) + described(item);
    painted.push_back(std::move(ink));
    return faults;
}

/// @param within the page that covers the rest, nullptr = all of the window
inline QStringList faultsOf(QQuickWindow* window, QQuickItem* within = nullptr)
{
    QStringList faults;
    std::vector<Painted> painted;
    for (const QQuickItem* item : gallery::items(within ? within : window->contentItem()))
        if (item->inherits("QQuickText") && !item->property("text").toString().trimmed().isEmpty() && item->opacity() > 0)
            faults << faultsOf(item, window->size(), painted);
    for (std::size_t i = 0; i < painted.size(); ++i)
        for (std::size_t j = i + 1; j < painted.size(); ++j) {
            const QRectF both = painted[i].at & painted[j].at;
            // Line heights may touch; ink that is crossed is more than a quarter of a line.
            if (painted[i].shownIn == painted[j].shownIn && both.width() > kSlack && both.height() > 0.25 * std::min(painted[i].at.height(), painted[j].at.height()))
                faults << QStringLiteral("\"%1\" lies over \"%2\"").arg(painted[i].text, painted[j].text);
        }
    return faults;
}

}  // namespace text_faults
