#pragma once

#include "method/decimal.h"
#include "method/error.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace groundcount::method {

/// How strong the evidence for a value is. A value marked Memory is confirmed before it ships under an agency's name.
enum class Mark { Seen, SecondHand, Memory, Own };

/// What a limit's value means.
enum class LimitKind {
    Minimum,  ///< the judged figure is at least the value
    Maximum,  ///< the judged figure is at most the value
    Percent,  ///< a percentage of a base figure, not to be exceeded
    ZScore,   ///< a number of standard deviations, not to be exceeded
    Value     ///< a constant of the method, nothing is compared with it
};

/// One number of a specification, as data: value, unit, kind, inclusive or not, where it comes from and who verified it.
struct Limit {
    Decimal value;
    std::string unit;
    LimitKind kind = LimitKind::Value;
    bool inclusive = true;
    std::string source;    ///< KEY of docs/sources.md
    Mark mark = Mark::Memory;
    std::string note;
    std::string verified;  ///< by whom and when; empty for every Memory value
};

/// A setting that is a word rather than a number, with its source.
struct Choice {
    std::string word;
    std::string source;
    Mark mark = Mark::Memory;
    std::string note;
};

/// A named set of limits and choices in one governing unit system; printed metric/US pairs are nominal and never converted.
/// @source [T355-Q] for the nominal pairs
struct RuleSet {
    std::string name;
    std::string revision;
    std::string densityUnit;  ///< "lb/ft3" or "kg/m3"
    std::string note;
    std::map<std::string, Limit, std::less<>> limits;
    std::map<std::string, Choice, std::less<>> choices;
};

/// A key that every rule set must have, with the unit or the words that it may have.
struct RuleKey {
    std::string_view key;
    std::string_view meaning;
    std::string_view allowed;  ///< units or words, separated by "|"
};

/// Every limit key that the core reads, in the order in which pages list them.
const std::vector<RuleKey>& limitKeys();
/// Limit keys that a rule set may leave out: those of a rule for standard counts that its choice "standard.rule" does not name.
const std::vector<RuleKey>& optionalLimitKeys();
/// Every choice key that the core reads.
const std::vector<RuleKey>& choiceKeys();

/// Reads a rule set from JSON text and checks that every key the core needs is there, with a unit or word it knows.
/// Unknown keys are kept out of the result and refused, since a misspelt limit would silently not apply.
/// @error Refused, naming the key, its value and what is allowed.
Result<RuleSet> ruleSetFromJson(std::string_view text);

/// The same for a rule set that was sealed by this or an earlier version: a key that came after it was sealed is taken from
/// neutralRules(), with the neutral rules' source and mark and the note "added after this rule set was sealed".
/// Only keys of `laterKeys()`; every other missing key is refused as above. A rule set that a person writes is never filled.
Result<RuleSet> ruleSetFromSealed(std::string_view text);
/// Keys of limits and choices that came after the first version.
const std::vector<std::string_view>& laterKeys();

/// JSON text of a rule set, the form that ruleSetFromJson reads.
std::string toJson(const RuleSet& rules);

/// The neutral default that ships with the program: common practice and open sources only, every Memory value marked so.
const RuleSet& neutralRules();

}  // namespace groundcount::method
