#pragma once

#include "book/record.h"
#include "command/scenario.h"
#include "gis/crs.h"
#include "method/rules/rule_set.h"
#include "method/site/alignment.h"

#include <map>
#include <optional>

namespace groundcount::command {

/// Turns the typed entries of a scenario into entries to seal: names into subjects, labels into hashes, and what core
/// knows better than a person (places, acceptance of standard counts, answers of clearances) into figures.
class Filler {
public:
    explicit Filler(Scenario scenario) : m_scenario(std::move(scenario)) {}

    const Scenario& scenario() const { return m_scenario; }
    /// The entry at `index`, ready to be sealed; its body is empty for a verdict, which the book computes.
    /// @error Refused or Unavailable, naming the entry.
    Result<book::Entry> entryAt(std::size_t index);
    /// Tells the filler what was sealed for the entry at `index`.
    /// @error Refused when a rule set, coordinate system or alignment cannot be used.
    Result<void> sealed(std::size_t index, const book::Record& record);

private:
    struct Accepted {
        std::string density, moisture;
    };
    Result<void> resolve(nlohmann::json& value);
    Result<void> readRules(nlohmann::json& body) const;
    Result<void> place(nlohmann::json& object, bool geographic) const;
    Result<void> places(const std::string& kind, nlohmann::json& body) const;
    Result<void> judgeStandard(nlohmann::json& body) const;
    Result<void> judgeHazards(nlohmann::json& body) const;
    Result<void> fill(const std::string& kind, nlohmann::json& body);

    Scenario m_scenario;
    std::map<std::string, std::string, std::less<>> m_hashes;  ///< by label
    std::optional<method::RuleSet> m_rules;
    std::string m_rulesHash;
    std::optional<method::Alignment> m_line;
    std::optional<gis::Crs> m_crs;
    std::string m_gridUnit;  ///< ending of grid keys, "usft"
    std::map<std::string, std::vector<Accepted>, std::less<>> m_accepted;  ///< by gauge, oldest first
};

}  // namespace groundcount::command
