#include "topics.h"

namespace groundcount::tables {

std::vector<Topic> uncertaintyTopics()
{
    return {};
}

}  // namespace groundcount::tables
