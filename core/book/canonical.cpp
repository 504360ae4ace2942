#include "book/canonical.h"

#include "book/utf8.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <set>
#include <utility>
#include <vector>

namespace groundcount::book {

namespace {

using Json = nlohmann::json;

bool needsNoEscape(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), [](char c) {
        return static_cast<unsigned char>(c) >= 0x20 && static_cast<unsigned char>(c) < 0x80 && c != '"' && c != '\\';
    });
}

Result<void> writeText(std::string_view text, std::string& out)
{
    if (needsNoEscape(text)) {
        out += '"';
        out += text;
        out += '"';
        return {};
    }
    if (!isUtf8(text))
        return refused("Text in a record must be UTF-8; some bytes of a text of " + std::to_string(text.size()) +
                       " bytes are not.");
    out += '"';
    for (const char c : text) {
        switch (c) {
        case '"': out += "\\\""; break;
        case '\\': out += "\\\\"; break;
        case '\b': out += "\\b"; break;
        case '\t': out += "\\t"; break;
        case '\n': out += "\\n"; break;
        case '\f': out += "\\f"; break;
        case '\r': out += "\\r"; break;
        default:
            if (static_cast<unsigned char>(c) < 0x20) {
                constexpr char kHex[] = "0123456789abcdef";
                out += "\\u00";
                out += kHex[static_cast<unsigned char>(c) >> 4U];
                out += kHex[static_cast<unsigned char>(c) & 0x0FU];
            } else {
                out += c;
            }
        }
    }
    out += '"';
    return {};
}

/// A whole number beyond 2^53 is written when it is the text of a double: 1e17 reads back as the integer 100000000000000000.
template <typename Whole>
Result<void> writeWhole(Whole whole, std::string& out)
{
    const std::string digits = std::to_string(whole);
    const bool exact = std::cmp_less_equal(whole, kLargestWhole) && std::cmp_greater_equal(whole, -kLargestWhole);
    if (!exact && canonicalNumber(static_cast<double>(whole)) != digits)
        return refused("A whole number in a record must be within +-9007199254740991 or one that a reader keeps; it is " +
                       digits + ".");
    out += digits;
    return {};
}

Result<void> write(const Json& value, int depth, std::string& out);

Result<void> writeMember(const std::string& name, const Json& value, int depth, std::string& out)
{
    if (out.back() != '{')
        out += ',';
    if (auto r = writeText(name, out); !r)
        return r;
    out += ':';
    return write(value, depth + 1, out);
}

/// Names in ASCII stand in the object in the order that is wanted.
Result<void> writeOrdered(const Json& value, int depth, std::string& out)
{
    out += '{';
    for (auto it = value.begin(); it != value.end(); ++it)
        if (auto r = writeMember(it.key(), it.value(), depth, out); !r)
            return r;
    out += '}';
    return {};
}

Result<void> writeObject(const Json& value, int depth, std::string& out)
{
    bool plain = true;
    for (auto it = value.begin(); plain && it != value.end(); ++it)
        plain = isAscii(it.key());
    if (plain)
        return writeOrdered(value, depth, out);
    std::vector<std::pair<std::u16string, const Json*>> members;
    std::vector<const std::string*> names;
    for (auto it = value.begin(); it != value.end(); ++it) {
        std::u16string units;
        if (!utf16(it.key(), units))
            return refused("A name in a record must be UTF-8; one of " + std::to_string(it.key().size()) +
                           " bytes is not.");
        members.emplace_back(std::move(units), &it.value());
        names.push_back(&it.key());
    }
    std::vector<std::size_t> order(members.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return members[a].first < members[b].first; });
    out += '{';
    for (const std::size_t i : order)
        if (auto r = writeMember(*names[i], *members[i].second, depth, out); !r)
            return r;
    out += '}';
    return {};
}

