#pragma once

#include <QByteArray>
#include <QIODevice>

namespace groundcount::position {

/// A sequential device that hands on whole lines only. Whatever brings bytes (file replay, socket, serial line) pushes them in; Qt
/// Positioning reads at the other end. A line longer than any sentence is dropped, so that a stream without line ends
/// can neither fill memory nor block what follows.
class SentenceFeed : public QIODevice {
    Q_OBJECT
public:
    explicit SentenceFeed(QObject* parent = nullptr);

    void push(const QByteArray& bytes);
    /// Forgets what nobody has read: the next bytes come from another source.
    void discard();
    bool isSequential() const override { return true; }
    bool canReadLine() const override;
    qint64 bytesAvailable() const override;
    int droppedLines() const { return m_dropped; }

protected:
    qint64 readData(char* data, qint64 most) override;
    qint64 writeData(const char* data, qint64 size) override;

private:
    QByteArray m_ready;   ///< whole lines
    QByteArray m_partial; ///< the line that is still coming in
    bool m_skipping = false;
    int m_dropped = 0;
};

}  // namespace groundcount::position
