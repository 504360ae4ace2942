#include "book/flat_body.h"

#include "book/canonical.h"

#include <charconv>

namespace groundcount::book {

namespace {

/// Where the name or value that begins at `from` ends: at the colon, comma or bracket behind it.
std::size_t endOfValue(std::string_view text, std::size_t from)
{
    int depth = 0;
    bool isInText = false;
    for (std::size_t i = from; i < text.size(); ++i) {
        const char c = text[i];
        if (isInText) {
            if (c == '\\')
                ++i;
            else
                isInText = c != '"';
        } else if (c == '"') {
            isInText = true;
        } else if (c == '{' || c == '[') {
            ++depth;
        } else if (depth == 0 && (c == ',' || c == ':' || c == '}' || c == ']')) {
            return i;
        } else if (c == '}' || c == ']') {
            --depth;
        }
    }
    return std::string_view::npos;
}

bool isEnclosed(std::string_view text, char begin, char end)
{
    return text.size() >= 2 && text.front() == begin && text.back() == end;
}

}  // namespace

bool FlatBody::read(std::string_view text)
{
    m_members.clear();
    if (!isEnclosed(text, '{', '}'))
        return false;
    for (std::size_t at = 1; at + 1 < text.size();) {
        const std::size_t colon = endOfValue(text, at);
        const std::size_t end = colon == std::string_view::npos ? colon : endOfValue(text, colon + 1);
        if (end == std::string_view::npos || text[colon] != ':' || !isEnclosed(text.substr(at, colon - at), '"', '"'))
            return false;
        m_members.emplace_back(text.substr(at + 1, colon - at - 2), text.substr(colon + 1, end - colon - 1));
        at = end + 1;
    }
    return true;
}

std::string_view FlatBody::raw(std::string_view key) const
{
    for (const auto& [name, value] : m_members)
        if (name == key)
            return value;
    return {};
}

std::string FlatBody::text(std::string_view key) const
{
    const std::string_view value = raw(key);
    if (!isEnclosed(value, '"', '"'))
        return {};
    if (value.find('\\') == std::string_view::npos)
        return std::string(value.substr(1, value.size() - 2));
    const auto read = readJson(value);
    return read && read->is_string() ? read->get<std::string>() : std::string();
}

std::int64_t FlatBody::whole(std::string_view key) const
{
    const std::string_view value = raw(key);
    std::int64_t number = 0;
    const auto [end, fault] = std::from_chars(value.data(), value.data() + value.size(), number);
    return fault == std::errc() && end == value.data() + value.size() ? number : 0;
}

WithUnit withUnit(const FlatBody& body, const std::string& stem, Unit family)
{
    for (const std::string ending : endings(family))
        if (isEnclosed(body.raw(stem + ending), '"', '"'))
            return {body.text(stem + ending), ending.empty() ? ending : ending.substr(1)};
    return {};
}

bool eachElement(std::string_view array, const std::function<void(std::string_view)>& take)
{
    if (!isEnclosed(array, '[', ']'))
        return false;
    for (std::size_t at = 1; at + 1 < array.size();) {
        const std::size_t end = endOfValue(array, at);
        if (end == std::string_view::npos)
            return false;
        take(array.substr(at, end - at));
        at = end + 1;
    }
    return true;
}

}  // namespace groundcount::book
