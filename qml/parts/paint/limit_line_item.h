#pragma once

#include "ink_item.h"
#include "limit_line.h"

#include <QStringList>

namespace groundcount::paint {

/// The limit line as a part. Every position is a fraction of the axis and comes from outside; NaN means "not there".
/// `labelAt`, `labels` and `measuredLabel` (an index, -1 for none) go together: one word under the axis per position.
class LimitLineItem : public groundcount::paint::InkItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal lowLimit READ lowLimit WRITE setLowLimit NOTIFY lineChanged)
    Q_PROPERTY(qreal highLimit READ highLimit WRITE setHighLimit NOTIFY lineChanged)
    Q_PROPERTY(QList<qreal> ticks READ ticks WRITE setTicks NOTIFY lineChanged)
    Q_PROPERTY(qreal value READ value WRITE setValue NOTIFY lineChanged)
    Q_PROPERTY(qreal spreadLow READ spreadLow WRITE setSpreadLow NOTIFY lineChanged)
    Q_PROPERTY(qreal spreadHigh READ spreadHigh WRITE setSpreadHigh NOTIFY lineChanged)
    Q_PROPERTY(int mark READ mark WRITE setMark NOTIFY lineChanged)
    Q_PROPERTY(bool running READ running WRITE setRunning NOTIFY lineChanged)
    Q_PROPERTY(QStringList labels READ labels WRITE setLabels NOTIFY lineChanged)
    Q_PROPERTY(QList<qreal> labelAt READ labelAt WRITE setLabelAt NOTIFY lineChanged)
    Q_PROPERTY(int measuredLabel READ measuredLabel WRITE setMeasuredLabel NOTIFY lineChanged)

public:
    explicit LimitLineItem(QQuickItem* parent = nullptr);

    qreal lowLimit() const { return m_line.lowLimit; }
    void setLowLimit(qreal value) { set(m_line.lowLimit, value); }
    qreal highLimit() const { return m_line.highLimit; }
    void setHighLimit(qreal value) { set(m_line.highLimit, value); }
    QList<qreal> ticks() const { return m_line.ticks; }
    void setTicks(const QList<qreal>& ticks) { set(m_line.ticks, ticks); }
    qreal value() const { return m_line.value; }
    void setValue(qreal value) { set(m_line.value, value); }
    qreal spreadLow() const { return m_line.spreadLow; }
    void setSpreadLow(qreal value) { set(m_line.spreadLow, value); }
    qreal spreadHigh() const { return m_line.spreadHigh; }
    void setSpreadHigh(qreal value) { set(m_line.spreadHigh, value); }
    int mark() const { return static_cast<int>(m_line.mark); }
    void setMark(int mark) { set(m_line.mark, static_cast<view::Mark>(mark)); }
    bool running() const { return m_line.running; }
    void setRunning(bool running) { set(m_line.running, running); }
    QStringList labels() const { return m_labels; }
    void setLabels(const QStringList& labels) { set(m_labels, labels); }
    QList<qreal> labelAt() const { return m_labelAt; }
    void setLabelAt(const QList<qreal>& at) { set(m_labelAt, at); }
    int measuredLabel() const { return m_measuredLabel; }
    void setMeasuredLabel(int index) { set(m_measuredLabel, index); }

    void paint(QPainter* painter) override;

signals:
    void lineChanged();

private:
    template <class T>
    void set(T& field, const T& value)
    {
        field = value;
        refresh();
    }
    void refresh();
    LimitLineFonts fonts() const;

    LimitLine m_line;
    QStringList m_labels;
    QList<qreal> m_labelAt;
    int m_measuredLabel = -1;
};

} // namespace groundcount::paint
