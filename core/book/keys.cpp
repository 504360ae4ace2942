#include "book/keys.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sodium.h>
#include <sys/stat.h>
#include <unistd.h>
#include <vector>

namespace groundcount::book {

namespace {

bool sodiumReady()
{
    static const bool ready = sodium_init() >= 0;
    return ready;
}

template <std::size_t N>
bool bytesOf(std::string_view hex, std::array<unsigned char, N>& bytes)
{
    std::size_t length = 0;
    const char* end = nullptr;
    // one spelling only: libsodium also reads capitals, which would let a record change without being seen
    if (hex.find_first_not_of("0123456789abcdef") != std::string_view::npos)
        return false;
    return hex.size() == N * 2 &&
           sodium_hex2bin(bytes.data(), N, hex.data(), hex.size(), nullptr, &length, &end) == 0 && length == N &&
           end == hex.data() + hex.size();
}

std::string hexOf(const unsigned char* bytes, std::size_t size)
{
    std::string hex(size * 2 + 1, '\0');
    sodium_bin2hex(hex.data(), hex.size(), bytes, size);
    hex.pop_back();
    return hex;
}

tl::unexpected<Error> diskSays(const std::string& path)
{
    return unavailable("The device key at " + path + " could not be read or made: " + std::strerror(errno) + ".");
}

struct OpenFile {
    int fd = -1;
    ~OpenFile()
    {
        if (fd >= 0)
            ::close(fd);
    }
};

Result<DeviceKey> load(const std::string& path, int fd)
{
    struct stat about{};
    if (::fstat(fd, &about) != 0)
        return diskSays(path);
    if ((about.st_mode & 077U) != 0)
        return refused("The device key at " + path + " must be readable by its owner only (mode 0600); others can read it.");
    std::array<char, 80> text{};
    const ssize_t got = ::read(fd, text.data(), text.size());
    if (got < 0)
        return diskSays(path);
    std::array<unsigned char, 32> seed{};
    const std::string_view line(text.data(), static_cast<std::size_t>(got));
    const bool whole = line.size() == 65 && line[64] == '\n' && bytesOf(line.substr(0, 64), seed);
    sodium_memzero(text.data(), text.size());
    if (!whole)
        return refused("The device key at " + path + " must be one line of 64 hexadecimal digits; it is not.");
    DeviceKey key = DeviceKey::fromSeed(seed);
    sodium_memzero(seed.data(), seed.size());
    return key;
}

Result<void> make(const std::string& path)
{
    std::array<unsigned char, 32> seed{};
    randombytes_buf(seed.data(), seed.size());
    std::string line = hexOf(seed.data(), seed.size()) + "\n";
    const std::string fresh = path + "." + newSubject() + ".new";
    {
        OpenFile file{::open(fresh.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600)};
        const bool written = file.fd >= 0 &&
                             ::write(file.fd, line.data(), line.size()) == static_cast<ssize_t>(line.size()) &&
                             ::fsync(file.fd) == 0;
        sodium_memzero(line.data(), line.size());
        sodium_memzero(seed.data(), seed.size());
        if (!written) {
            const int why = errno;
            ::unlink(fresh.c_str());
            errno = why;
            return diskSays(path);
        }
    }
    // A hard link never replaces a key that another process made meanwhile; file systems without links get a rename.
    const bool linked = ::link(fresh.c_str(), path.c_str()) == 0 || errno == EEXIST;
    const bool there = linked || ::rename(fresh.c_str(), path.c_str()) == 0;
    const int why = errno;
    ::unlink(fresh.c_str());
    errno = why;
    if (!there)
        return diskSays(path);
    const auto slash = path.find_last_of('/');
    const std::string folder = slash == std::string::npos ? "." : path.substr(0, slash + 1);
    OpenFile parent{::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)};
    if (parent.fd >= 0)
        ::fsync(parent.fd);
    return {};
}

}  // namespace

DeviceKey::~DeviceKey()
{
    sodium_memzero(m_secret.data(), m_secret.size());
}

DeviceKey DeviceKey::fromSeed(const std::array<unsigned char, 32>& seed)
{
    sodiumReady();
    DeviceKey key;
    std::array<unsigned char, 32> open{};
    crypto_sign_seed_keypair(open.data(), key.m_secret.data(), seed.data());
    key.m_device = hexOf(open.data(), open.size());
    return key;
}

Result<DeviceKey> DeviceKey::loadOrMake(const std::string& path)
{
    if (!sodiumReady())
        return unavailable("The signing library did not start.");
    for (int attempt = 0; attempt < 2; ++attempt) {
        OpenFile file{::open(path.c_str(), O_RDONLY | O_CLOEXEC)};
        if (file.fd >= 0)
            return load(path, file.fd);
        if (errno != ENOENT)
            return diskSays(path);
        if (auto made = make(path); !made)
            return tl::unexpected(made.error());
    }
    return diskSays(path);
}

Result<std::string> DeviceKey::sign(std::string_view hashHex) const
{
    std::array<unsigned char, 32> hash{};
    if (m_device.empty() || !bytesOf(hashHex, hash))
        return refused("A signature needs a device key and a hash of 64 hexadecimal digits.");
    std::array<unsigned char, 64> signature{};
    crypto_sign_detached(signature.data(), nullptr, hash.data(), hash.size(), m_secret.data());
    return hexOf(signature.data(), signature.size());
}

bool signatureHolds(std::string_view device, std::string_view hashHex, std::string_view signatureHex)
{
    std::array<unsigned char, 32> open{};
    std::array<unsigned char, 32> hash{};
    std::array<unsigned char, 64> signature{};
    return sodiumReady() && bytesOf(device, open) && bytesOf(hashHex, hash) && bytesOf(signatureHex, signature) &&
           crypto_sign_verify_detached(signature.data(), hash.data(), hash.size(), open.data()) == 0;
}

std::string newSubject()
{
    sodiumReady();
    std::array<unsigned char, 16> bytes{};
    randombytes_buf(bytes.data(), bytes.size());
    bytes[6] = static_cast<unsigned char>((bytes[6] & 0x0FU) | 0x40U);
    bytes[8] = static_cast<unsigned char>((bytes[8] & 0x3FU) | 0x80U);
    std::string hex = hexOf(bytes.data(), bytes.size());
    for (const std::size_t at : {20U, 16U, 12U, 8U})
        hex.insert(at, 1, '-');
    return hex;
}

}  // namespace groundcount::book
