#pragma once

#include "position/fix.h"
#include "position/sentence_feed.h"

#include "method/site/nmea.h"

#include <QNmeaPositionInfoSource>
#include <QTimer>

#include <optional>

namespace groundcount::position {

/// Qt's NMEA source with what it leaves out. Qt 6.4 does not read GST, forgets the quality of a fix, keeps an accuracy from an earlier epoch,
/// takes a void RMC with a GSA for a fix, drops the geoid separation and gives nothing for a stream without a date. Here
/// an epoch is what carries one UTC time; it ends when another time comes or after a short silence, and gives one Fix or one reason.
/// `positionUpdated` of the base still comes, with the accuracy of its own epoch or none.
class NmeaSource : public QNmeaPositionInfoSource {
    Q_OBJECT
public:
    /// @param feed read from startUpdates() on; not owned, must outlive this
    explicit NmeaSource(SentenceFeed* feed, QObject* parent = nullptr);

    /// Silence after which an epoch is complete, ms.
    void setEpochSilence(int ms) { m_silence.setInterval(ms); }
    int refusedSentences() const { return m_refused; }

signals:
    void fixed(const groundcount::position::Fix& fix);
    /// An epoch without a position: why, in one sentence.
    void noFix(const QString& why);
    /// A sentence that is not believed: checksum, fields.
    void sentenceRefused(const QString& why);

protected:
    bool parsePosInfoFromNmeaData(const char* data, int size, QGeoPositionInfo* info, bool* hasFix) override;

private:
    struct Epoch {
        int utcMs = -1;
        std::optional<method::GgaFix> gga;
        std::optional<method::GstErrors> gst;
        std::optional<double> courseDegrees;
        QString why;
        bool voided = false; ///< RMC says so
        QByteArrayList raw;
    };
    void startEpoch(int utcMs);
    void closeEpoch();
    void refuse(const QString& why);

    QTimer m_silence;
    Epoch m_epoch;
    std::optional<QDate> m_date;
    int m_lastClosedUtcMs = -1;
    int m_refused = 0;
};

}  // namespace groundcount::position
