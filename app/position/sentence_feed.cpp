#include "position/sentence_feed.h"

#include <algorithm>
#include <cstring>

namespace groundcount::position {
namespace {

constexpr qsizetype kLongestLine = 512;       // a sentence has 82 characters by the standard; makers' own ones are longer
constexpr qsizetype kMostWaiting = 64 * 1024; // nobody reads: older lines are worth nothing

}  // namespace

SentenceFeed::SentenceFeed(QObject* parent) : QIODevice(parent)
{
    open(QIODevice::ReadOnly | QIODevice::Unbuffered);
}

void SentenceFeed::push(const QByteArray& bytes)
{
    const qsizetype before = m_ready.size();
    for (const char c : bytes) {
        if (c == '\n') {
            if (!m_skipping) {
                m_ready += m_partial;
                m_ready += '\n';
            }
            m_partial.clear();
            m_skipping = false;
        } else if (!m_skipping) {
            m_partial += c;
            if (m_partial.size() > kLongestLine) {
                m_partial.clear();
                m_skipping = true;
                ++m_dropped;
            }
        }
    }
    if (m_ready.size() > kMostWaiting)
        m_ready.remove(0, m_ready.indexOf('\n', m_ready.size() - kMostWaiting) + 1);
    if (m_ready.size() != before)
        emit readyRead();
}

void SentenceFeed::discard()
{
    m_ready.clear();
    m_partial.clear();
    m_skipping = false;
}

bool SentenceFeed::canReadLine() const
{
    return m_ready.contains('\n') || QIODevice::canReadLine();
}

qint64 SentenceFeed::bytesAvailable() const
{
    return m_ready.size() + QIODevice::bytesAvailable();
}

qint64 SentenceFeed::readData(char* data, qint64 most)
{
    const qint64 n = std::min<qint64>(most, m_ready.size());
    std::memcpy(data, m_ready.constData(), static_cast<std::size_t>(n));
    m_ready.remove(0, n);
    return n;
}

qint64 SentenceFeed::writeData(const char*, qint64)
{
    return -1;
}

}  // namespace groundcount::position
