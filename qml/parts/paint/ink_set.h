#pragma once

#include <QtQml/qqmlregistration.h>

#include <QColor>
#include <QObject>

namespace groundcount::paint {

/// The colours and strokes of one theme, as the painted parts need them. Theme.qml fills one; the map's imagery has its own.
/// Strokes are logical pixels.
class InkSet : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QColor paper MEMBER paper NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink NOTIFY changed)
    Q_PROPERTY(QColor ink2 MEMBER ink2 NOTIFY changed)
    Q_PROPERTY(QColor hair MEMBER hair NOTIFY changed)
    Q_PROPERTY(QColor pass MEMBER pass NOTIFY changed)
    Q_PROPERTY(QColor fail MEMBER fail NOTIFY changed)
    Q_PROPERTY(qreal ruleWidth MEMBER ruleWidth NOTIFY changed)
    Q_PROPERTY(qreal tickWidth MEMBER tickWidth NOTIFY changed)
    Q_PROPERTY(qreal iconStroke MEMBER iconStroke NOTIFY changed)
    Q_PROPERTY(int bodyWeight MEMBER bodyWeight NOTIFY changed)
    Q_PROPERTY(int strongWeight MEMBER strongWeight NOTIFY changed)
    Q_PROPERTY(qreal textScale MEMBER textScale NOTIFY changed)

public:
    using QObject::QObject;

    QColor paper{0xFA, 0xF8, 0xF4};
    QColor ink{0x17, 0x18, 0x1A};
    QColor ink2{0x47, 0x46, 0x3F};
    QColor hair{0xC9, 0xC2, 0xB3};
    QColor pass{0x00, 0x44, 0x88};
    QColor fail{0x9E, 0x1B, 0x0D};
    qreal ruleWidth = 2;
    qreal tickWidth = 3;
    qreal iconStroke = 2;
    int bodyWeight = 500;
    int strongWeight = 700;
    qreal textScale = 1;

signals:
    void changed();
};

} // namespace groundcount::paint
