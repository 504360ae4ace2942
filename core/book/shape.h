#pragma once

#include "method/error.h"

#include <nlohmann/json.hpp>
#include <span>
#include <string>

/// The form of a body as data: which keys, what may stand in them. Keys that no shape names are left alone.
namespace groundcount::book {

enum class Form {
    Text,            ///< text that is not empty
    AnyText,         ///< text, may be empty
    Subject,         ///< UUID
    Hash,            ///< record hash or content hash
    Number,          ///< decimal number as text
    NumberAboveZero,
    NumberFromZero,
    Whole,           ///< JSON whole number
    WholeAboveZero,
    WholeFromZero,
    Flag,            ///< true or false
    Date,            ///< YYYY-MM-DD
    Choice,          ///< one of `choices`
    Object,          ///< an object of the shape `inner`
    Objects,         ///< a list of such objects
    Texts,           ///< a list of texts
    Hashes,          ///< a list of record hashes
    Numbers          ///< a list of decimal numbers as text
};

enum class Need { Must, May };

/// What unit stands at the end of the key; exactly one key of the family may be in the body.
enum class Unit {
    None,
    Density,        ///< _lb_ft3, _kg_m3
    PerDensity,     ///< _per_lb_ft3, _per_kg_m3
    Length,         ///< _ft, _usft, _m, _in, _mm
    Mass            ///< _g, _lb
};

struct Key {
    const char* name;
    Form form;
    Need need = Need::Must;
    Unit unit = Unit::None;
    std::span<const char* const> choices = {};
    std::span<const Key> inner = {};
};

/// Checks an object against a shape.
/// @param where how the sentence begins, for example "reading: "
/// @error Refused: "reading: density_count must be a whole number above 0; it is \"0\"."
Result<void> checkShape(const nlohmann::json& object, std::span<const Key> shape, const std::string& where);

/// The endings of a unit family, longest list five.
std::span<const char* const> endings(Unit unit);

/// `value` as it stands in a sentence: canonical JSON, cut at 60 bytes.
std::string shown(const nlohmann::json& value);

}  // namespace groundcount::book
