#pragma once

#include <cstdint>
#include <random>
#include <string_view>

namespace groundcount::method {

/// Numbers from 0 (included) to 1 (not included) that anyone can draw again from the recorded seed.
///
/// Generator: mt19937_64 of the C++ standard (the same numbers on every machine; its 10 000th from the default seed is
/// stated there); u = (x >> 11) / 2^53, the upper 53 bits, exact in a double. The seed is passed in, never taken here.
/// @source [DESIGN]; generator: ISO C++ [rand.predef]
class RandomSource {
public:
    /// Name sealed with a draw.
    static constexpr std::string_view kName = "mt19937_64, upper 53 bits";

    explicit RandomSource(std::uint64_t seed) : m_engine(seed) {}

    double next() { return static_cast<double>(m_engine() >> 11) * 0x1p-53; }

private:
    std::mt19937_64 m_engine;
};

}  // namespace groundcount::method
