#pragma once

#include "method/error.h"

#include <optional>
#include <string>
#include <string_view>

namespace groundcount::method {

/// Position sentence of a receiver. Latitude north positive, longitude east positive.
struct GgaFix {
    double latitudeDeg = 0;
    double longitudeDeg = 0;
    int quality = 0;      ///< 0 to 8, see `fixWord`
    int satellites = 0;
    std::optional<double> hdop;
    std::optional<double> altitudeMslM;
    std::optional<double> geoidSeparationM;
    std::optional<double> ellipsoidHeightM;  ///< altitude + geoid separation
    std::string utc;  ///< "hhmmss[.sss]" as sent
};

/// One-sigma errors of a receiver, metres.
struct GstErrors {
    double sigmaLatM = 0;
    double sigmaLonM = 0;
    std::optional<double> sigmaAltM;
    double drmsM = 0;  ///< sqrt(sigmaLat^2 + sigmaLon^2): not a 95 % figure
};

/// XOR of the bytes between '$' and '*'.
/// @param sentence from '$', at most one line, CR LF at its end ignored
/// @error Refused: no '$' at its begin, no '*' with two hexadecimal digits at its end, a sum that differs, a byte outside
///   printable ASCII.
/// @source [NMEA-SAMPLES]
Result<int> sentenceChecksum(std::string_view sentence);

/// The text between '$' and '*' of a sentence whose checksum holds; points into `sentence`.
/// @error as `sentenceChecksum` @source [NMEA-SAMPLES]
Result<std::string_view> checkedSentence(std::string_view sentence);

/// Reads a GGA sentence with its checksum. A receiver without a fix sends no position: that is refused.
/// @param sentence "$..GGA,...*hh"
/// @error Refused: checksum, another sentence, missing fields, latitude above 90, longitude above 180, minutes of 60 or
///   more, quality outside 0 to 8, another unit than metres.
/// @source fields [NMEA-SAMPLES]; height = altitude + separation [DESIGN]
Result<GgaFix> parseGga(std::string_view sentence);

/// Reads a GST sentence: fields 6 to 8.
/// @error Refused: checksum, another sentence, a latitude or longitude error that is missing or below 0.
/// @source [NMEA-GST]
Result<GstErrors> parseGst(std::string_view sentence);

/// Whether a fix of this quality may become the place of a test: 1 to 5 may; 0, 6, 7, 8 and any other may not.
/// @error Refused naming the kind of fix. @source [DESIGN]
Result<void> acceptableAsTestPlace(int quality);

/// Kind of a fix in words: "no fix", "single", "differential", "precise positioning", "RTK fixed", "RTK float",
/// "estimated", "typed by hand", "simulated", "unknown". @source [NMEA-SAMPLES]
std::string_view fixWord(int quality);

}  // namespace groundcount::method
