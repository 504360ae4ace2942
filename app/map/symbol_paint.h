#pragma once

#include <QColor>
#include <QPainterPath>
#include <QRectF>

class QPainter;

/// The map's symbols as drawings, shared by lists, verdicts, legend and map.
///
/// Every symbol is defined on a grid of 24 x 24 with its centre at (12, 12), y downwards, and is scaled into the box given:
///   Pass             disc r 11, check (6.6,12.6) (10.5,16.4) (17.4,8.2), stroke 2.8
///   Fail             square on its corner, half-diagonal 11.7, bar from x 6.2 to 17.8 at y 12, stroke 3
///   Waiting          ring r 9.5, stroke 3
///   InformationOnly  solid square 11 x 11
///   Void             cross from 5 to 19, stroke 1.8
///   Owed             four ticks 6.5 long round an empty centre, stroke 2.6
/// Nothing here needs a pixmap, a window or the GUI thread.
namespace groundcount::map {

/// What a test or a site is, as far as the map tells it. Shape first, colour second.
enum class PointState { Pass, Fail, Waiting, InformationOnly, Void, Owed };
inline constexpr int kPointStateCount = 6;

/// What lies under a symbol.
enum class Ground {
    List,    ///< a plain page: the bare symbol
    Drawn,   ///< a drawn map: paper knocked out 2.5 grid units round the symbol
    Imagery  ///< a photograph: white ring 2.2, then a dark halo 1.1, in the colours given (use the day set in every theme)
};

/// Theme colours that symbols use.
struct SymbolColours {
    QColor ink = QColor(0x17, 0x18, 0x1a);
    QColor paper = QColor(0xfa, 0xf8, 0xf4);
    QColor pass = QColor(0x00, 0x44, 0x88);
    QColor fail = QColor(0x9e, 0x1b, 0x0d);
    bool operator==(const SymbolColours&) const = default;
};

/// How far a symbol on this ground may reach beyond its box, in grid units (24 to the side of the box).
double reachBeyondBox(Ground ground);

/// The colour a state is written in when its word stands beside the symbol.
QColor stateColour(PointState state, const SymbolColours& colours);

/// The outer edge of a state's symbol in grid units; what ring and halo follow.
QPainterPath stateOutline(PointState state);

/// Draws one state's symbol into `box` (logical px, square; a longer side is centred). The painter's state is restored.
void paintState(QPainter& painter, PointState state, const QRectF& box, const SymbolColours& colours, Ground ground);

/// Draws four corner brackets along the inside of `box`: the chosen symbol on a map (36 px for symbols of 24 to 28).
void paintBrackets(QPainter& painter, const QRectF& box, const SymbolColours& colours, Ground ground);

/// Draws the person's own place: ink disc r 9 of 24 with a white ring 2.5, and, if `headingDegrees` is a number, a wedge pointing
/// that way (clockwise from up). The wedge reaches 7 grid units beyond the disc. The accuracy circle is the map's own.
void paintOwnPlace(QPainter& painter, const QRectF& box, const SymbolColours& colours, double headingDegrees);

}  // namespace groundcount::map
