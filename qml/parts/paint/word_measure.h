#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace groundcount::paint {

/// How wide the widest single word of some texts is, in the application's font: what a cell must have so that none is cut.
class WordMeasure : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList words MEMBER m_words NOTIFY changed)
    Q_PROPERTY(qreal pixelSize MEMBER m_pixelSize NOTIFY changed)
    Q_PROPERTY(int weight MEMBER m_weight NOTIFY changed)
    Q_PROPERTY(qreal widest READ widest NOTIFY changed)

public:
    using QObject::QObject;
    qreal widest() const;

signals:
    void changed();

private:
    QStringList m_words;
    qreal m_pixelSize = 16;
    int m_weight = 500;
};

}  // namespace groundcount::paint
