#pragma once

#include <QtQml/qqmlregistration.h>

#include <QBasicTimer>
#include <QPointer>
#include <QQuickItem>

namespace groundcount::keys {

/// What is pressed by finger, mouse or Space and then says `clicked`, once for each press that also ends on it. Every finger counts for
/// itself, so that two thumbs type on a keypad; a list that is drawn takes the press away. `contentItem` is laid over the whole of it
/// but the paddings. Small, and part of this program, so that the first page does not wait for a library of controls.
class PressItem : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString text READ text WRITE setText NOTIFY textChanged)
    Q_PROPERTY(bool pressed READ isPressed NOTIFY pressedChanged)
    Q_PROPERTY(bool visualFocus READ hasVisualFocus NOTIFY visualFocusChanged)  ///< the keyboard brought the focus, so it is shown
    Q_PROPERTY(Qt::FocusPolicy focusPolicy READ focusPolicy WRITE setFocusPolicy NOTIFY focusPolicyChanged)
    Q_PROPERTY(bool autoRepeat MEMBER m_autoRepeat NOTIFY autoRepeatChanged)  ///< held: again after 0.3 s, then each 0.1 s
    Q_PROPERTY(qreal leftPadding MEMBER m_leftPadding WRITE setLeftPadding NOTIFY paddingChanged)
    Q_PROPERTY(qreal rightPadding MEMBER m_rightPadding WRITE setRightPadding NOTIFY paddingChanged)
    Q_PROPERTY(QQuickItem* contentItem READ contentItem WRITE setContentItem NOTIFY contentItemChanged)
    Q_PROPERTY(qreal implicitContentWidth READ implicitContentWidth NOTIFY implicitContentWidthChanged)
    Q_PROPERTY(qreal implicitContentHeight READ implicitContentHeight NOTIFY implicitContentHeightChanged)

public:
    explicit PressItem(QQuickItem* parent = nullptr);

    QString text() const { return m_text; }
    void setText(const QString& text);
    bool isPressed() const { return m_pressed; }
    bool hasVisualFocus() const { return m_visualFocus; }
    Qt::FocusPolicy focusPolicy() const { return m_focusPolicy; }
    void setFocusPolicy(Qt::FocusPolicy policy);
    void setLeftPadding(qreal padding);
    void setRightPadding(qreal padding);
    QQuickItem* contentItem() const { return m_content; }
    void setContentItem(QQuickItem* item);
    qreal implicitContentWidth() const { return m_content ? m_content->implicitWidth() : 0; }
    qreal implicitContentHeight() const { return m_content ? m_content->implicitHeight() : 0; }

signals:
    void clicked();
    void textChanged();
    void pressedChanged();
    void visualFocusChanged();
    void focusPolicyChanged();
    void autoRepeatChanged();
    void paddingChanged();
    void contentItemChanged();
    void implicitContentWidthChanged();
    void implicitContentHeightChanged();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;
    void itemChange(ItemChange change, const ItemChangeData& value) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void mouseUngrabEvent() override;
    void touchEvent(QTouchEvent* event) override;
    void touchUngrabEvent() override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void timerEvent(QTimerEvent* event) override;

private:
    void layOut();
    void press();
    void release();
    void cancel();
    void setPressed(bool pressed);
    void setVisualFocus(bool visual);

    static constexpr int kNoFinger = -1;

    QString m_text;
    QPointer<QQuickItem> m_content;
    QBasicTimer m_repeat;
    qreal m_leftPadding = 0, m_rightPadding = 0;
    Qt::FocusPolicy m_focusPolicy = Qt::StrongFocus;
    int m_finger = kNoFinger;
    bool m_pressed = false, m_repeated = false, m_visualFocus = false, m_autoRepeat = false;
};

}  // namespace groundcount::keys
