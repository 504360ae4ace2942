#pragma once

#include "book/record.h"
#include "book/shape.h"
#include "method/error.h"

#include <span>
#include <string_view>

/// The kinds of records and the form of their bodies: docs/record-format.md, "Kinds", as data.
namespace groundcount::book {

struct KindShape {
    const char* kind;
    std::span<const Key> keys;
    Result<void> (*across)(const Body&) = nullptr;  ///< rules between keys
};

std::span<const KindShape> setupKinds();   ///< job, crs, rule-set, person, gauge and its papers
std::span<const KindShape> groundKinds();  ///< material, proctor, offset, alignment, lot, lift, draw, obstacle
std::span<const KindShape> testKinds();    ///< test-site to verdict, review, photo, note, void

/// The shape of a kind, or nullptr for a kind that this program does not know.
const KindShape* kindShape(std::string_view kind);

/// Checks a body against the form of its kind. Unknown keys are left alone; an unknown kind passes.
/// @error Refused, naming kind and key: "reading: density_count must be a whole number above 0; it is \"0\"."
Result<void> checkBody(std::string_view kind, const Body& body);

/// Text of a body's key, "" when it is missing or no text.
std::string textAt(const Body& body, const std::string& key);

/// The value and the key's unit ending of the one key `stem` + ending that stands in the body; empty when none does.
struct WithUnit {
    std::string text;
    std::string unit;  ///< "lb_ft3", "kg_m3", "ft", "usft", "m", "in", "mm", "g", "lb", ...
};
WithUnit withUnit(const Body& body, const std::string& stem, Unit family);

}  // namespace groundcount::book
