#pragma once

#include <QtQml/qqmlregistration.h>

#include <QObject>

/// The states a thing on a screen can be in: what view-models say and the parts draw, each by its own shape and word.
/// In QML: Mark.Pass. In C++: groundcount::view::Mark::Pass.
namespace groundcount::view::marks {
Q_NAMESPACE
QML_NAMED_ELEMENT(Mark)

/// Nothing: no symbol. Clear, TooClose and CannotTell answer a clearance; the others are states of a test or a site.
/// Here is the place of the test being made.
enum class Mark { Nothing, Pass, Fail, Waiting, InformationOnly, Void, Owed, Clear, TooClose, CannotTell, Here };
Q_ENUM_NS(Mark)

} // namespace groundcount::view::marks

namespace groundcount::view {
using marks::Mark;
}
