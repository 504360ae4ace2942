#pragma once

#include <istream>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <string_view>

/// The outer form of a bundle: texts of a JSON text sequence, and base64. Private to core/book.
namespace groundcount::book {

inline constexpr char kTextBegin = '\x1e';  ///< @source RFC 7464, section 2.2
inline constexpr char kTextEnd = '\n';

/// Reads one text after another. A damaged text ends at the next begin mark, so that it hides nothing behind it.
/// @source RFC 7464, section 2.1
class BundleTexts {
public:
    enum class Got { Text, TooLong, End };
    explicit BundleTexts(std::istream& in) : m_in(in) {}
    /// @param text the text between two begin marks, without its line end
    Got next(std::string& text);
    std::size_t texts() const { return m_texts; }

private:
    std::istream& m_in;
    std::size_t m_texts = 0;
    bool m_begun = false;
};

/// The first text of a bundle. @param book its id, "" for a book of format 1 @source docs/record-format.md, "The bundle"
nlohmann::json bundleHead(const std::string& book);

/// Base64 with the standard letters and padding. @source RFC 4648, section 4
std::string base64Of(std::string_view bytes);
/// Nothing when the text is not base64 of that form.
std::optional<std::string> bytesOfBase64(std::string_view text);

}  // namespace groundcount::book
