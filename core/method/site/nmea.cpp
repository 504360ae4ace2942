#include "method/site/nmea.h"

#include "method/decimal.h"

#include <array>
#include <algorithm>
#include <charconv>
#include <cmath>
#include <string>
#include <tuple>
#include <vector>

namespace groundcount::method {
namespace {

using Fields = std::vector<std::string_view>;

Result<Fields> fieldsOf(std::string_view sentence, std::string_view type, std::size_t least)
{
    const auto body = checkedSentence(sentence);
    if (!body)
        return tl::unexpected(body.error());
    Fields fields;
    for (std::size_t begin = 0;;) {
        const std::size_t end = body->find(',', begin);
        fields.push_back(body->substr(begin, end - begin));
        if (end == std::string_view::npos)
            break;
        begin = end + 1;
    }
    if (fields[0].size() != 5 || !fields[0].ends_with(type))
        return refused("The sentence must be a " + std::string(type) + " sentence; it is \"" + std::string(fields[0]) + "\".");
    if (fields.size() < least)
        return refused("A " + std::string(type) + " sentence must have at least " + std::to_string(least - 1) + " fields; it has "
                       + std::to_string(fields.size() - 1) + ".");
    return fields;
}

Result<std::optional<double>> optionalNumber(std::string_view field, std::string_view what)
{
    if (field.empty())
        return std::optional<double>{};
    const auto value = Decimal::parse(field);
    if (!value)
        return refused("The " + std::string(what) + " must be a number; it is \"" + std::string(field) + "\".");
    return std::optional<double>{value->value()};
}

Result<int> wholeNumber(std::string_view field, std::string_view what)
{
    int value = 0;
    const auto [end, error] = std::from_chars(field.data(), field.data() + field.size(), value);
    if (field.empty() || error != std::errc{} || end != field.data() + field.size() || value < 0)
        return refused("The " + std::string(what) + " must be a whole number of 0 or more; it is \"" + std::string(field) + "\".");
    return value;
}

// "4807.038" with two digits of degrees (three for a longitude), then minutes.
Result<double> degreesAndMinutes(std::string_view field, std::size_t degreeDigits, std::string_view hemisphere, std::string_view letters, double most)
{
    const auto wrong = [&] {
        return refused("A " + std::string(degreeDigits == 2 ? "latitude" : "longitude") + " must be degrees and minutes up to "
                       + std::to_string(static_cast<int>(most)) + " degrees with a letter of " + std::string(letters) + "; it is \"" + std::string(field) + ","
                       + std::string(hemisphere) + "\".");
    };
    if (field.size() < degreeDigits + 2 || hemisphere.size() != 1 || letters.find(hemisphere) == std::string_view::npos)
        return wrong();
    const auto degrees = wholeNumber(field.substr(0, degreeDigits), "degrees");
    const std::string_view minuteText = field.substr(degreeDigits);
    const auto minutes = Decimal::parse(minuteText);
    const std::size_t point = std::min(minuteText.find('.'), minuteText.size());
    if (!degrees || !minutes || point != 2 || minuteText[0] == '+' || minuteText[0] == '-')
        return wrong();
    const double value = *degrees + minutes->value() / 60;
    if (!(minutes->value() < 60) || !(value <= most))
        return wrong();
    return hemisphere[0] == letters[1] ? -value : value;
}

int hexValue(char c)
{
    if (c >= '0' && c <= '9')
        return c - '0';
    if (c >= 'A' && c <= 'F')
        return c - 'A' + 10;
    if (c >= 'a' && c <= 'f')
        return c - 'a' + 10;
    return -1;
}

}  // namespace

Result<int> sentenceChecksum(std::string_view sentence)
{
    const auto body = checkedSentence(sentence);
    if (!body)
        return tl::unexpected(body.error());
    int sum = 0;
    for (const char c : *body)
        sum ^= c;
    return sum;
}

Result<std::string_view> checkedSentence(std::string_view sentence)
{
    while (!sentence.empty() && (sentence.back() == '\n' || sentence.back() == '\r'))
        sentence.remove_suffix(1);
    if (sentence.empty() || sentence.front() != '$')
        return refused("A receiver sentence must begin with $.");
    const std::size_t star = sentence.find('*');
    if (star == std::string_view::npos)
        return refused("The receiver sentence has no checksum.");
    if (sentence.size() != star + 3 || hexValue(sentence[star + 1]) < 0 || hexValue(sentence[star + 2]) < 0)
        return refused("The checksum of a receiver sentence must be two hexadecimal digits at its end; it is \"" + std::string(sentence.substr(star + 1))
                       + "\".");
    const std::string_view body = sentence.substr(1, star - 1);
    int sum = 0;
    for (const char c : body) {
        if (c < 0x20 || c > 0x7e)
            return refused("A receiver sentence must be printable text; it holds the byte " + std::to_string(static_cast<unsigned char>(c)) + ".");
        sum ^= c;
    }
    const int stated = hexValue(sentence[star + 1]) * 16 + hexValue(sentence[star + 2]);
    if (sum != stated)
        return refused("The checksum of the receiver sentence must be " + std::to_string(sum) + "; it is " + std::to_string(stated) + " (decimal).");
    return body;
}

Result<GgaFix> parseGga(std::string_view sentence)
{
    const auto fields = fieldsOf(sentence, "GGA", 13);
    if (!fields)
        return tl::unexpected(fields.error());
    const Fields& f = *fields;
    const auto quality = wholeNumber(f[6], "fix quality");
    if (!quality)
        return tl::unexpected(quality.error());
    if (*quality > 8)
        return refused("The fix quality must be 0 to 8; it is " + std::to_string(*quality) + ".");
    if (f[2].empty() && f[4].empty())
        return refused("The receiver sends no position; the kind of fix is \"" + std::string(fixWord(*quality)) + "\".");
    const auto latitude = degreesAndMinutes(f[2], 2, f[3], "NS", 90);
    if (!latitude)
        return tl::unexpected(latitude.error());
    const auto longitude = degreesAndMinutes(f[4], 3, f[5], "EW", 180);
    if (!longitude)
        return tl::unexpected(longitude.error());
    const auto satellites = f[7].empty() ? Result<int>(0) : wholeNumber(f[7], "number of satellites");
    if (!satellites)
        return tl::unexpected(satellites.error());
    GgaFix fix;
    fix.latitudeDeg = *latitude;
    fix.longitudeDeg = *longitude;
    fix.quality = *quality;
    fix.satellites = *satellites;
    fix.utc = f[1];
    for (const auto& [index, what, into] : {std::tuple(8, "HDOP", &fix.hdop), std::tuple(9, "altitude", &fix.altitudeMslM),
                                            std::tuple(11, "geoid separation", &fix.geoidSeparationM)}) {
        const auto value = optionalNumber(f[static_cast<std::size_t>(index)], what);
        if (!value)
            return tl::unexpected(value.error());
        *into = *value;
    }
    if ((fix.altitudeMslM && f[10] != "M") || (fix.geoidSeparationM && f[12] != "M"))
        return refused("Heights of a GGA sentence must be in metres (M); they are in \"" + std::string(f[10]) + "\" and \"" + std::string(f[12]) + "\".");
    if (fix.altitudeMslM && fix.geoidSeparationM)
        fix.ellipsoidHeightM = *fix.altitudeMslM + *fix.geoidSeparationM;
    return fix;
}

Result<GstErrors> parseGst(std::string_view sentence)
{
    const auto fields = fieldsOf(sentence, "GST", 9);
    if (!fields)
        return tl::unexpected(fields.error());
    std::array<std::optional<double>, 3> sigma;
    for (std::size_t i = 0; i < 3; ++i) {
        const auto value = optionalNumber((*fields)[6 + i], "error of a GST sentence");
        if (!value)
            return tl::unexpected(value.error());
        if (*value && !(**value >= 0))
            return refused("An error of a GST sentence must be at least 0 m; it is " + std::string((*fields)[6 + i]) + ".");
        sigma[i] = *value;
    }
    if (!sigma[0] || !sigma[1])
        return refused("The receiver sends no error of latitude and longitude.");
    return GstErrors{*sigma[0], *sigma[1], sigma[2], std::hypot(*sigma[0], *sigma[1])};
}

Result<void> acceptableAsTestPlace(int quality)
{
    if (quality >= 1 && quality <= 5)
        return {};
    return refused("The fix must be a measured one (quality 1 to 5) to place a test; it is " + std::to_string(quality) + " (" + std::string(fixWord(quality))
                   + ").");
}

std::string_view fixWord(int quality)
{
    static constexpr std::array<std::string_view, 9> kWords = {"no fix", "single", "differential", "precise positioning", "RTK fixed",
                                                        "RTK float", "estimated", "typed by hand", "simulated"};
    return quality >= 0 && quality <= 8 ? kWords[static_cast<std::size_t>(quality)] : "unknown";
}

}  // namespace groundcount::method
