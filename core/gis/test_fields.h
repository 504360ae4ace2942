#pragma once

#include "book/state.h"
#include "gis/instant.h"
#include "gis/test_layer.h"
#include "method/error.h"

#include <string>
#include <variant>
#include <vector>

namespace groundcount::gis {

enum class FieldForm { Text, Real, Whole, Instant };
/// Which closed list of words a text column keeps to.
enum class FieldWords { Any, States, Purposes };

/// A text of the record that is not what its column holds.
struct Unreadable {
    std::string text;
};

/// monostate = NULL.
using FieldValue = std::variant<std::monostate, std::string, double, int, Instant, Unreadable>;

/// One column of the layer `density_test`.
struct TestField {
    std::string name;   ///< with the unit at its end
    const char* title;  ///< for a person, without unit
    const char* what;   ///< one sentence
    FieldForm form;
    FieldWords words;
    FieldValue (*value)(const book::TestRow&, const ExportOptions&);
};

/// The columns in their order.
/// @param job its density unit gives the ending of the density columns: "lb/ft3" `_lb_ft3`, "kg/m3" `_kg_m3`
/// @error Refused: another density unit.
Result<std::vector<TestField>> testFields(const book::JobRow& job);

/// All the words of a closed list, in the order of the enum; empty for FieldWords::Any.
std::vector<std::string> wordsOf(FieldWords words);

}  // namespace groundcount::gis
