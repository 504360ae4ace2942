#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace groundcount::book {

/// BLAKE2b-256 of `bytes` as 64 lower-case hexadecimal digits. @source RFC 7693
std::string blake2b256Hex(std::string_view bytes);

/// SHA-256 of `bytes` as 32 bytes: what a shared server names a text by. @source FIPS 180-4
std::string sha256Bytes(std::string_view bytes);

}  // namespace groundcount::book
