#pragma once

#include <QString>

namespace groundcount::view {

/// The key of a draft's field that there are several of: "w" and 3 give "w3".
inline QString numberedKey(const char* what, int number)
{
    return QLatin1String(what) + QString::number(number);
}

}  // namespace groundcount::view
