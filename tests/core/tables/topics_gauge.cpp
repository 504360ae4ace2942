#include "topics.h"

namespace groundcount::tables {

std::vector<Topic> gaugeTopics()
{
    return {};
}

}  // namespace groundcount::tables
