#include "book/hash.h"

#include <sodium.h>

namespace groundcount::book {

std::string blake2b256Hex(std::string_view bytes)
{
    std::array<unsigned char, 32> digest{};
    crypto_generichash(digest.data(), digest.size(), reinterpret_cast<const unsigned char*>(bytes.data()),
                       bytes.size(), nullptr, 0);
    std::string hex(digest.size() * 2 + 1, '\0');
    sodium_bin2hex(hex.data(), hex.size(), digest.data(), digest.size());
    hex.pop_back();
    return hex;
}

std::string sha256Bytes(std::string_view bytes)
{
    std::string digest(crypto_hash_sha256_BYTES, '\0');
    crypto_hash_sha256(reinterpret_cast<unsigned char*>(digest.data()), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    return digest;
}

}  // namespace groundcount::book
