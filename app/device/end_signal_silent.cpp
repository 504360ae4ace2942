#include "device/end_signal.h"

// For a system without D-Bus: the page shows the end of the count, nothing sounds.
namespace groundcount::device {

void EndSignal::give(const QString&)
{
    emit given({});
}

}  // namespace groundcount::device
