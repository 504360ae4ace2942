#include "position/replay_feed.h"

#include "position/sentence_feed.h"

#include <QFile>

#include <algorithm>

namespace groundcount::position {
namespace {

constexpr qint64 kLargestFile = 64LL * 1024 * 1024;
constexpr int kDayMs = 24 * 60 * 60 * 1000;
constexpr int kLongestPauseMs = 10'000; // a lunch break in the record is not sat out

}  // namespace

int sentenceTimeMs(const QByteArray& line)
{
    const QByteArray type = line.mid(3, 3);
    if (!line.startsWith('$') || (type != "GGA" && type != "RMC" && type != "GST"))
        return -1;
    const QByteArray field = line.mid(7, line.indexOf(',', 7) - 7);
    bool hm = false;
    bool s = false;
    const int hoursMinutes = field.left(4).toInt(&hm);
    const double seconds = field.mid(4).toDouble(&s);
    if (!hm || !s || field.size() < 6)
        return -1;
    return (hoursMinutes / 100 * 60 + hoursMinutes % 100) * 60'000 + static_cast<int>(seconds * 1000 + 0.5);
}

ReplayFeed::ReplayFeed(SentenceFeed* feed, QObject* parent) : QObject(parent), m_feed(feed)
{
    m_timer.setSingleShot(true);
    m_timer.setTimerType(Qt::PreciseTimer);
    connect(&m_timer, &QTimer::timeout, this, &ReplayFeed::playEpoch);
}

Result<void> ReplayFeed::start(const QString& path, double speed)
{
    stop();
    if (!(speed >= 0.1 && speed <= 10'000))
        return refused("The replay speed must be from 0.1 to 10000; it is " + QString::number(speed).toStdString() + ".");
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return unavailable("The record \"" + path.toStdString() + "\" cannot be read: " + file.errorString().toStdString() + ".");
    if (file.size() > kLargestFile)
        return refused("A record of sentences may have at most 64 MB; this one has " + std::to_string(file.size() / 1'000'000) + " MB.");
    m_lines.clear();
    for (const QByteArray& line : file.readAll().split('\n')) {
        if (line.startsWith('$'))
            m_lines.append(line.trimmed());
    }
    if (std::none_of(m_lines.begin(), m_lines.end(), [](const QByteArray& line) { return sentenceTimeMs(line) >= 0; }))
        return refused("The record \"" + path.toStdString() + "\" holds no position sentence (GGA, RMC or GST).");
    m_speed = speed;
    m_next = 0;
    m_timer.start(0);
    return {};
}

void ReplayFeed::stop()
{
    m_timer.stop();
}

void ReplayFeed::playEpoch()
{
    QByteArray bytes;
    int now = -1;
    int next = -1;
    for (; m_next < m_lines.size(); ++m_next) {
        const int time = sentenceTimeMs(m_lines[m_next]);
        if (time >= 0 && now >= 0 && time != now) {
            next = time;
            break;
        }
        if (time >= 0)
            now = time;
        bytes += m_lines[m_next] + "\r\n";
    }
    const bool more = next >= 0;
    if (more) {
        const int pause = std::min((next - now + kDayMs) % kDayMs, kLongestPauseMs);
        m_timer.start(static_cast<int>(pause / m_speed));
    }
    m_feed->push(bytes);
    if (!more)
        emit finished();
}

}  // namespace groundcount::position
