#include "topics.h"

namespace groundcount::tables {

std::vector<Topic> soilTopics()
{
    return {};
}

}  // namespace groundcount::tables
