#pragma once

#include "book/kinds.h"

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// Reads a few members of a canonical body without making a tree of it: millions of bodies are looked through for a handful of
/// figures each. Private to core/book.
namespace groundcount::book {

class FlatBody {
public:
    /// Takes the members of an object. @param text canonical (RFC 8785), checked before it was sealed; it must outlive this object
    /// @return false for text that is no object
    bool read(std::string_view text);

    bool contains(std::string_view key) const { return !raw(key).empty(); }
    /// The canonical text of a value; "" when there is no such key.
    std::string_view raw(std::string_view key) const;
    /// The content of a text; "" for a missing key and for another type.
    std::string text(std::string_view key) const;
    /// A whole number; 0 for a missing key and for another type.
    std::int64_t whole(std::string_view key) const;

private:
    std::vector<std::pair<std::string_view, std::string_view>> m_members;
};

/// As of a body that was read whole.
WithUnit withUnit(const FlatBody& body, const std::string& stem, Unit family);

/// Gives the canonical text of each element. @return false for text that is no array
bool eachElement(std::string_view array, const std::function<void(std::string_view)>& take);

}  // namespace groundcount::book
