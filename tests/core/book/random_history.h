#pragma once

#include "core/book/sample_book.h"

#include <random>
#include <tuple>

namespace sample {

/// A random lawful history: sets of tests, amendments, conflicts, voids, late samples, retests, on three devices.
inline std::vector<std::vector<Record>> randomHistory(const Bench& bench, unsigned seed, int steps)
{
    std::mt19937 random(seed);
    const auto pick = [&](int below) { return static_cast<int>(random() % static_cast<unsigned>(below)); };
    std::vector<Store> devices;
    for (unsigned char d = 0; d < 3; ++d)
        devices.push_back(bench.make(("h" + std::to_string(seed) + "-" + std::to_string(d) + ".fieldbook").c_str(), static_cast<unsigned char>(d + 1)));
    std::ignore = devices[0].sealAll(setup());
    std::ignore = devices[1].mergeFrom(devices[0]);
    std::ignore = devices[2].mergeFrom(devices[0]);
    for (int step = 0; step < steps; ++step) {
        Store& device = devices[static_cast<std::size_t>(pick(3))];
        const int second = pick(4000);  // clocks are set back and forth
        const int subject = 100 + pick(6);
        const auto all = device.records({}).value();
        switch (pick(9)) {
        case 0: std::ignore = device.seal(entry("test-site", subject, siteBody(std::to_string(subject)), second)); break;
        case 1: std::ignore = device.seal(entry("reading", subject, readoutBody(), second)); break;
        case 2: std::ignore = device.seal(entry("sample", subject, {{"waiting", pick(2) ? "oven" : ""}}, second)); break;
        case 3: std::ignore = device.seal(entry("verdict", subject, verdictBody(pick(2) ? "pass" : "provisional", all[0].hash), second)); break;
        case 4:
        case 5: {
            const Record& target = all[static_cast<std::size_t>(pick(static_cast<int>(all.size())))];
            Body body = target.body;
            body["remark"] = second;
            if (target.kind != "void")
                std::ignore = device.seal(amend(target, body, second));
            break;
        }
        case 6: {
            Entry e = entry("void", subject, Body::object(), second);
            e.reason = "wrong lift";
            if (pick(4) == 0)
                std::ignore = device.seal(e);
            break;
        }
        case 7: std::ignore = device.mergeFrom(devices[static_cast<std::size_t>(pick(3))]); break;
        case 8: {
            Body body = siteBody(std::to_string(subject) + "A");
            body["purpose"] = "retest";
            body["retest_of"] = id(subject);
            std::ignore = device.seal(entry("test-site", subject + 50, body, second));
            break;
        }
        }
    }
    std::vector<std::vector<Record>> histories;
    for (Store& device : devices)
        histories.push_back(device.records({}).value());
    return histories;
}

}  // namespace sample
