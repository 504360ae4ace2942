#pragma once

#include "book/state.h"
#include "gis/layer.h"

#include <functional>
#include <span>

namespace groundcount::gis {

using TestSink = std::function<Result<void>(const book::TestRow&)>;
/// Gives every test in the order of their numbers, runs of digits by value; ends with the first error.
using EachTest = std::function<Result<void>(const TestSink&)>;

/// The tests by number. @param tests must outlive the result
EachTest inNumberOrder(std::span<const book::TestRow> tests);

/// The layer `density_test`; its columns are in docs/geopackage-layers.md. A test without a position is a row without a shape.
/// @param job its density unit gives the ending of the density columns: "lb/ft3" `_lb_ft3`, "kg/m3" `_kg_m3`
/// @error Refused: another density unit.
Result<Layer> testLayer(const book::JobRow& job, const EachTest& tests, const ExportOptions& options);

/// Whether the test's grid coordinates are known: finite and not both exactly 0.
bool hasPosition(const book::TestRow& test);

}  // namespace groundcount::gis
