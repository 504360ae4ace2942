#pragma once

#include "method/error.h"

#include <QByteArrayList>
#include <QObject>
#include <QTimer>

namespace groundcount::position {

class SentenceFeed;

/// Plays a recorded stream of sentences into a feed, paced by the times in it.
class ReplayFeed : public QObject {
    Q_OBJECT
public:
    explicit ReplayFeed(SentenceFeed* feed, QObject* parent = nullptr);

    /// @param path a plain file of sentences, one a line, at most 64 MB
    /// @param speed 1 plays as it was recorded, 10 ten times as fast; 0.1 to 10000
    /// @error Unavailable: cannot be read. Refused: too large, no sentence in it, speed outside its range.
    Result<void> start(const QString& path, double speed);
    void stop();
    bool isPlaying() const { return m_timer.isActive(); }

signals:
    void finished();

private:
    void playEpoch();

    SentenceFeed* m_feed;
    QTimer m_timer;
    QByteArrayList m_lines;
    qsizetype m_next = 0;
    double m_speed = 1;
};

/// ms of the day in a GGA, RMC or GST sentence; -1 for any other line.
int sentenceTimeMs(const QByteArray& line);

}  // namespace groundcount::position
