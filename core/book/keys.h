#pragma once

#include "method/error.h"

#include <array>
#include <string>
#include <string_view>

/// The key that a device signs with. It lives outside every book, in a file that only its owner can read.
namespace groundcount::book {

/// An Ed25519 key pair. Copies are wiped when they end.
class DeviceKey {
public:
    DeviceKey() = default;
    DeviceKey(const DeviceKey&) = default;
    DeviceKey& operator=(const DeviceKey&) = default;
    ~DeviceKey();

    /// Reads the key of `path`, or makes one there when the file does not exist. The file holds one line of 64
    /// hexadecimal digits, the 32-byte seed; mode 0600. Two processes that start together end with one key.
    /// @error Refused when the file is damaged or can be read by others; Unavailable when the disk does not do its part.
    /// @source RFC 8032, section 5.1.5
    static Result<DeviceKey> loadOrMake(const std::string& path);

    /// The key of a 32-byte seed, for tests and for a key kept elsewhere.
    static DeviceKey fromSeed(const std::array<unsigned char, 32>& seed);

    /// The public key, 64 lower-case hexadecimal digits: a record's `device`.
    const std::string& device() const { return m_device; }

    /// Ed25519 signature of the bytes that `hashHex` spells, 128 hexadecimal digits.
    /// @param hashHex 64 hexadecimal digits
    /// @error Refused when hashHex is not 64 hexadecimal digits.
    Result<std::string> sign(std::string_view hashHex) const;

private:
    std::array<unsigned char, 64> m_secret{};
    std::string m_device;
};

/// Whether `signatureHex` is `device`'s Ed25519 signature of the bytes that `hashHex` spells.
bool signatureHolds(std::string_view device, std::string_view hashHex, std::string_view signatureHex);

/// A fresh random subject: UUID version 4, lower case. @source RFC 4122, section 4.4
std::string newSubject();

}  // namespace groundcount::book
