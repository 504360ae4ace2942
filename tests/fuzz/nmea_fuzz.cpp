#include "fuzz/hold.h"
#include "method/site/nmea.h"

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <string>

using namespace groundcount::method;

namespace {

void read(std::string_view sentence)
{
    const auto inner = checkedSentence(sentence);
    const auto sum = sentenceChecksum(sentence);
    HOLD(inner.has_value() == sum.has_value());
    HOLD(inner || !inner.error().what.empty());
    const auto gga = parseGga(sentence);
    HOLD(gga || !gga.error().what.empty());
    if (gga) {
        HOLD(inner);
        HOLD(std::abs(gga->latitudeDeg) <= 90 && std::abs(gga->longitudeDeg) <= 180);
        HOLD(gga->quality >= 0 && gga->quality <= 8);
        HOLD(!fixWord(gga->quality).empty());
        const auto may = acceptableAsTestPlace(gga->quality);
        HOLD(may || !may.error().what.empty());
    }
    const auto gst = parseGst(sentence);
    HOLD(gst || !gst.error().what.empty());
    if (gst) {
        HOLD(inner);
        HOLD(gst->sigmaLatM >= 0 && gst->sigmaLonM >= 0 && gst->drmsM >= 0);
        HOLD(std::isfinite(gst->drmsM));
    }
}

}  // namespace

/// Any bytes as a receiver's sentence: as they are, and as the inside of a sentence whose checksum holds.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string text(reinterpret_cast<const char*>(data), size);
    read(text);
    unsigned sum = 0;
    for (const char c : text)
        sum ^= static_cast<unsigned char>(c);
    char tail[4];
    std::snprintf(tail, sizeof tail, "*%02X", sum & 0xFFU);
    read("$" + text + tail);
    return 0;
}
