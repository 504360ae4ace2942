#pragma once

#include "book/review.h"
#include "book/store.h"

#include <cstdint>
#include <random>
#include <string>
#include <vector>

/// A generated contract with known truth: lots of lifts along one line, random tests with their retests, and planted faults of
/// every unusual kind. Names and figures are invented; the same seed gives the same contract.
namespace programme {

struct Size {
    int lots = 1, lifts = 1, testsPerLift = 10;
    int faultEvery = 60;  ///< one planted fault in so many tests; 0 = none
};

/// What was written of one test.
struct Test {
    std::string number, lot, retestOf /* number */, result, person, gauge;
    int lift = 0;
    bool isRandom = true;
    double north = 0, east = 0, percent = 0, moisture = 0;
};

struct Planted {
    std::string number;
    groundcount::book::Unusual kind;
};

struct Truth {
    std::vector<std::string> lots;
    Size size;
    double begin = 0, lotLength = 0, halfWidth = 0, north0 = 0, east0 = 0;  ///< the line runs north; US survey feet
    double minimum = 0, optimum = 0;
    std::vector<Test> tests;
    std::vector<Planted> planted;
};

/// Writes a contract into a new field book. @param number of the contract, in its names @return what is true of it
Truth writeContract(const std::string& path, int number, const Size& size, std::uint64_t seed);

}  // namespace programme
