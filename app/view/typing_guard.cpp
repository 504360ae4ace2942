#include "view/typing_guard.h"

#include <QCoreApplication>

namespace groundcount::view {
namespace {

QString digitsOf(QString text)
{
    return text.remove('.');
}

bool isNeighbourSwap(const QString& a, const QString& b)
{
    if (a.size() != b.size())
        return false;
    qsizetype at = 0;
    while (at < a.size() && a[at] == b[at])
        ++at;
    return at + 1 < a.size() && a[at] == b[at + 1] && a[at + 1] == b[at] && a.mid(at + 2) == b.mid(at + 2);
}

}  // namespace

QString likelySlip(const QString& typed, const QString& last)
{
    if (typed.isEmpty() || last.isEmpty() || typed == last)
        return {};
    // First the point: it also looks like two neighbours that have changed places.
    if (digitsOf(typed) == digitsOf(last) && typed.toDouble() != last.toDouble())
        return QCoreApplication::translate("groundcount::view::TypingGuard", "The decimal point may be off: last time it was %1.").arg(last);
    if (isNeighbourSwap(typed, last))
        return QCoreApplication::translate("groundcount::view::TypingGuard", "Two digits may be swapped: last time it was %1.").arg(last);
    return {};
}

}  // namespace groundcount::view