Result<void> write(const Json& value, int depth, std::string& out)
{
    if (depth > kDeepestNesting)
        return refused("A record may be nested " + std::to_string(kDeepestNesting) + " deep; this one is deeper.");
    switch (value.type()) {
    case Json::value_t::null: out += "null"; return {};
    case Json::value_t::boolean: out += *value.get_ptr<const bool*>() ? "true" : "false"; return {};
    case Json::value_t::string: return writeText(*value.get_ptr<const std::string*>(), out);
    case Json::value_t::number_integer: return writeWhole(*value.get_ptr<const Json::number_integer_t*>(), out);
    case Json::value_t::number_unsigned: return writeWhole(*value.get_ptr<const Json::number_unsigned_t*>(), out);
    case Json::value_t::number_float: {
        auto text = canonicalNumber(*value.get_ptr<const Json::number_float_t*>());
        if (!text)
            return tl::unexpected(text.error());
        out += *text;
        return {};
    }
    case Json::value_t::array: {
        out += '[';
        for (std::size_t i = 0; i < value.size(); ++i) {
            if (i > 0)
                out += ',';
            if (auto r = write(value[i], depth + 1, out); !r)
                return r;
        }
        out += ']';
        return {};
    }
    case Json::value_t::object: return writeObject(value, depth, out);
    case Json::value_t::binary:
    case Json::value_t::discarded: break;
    }
    return refused("A record holds texts, numbers, true, false, null, lists and objects; this value is none of them.");
}

}  // namespace

Result<std::string> canonicalNumber(double value)
{
    if (!std::isfinite(value))
        return refused("A number in a record must be finite; it is not.");
    if (value == 0)
        return std::string("0");  // also for -0
    std::array<char, 40> buffer{};
    const auto written =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), std::fabs(value), std::chars_format::scientific);
    const std::string_view shortest(buffer.data(), static_cast<std::size_t>(written.ptr - buffer.data()));
    const auto e = shortest.find('e');
    std::string digits;
    for (const char c : shortest.substr(0, e))
        if (c != '.')
            digits += c;
    int exponent = 0;
    const char* from = shortest.data() + e + (shortest[e + 1] == '+' ? 2 : 1);
    std::from_chars(from, shortest.data() + shortest.size(), exponent);
    const int k = static_cast<int>(digits.size());
    const int n = exponent + 1;  // value = 0.digits x 10^n, the n of ECMA-262
    std::string out = value < 0 ? "-" : "";
    if (k <= n && n <= 21)
        return out + digits + std::string(static_cast<std::size_t>(n - k), '0');
    if (0 < n && n <= 21)
        return out + digits.substr(0, static_cast<std::size_t>(n)) + "." + digits.substr(static_cast<std::size_t>(n));
    if (-6 < n && n <= 0)
        return out + "0." + std::string(static_cast<std::size_t>(-n), '0') + digits;
    out += digits.substr(0, 1);
    if (k > 1)
        out += "." + digits.substr(1);
    return out + "e" + (n - 1 < 0 ? "-" : "+") + std::to_string(std::abs(n - 1));
}

Result<std::string> canonicalText(const nlohmann::json& value)
{
    std::string out;
    if (auto r = write(value, 0, out); !r)
        return tl::unexpected(r.error());
    return out;
}

Result<void> appendCanonical(std::string_view text, std::string& out)
{
    return writeText(text, out);
}

Result<nlohmann::json> readJson(std::string_view text)
{
    if (!isUtf8(text))
        return refused("JSON text must be UTF-8; it is not.");
    std::vector<std::set<std::string>> open;
    std::string doubled;
    bool tooDeep = false;
    const auto watch = [&](int depth, Json::parse_event_t event, Json& parsed) {
        tooDeep = tooDeep || depth > kDeepestNesting;
        if (event == Json::parse_event_t::object_start)
            open.emplace_back();
        else if (event == Json::parse_event_t::object_end && !open.empty())
            open.pop_back();
        else if (event == Json::parse_event_t::key && !open.empty() && parsed.is_string() &&
                 !open.back().insert(*parsed.get_ptr<const std::string*>()).second)
            doubled = *parsed.get_ptr<const std::string*>();
        return true;
    };
    Json value = Json::parse(text.begin(), text.end(), watch, false);
    if (value.is_discarded())
        return refused("The text is not JSON (" + std::to_string(text.size()) + " bytes).");
    if (!doubled.empty())
        return refused("A name may stand once in an object; \"" + doubled + "\" stands twice.");
    if (tooDeep)
        return refused("JSON may be nested " + std::to_string(kDeepestNesting) + " deep; this text is deeper.");
    return value;
}

}  // namespace groundcount::book
