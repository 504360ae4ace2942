#pragma once

#include "runner.h"

#include <vector>

namespace groundcount::tables {

std::vector<Topic> gaugeTopics();
std::vector<Topic> offsetTopics();
std::vector<Topic> standardCountTopics();
std::vector<Topic> soilTopics();
std::vector<Topic> laboratoryTopics();
std::vector<Topic> referenceTopics();
std::vector<Topic> roundingTopics();
std::vector<Topic> uncertaintyTopics();
std::vector<Topic> siteTopics();
std::vector<Topic> acceptTopics();
std::vector<Topic> geodesyTopics();

/// Every list of topics; a new topics_*.cpp adds its declaration above and its name here.
inline std::vector<Topic> allTopics()
{
    std::vector<Topic> all;
    for (const auto list : {gaugeTopics, offsetTopics, standardCountTopics, soilTopics, laboratoryTopics, referenceTopics, roundingTopics, uncertaintyTopics, siteTopics, acceptTopics, geodesyTopics})
        for (auto& topic : list())
            all.push_back(std::move(topic));
    return all;
}

}  // namespace groundcount::tables
