#include "topics.h"

namespace groundcount::tables {

std::vector<Topic> roundingTopics()
{
    return {};
}

}  // namespace groundcount::tables
