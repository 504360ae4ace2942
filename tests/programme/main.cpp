// Writes a generated programme of three contracts into a folder, with truth.json beside the books: programme FOLDER [TESTS].
#include "programme/contract.h"

#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <nlohmann/json.hpp>

int main(int argc, char** argv)
{
    if (argc < 2) {
        std::fprintf(stderr, "programme FOLDER [TESTS PER LIFT]\n");
        return 2;
    }
    const int perLift = argc > 2 ? std::atoi(argv[2]) : 83;
    nlohmann::json all = nlohmann::json::array();
    std::size_t tests = 0;
    for (int contract = 1; contract <= 3; ++contract) {
        const std::string name = "contract-" + std::to_string(contract) + ".fieldbook";
        const programme::Size size{contract == 1 ? 14 : 13, 6, perLift, 97};
        const auto truth = programme::writeContract(std::string(argv[1]) + "/" + name, contract, size, 20260600U + static_cast<unsigned>(contract));
        nlohmann::json one{{"book", name}, {"lots", truth.lots}, {"lifts", size.lifts}, {"tests_per_lift", size.testsPerLift}, {"begin", truth.begin}, {"lot_length", truth.lotLength},
                           {"half_width", truth.halfWidth}, {"north0", truth.north0}, {"east0", truth.east0}, {"minimum", truth.minimum}, {"tests", nlohmann::json::array()}, {"planted", nlohmann::json::array()}};
        for (const auto& t : truth.tests)
            one["tests"].push_back({{"number", t.number}, {"lot", t.lot}, {"lift", t.lift}, {"random", t.isRandom}, {"retest_of", t.retestOf}, {"result", t.result}, {"percent", t.percent}, {"north", t.north}, {"east", t.east}});
        for (const auto& p : truth.planted)
            one["planted"].push_back({p.number, groundcount::book::word(p.kind)});
        tests += truth.tests.size();
        all.push_back(std::move(one));
    }
    std::ofstream(std::string(argv[1]) + "/truth.json") << all.dump();
    std::printf("%zu tests in 3 contracts\n", tests);
    return 0;
}
