#pragma once

#include <string>
#include <tl/expected.hpp>
#include <utility>

namespace groundcount {

/// Who can do something about an error.
enum class Fault {
    Refused,     ///< the input breaks the method or the contract; the person who typed it can act
    Unavailable  ///< disk, receiver, library or server did not do its part
};

/// A failure as a value. `what` is one sentence for a person: the thing, its value, the allowed range.
struct Error {
    Fault fault = Fault::Refused;
    std::string what;
    bool operator==(const Error&) const = default;
};

/// A value of type T or an Error. Core throws nothing across its public functions.
template <class T>
using Result = tl::expected<T, Error>;

/// Shorthand for `return refused("Wet density must be above 0 lb/ft3; it is -3.");`
[[nodiscard]] inline tl::unexpected<Error> refused(std::string what)
{
    return tl::unexpected<Error>(Error{Fault::Refused, std::move(what)});
}

[[nodiscard]] inline tl::unexpected<Error> unavailable(std::string what)
{
    return tl::unexpected<Error>(Error{Fault::Unavailable, std::move(what)});
}

}  // namespace groundcount
