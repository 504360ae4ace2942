#include "position/nmea_source.h"

#include <cmath>
#include <limits>
#include <string_view>
#include <utility>

namespace groundcount::position {
namespace {

// Sentences of one epoch follow each other within this, even at 9600 baud; epochs of a slow receiver are 1 s apart.
constexpr int kEpochSilenceMs = 150;
constexpr int kDayMs = 24 * 60 * 60 * 1000;
constexpr qsizetype kMostRawLines = 200;

/// "hhmmss.sss" as ms of the day, -1 if it is no time.
int utcMsOf(const QByteArray& field)
{
    bool ok = false;
    if (field.size() < 6)
        return -1;
    const int hours = field.left(2).toInt(&ok);
    if (!ok || hours > 23)
        return -1;
    const int minutes = field.mid(2, 2).toInt(&ok);
    if (!ok || minutes > 59)
        return -1;
    const double seconds = field.mid(4).toDouble(&ok);
    if (!ok || !(seconds >= 0) || !(seconds < 61))
        return -1;
    return static_cast<int>(((hours * 60 + minutes) * 60) * 1000 + std::lround(seconds * 1000)) % kDayMs;
}

/// "ddmmyy"; two figures of the year mean 2000 to 2099.
std::optional<QDate> dateOf(const QByteArray& field)
{
    if (field.size() != 6)
        return std::nullopt;
    const QDate date(2000 + field.mid(4, 2).toInt(), field.mid(2, 2).toInt(), field.left(2).toInt());
    return date.isValid() ? std::optional(date) : std::nullopt;
}

QString text(std::string_view view)
{
    return QString::fromUtf8(view.data(), static_cast<qsizetype>(view.size()));
}

}  // namespace

std::optional<double> Fix::drmsM() const
{
    if (!sigmaNorthM || !sigmaEastM)
        return std::nullopt;
    return std::hypot(*sigmaNorthM, *sigmaEastM);
}

NmeaSource::NmeaSource(SentenceFeed* feed, QObject* parent) : QNmeaPositionInfoSource(RealTimeMode, parent)
{
    qRegisterMetaType<Fix>();
    setDevice(feed);
    m_silence.setSingleShot(true);
    m_silence.setInterval(kEpochSilenceMs);
    connect(&m_silence, &QTimer::timeout, this, &NmeaSource::closeEpoch);
}

void NmeaSource::refuse(const QString& why)
{
    ++m_refused;
    emit sentenceRefused(why);
}

void NmeaSource::startEpoch(int utcMs)
{
    if (m_epoch.utcMs >= 0 && m_epoch.utcMs != utcMs)
        closeEpoch();
    m_epoch.utcMs = utcMs;
}

bool NmeaSource::parsePosInfoFromNmeaData(const char* data, int size, QGeoPositionInfo* info, bool* hasFix)
{
    *hasFix = false;
    const QByteArray line = QByteArray(data, size).trimmed();
    const auto body = method::checkedSentence(std::string_view(line.constData(), static_cast<std::size_t>(line.size())));
    if (!body) {
        if (!line.isEmpty())
            refuse(QString::fromStdString(body.error().what));
        return false;
    }
    const QByteArrayList fields = QByteArray(body->data(), static_cast<qsizetype>(body->size())).split(',');
    const QByteArray type = fields[0].size() == 5 ? fields[0].mid(2) : QByteArray();
    const bool timed = type == "GGA" || type == "RMC" || type == "GST";
    if (timed && fields.size() > 1) {
        const int utcMs = utcMsOf(fields[1]);
        if (utcMs >= 0)
            startEpoch(utcMs);
    }
    if (m_epoch.raw.size() < kMostRawLines)
        m_epoch.raw.append(line);

    const std::string_view sentence(line.constData(), static_cast<std::size_t>(line.size()));
    if (type == "GGA") {
        const auto gga = method::parseGga(sentence);
        m_epoch.gga.reset();
        if (gga)
            m_epoch.gga = *gga;
        else
            m_epoch.why = QString::fromStdString(gga.error().what);
    } else if (type == "GST") {
        const auto gst = method::parseGst(sentence);
        if (gst)
            m_epoch.gst = *gst;
        else
            refuse(QString::fromStdString(gst.error().what));
    } else if (type == "RMC") {
        m_epoch.voided = fields.size() < 3 || fields[2] != "A";
        if (fields.size() > 9) {
            if (const auto date = dateOf(fields[9]))
                m_date = date;
        }
    }
    m_silence.start();

    const bool parsed = QNmeaPositionInfoSource::parsePosInfoFromNmeaData(data, size, info, hasFix);
    if (type == "RMC" && parsed && !m_epoch.voided && info->hasAttribute(QGeoPositionInfo::Direction)
        && std::isfinite(info->attribute(QGeoPositionInfo::Direction)))
        m_epoch.courseDegrees = info->attribute(QGeoPositionInfo::Direction);
    // The base keeps an old figure where a new one is missing, and takes any sentence with "a fix" at its word.
    info->setAttribute(QGeoPositionInfo::HorizontalAccuracy,
                       m_epoch.gst ? m_epoch.gst->drmsM : std::numeric_limits<double>::quiet_NaN());
    *hasFix = m_epoch.gga && m_epoch.gga->quality > 0 && !m_epoch.voided;
    return parsed || type == "GST";
}

void NmeaSource::closeEpoch()
{
    m_silence.stop();
    const Epoch epoch = std::exchange(m_epoch, {});
    if (epoch.utcMs < 0)
        return;
    // The rest of an epoch that was closed by a silence brings no second answer.
    if (!epoch.gga && epoch.why.isEmpty() && !epoch.voided)
        return;
    if (!epoch.gga || epoch.gga->quality == 0 || epoch.voided) {
        emit noFix(!epoch.why.isEmpty() ? epoch.why
                   : epoch.voided       ? tr("The receiver marks its position as void.")
                                        : tr("The receiver has no fix."));
        return;
    }
    Fix fix;
    fix.latitude = epoch.gga->latitudeDeg;
    fix.longitude = epoch.gga->longitudeDeg;
    fix.heightEllipsoid = epoch.gga->ellipsoidHeightM;
    if (epoch.gst) {
        fix.sigmaNorthM = epoch.gst->sigmaLatM;
        fix.sigmaEastM = epoch.gst->sigmaLonM;
    }
    fix.quality = epoch.gga->quality;
    fix.qualityWord = text(method::fixWord(fix.quality));
    fix.satellites = epoch.gga->satellites;
    fix.hdop = epoch.gga->hdop;
    fix.courseDegrees = epoch.courseDegrees;
    fix.utc = QTime::fromMSecsSinceStartOfDay(epoch.utcMs);
    // A new day that no RMC has confirmed has no date.
    if (m_lastClosedUtcMs > epoch.utcMs + kDayMs / 2 && !epoch.raw.join().contains("RMC"))
        m_date.reset();
    m_lastClosedUtcMs = epoch.utcMs;
    fix.utcDate = m_date;
    fix.raw = epoch.raw;
    emit fixed(fix);
}

}  // namespace groundcount::position
