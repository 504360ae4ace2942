#include "book/bundle_text.h"

#include "book/bundle.h"

#include <sodium.h>

namespace groundcount::book {

BundleTexts::Got BundleTexts::next(std::string& text)
{
    std::streambuf* bytes = m_in.rdbuf();
    constexpr int kEnd = std::char_traits<char>::eof();
    text.clear();
    if (!m_begun) {
        // anything but a begin mark at the head is no text sequence
        if (bytes->sgetc() != static_cast<unsigned char>(kTextBegin))
            return Got::End;
        bytes->sbumpc();
        m_begun = true;
    }
    bool tooLong = false;
    int byte = bytes->sbumpc();
    if (byte == kEnd)
        return Got::End;
    for (; byte != kEnd && byte != static_cast<unsigned char>(kTextBegin); byte = bytes->sbumpc()) {
        if (text.size() < kLongestBundleText)
            text += static_cast<char>(byte);
        else
            tooLong = true;
    }
    if (!text.empty() && text.back() == kTextEnd)
        text.pop_back();
    ++m_texts;
    return tooLong ? Got::TooLong : Got::Text;
}

std::string base64Of(std::string_view bytes)
{
    std::string text(sodium_base64_ENCODED_LEN(bytes.size(), sodium_base64_VARIANT_ORIGINAL), '\0');
    sodium_bin2base64(text.data(), text.size(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size(),
                      sodium_base64_VARIANT_ORIGINAL);
    text.pop_back();
    return text;
}

std::optional<std::string> bytesOfBase64(std::string_view text)
{
    std::string bytes(text.size() / 4 * 3 + 3, '\0');
    std::size_t size = 0;
    const char* end = nullptr;
    if (sodium_base642bin(reinterpret_cast<unsigned char*>(bytes.data()), bytes.size(), text.data(), text.size(), nullptr, &size, &end,
                          sodium_base64_VARIANT_ORIGINAL) != 0 || end != text.data() + text.size())
        return std::nullopt;
    bytes.resize(size);
    return bytes;
}

}  // namespace groundcount::book
