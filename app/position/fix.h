#pragma once

#include <QByteArrayList>
#include <QDate>
#include <QMetaType>
#include <QString>
#include <QTime>

#include <optional>

namespace groundcount::position {

/// One position as the receiver stated it. Nothing is filled in: what the receiver did not send is empty, and an error estimate is never
/// carried over from an earlier epoch.
struct Fix {
    double latitude = 0;   ///< degrees, north positive
    double longitude = 0;  ///< degrees, east positive
    std::optional<double> heightEllipsoid; ///< metres
    std::optional<double> sigmaNorthM;     ///< one sigma, metres, of this very epoch (GST)
    std::optional<double> sigmaEastM;
    int quality = 0;       ///< as in the GGA sentence, 0 to 8
    QString qualityWord;   ///< "RTK fixed", "single"
    std::optional<int> satellites;
    std::optional<double> hdop;
    std::optional<double> courseDegrees; ///< over ground, true; only when the receiver gives one
    QTime utc;
    std::optional<QDate> utcDate;        ///< only when the receiver sent a date in this or an earlier epoch
    QByteArrayList raw;    ///< the epoch's sentences as they came
    bool jumped = false;   ///< further from the one before than anything on a site moves
    bool frozen = false;   ///< the receiver repeats itself

    /// DRMS = sqrt(sigmaNorth^2 + sigmaEast^2), metres; empty without both. 2DRMS is twice that; neither is exactly 95 %.
    /// @source [DESIGN]
    std::optional<double> drmsM() const;
};

}  // namespace groundcount::position

Q_DECLARE_METATYPE(groundcount::position::Fix)
