#include "method/rules/rule_set.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace groundcount::method {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::pair<std::string_view, LimitKind> kKinds[] = {{"minimum", LimitKind::Minimum},
                                                            {"maximum", LimitKind::Maximum},
                                                            {"percent", LimitKind::Percent},
                                                            {"z score", LimitKind::ZScore},
                                                            {"value", LimitKind::Value}};
constexpr std::pair<std::string_view, Mark> kMarks[] = {
    {"seen", Mark::Seen}, {"second-hand", Mark::SecondHand}, {"memory", Mark::Memory}, {"own", Mark::Own}};

template <class Value, std::size_t N>
const Value* find(const std::pair<std::string_view, Value> (&table)[N], std::string_view word)
{
    const auto* at = std::find_if(std::begin(table), std::end(table), [&](const auto& e) { return e.first == word; });
    return at == std::end(table) ? nullptr : &at->second;
}

template <class Value, std::size_t N>
std::string wordOf(const std::pair<std::string_view, Value> (&table)[N], Value value)
{
    const auto* at = std::find_if(std::begin(table), std::end(table), [&](const auto& e) { return e.second == value; });
    return std::string(at->first);
}

bool isOneOf(std::string_view word, std::string_view allowed)
{
    while (!allowed.empty()) {
        const auto bar = allowed.find('|');
        if (allowed.substr(0, bar) == word)
            return true;
        allowed.remove_prefix(bar == std::string_view::npos ? allowed.size() : bar + 1);
    }
    return false;
}

std::string listed(std::string_view allowed)
{
    std::string s;
    for (const char c : allowed)
        s += c == '|' ? std::string(", ") : std::string(1, c);
    return s;
}

Result<std::string> text(const Json& object, const char* key, const std::string& where)
{
    const auto at = object.find(key);
    if (at == object.end() || !at->is_string())
        return refused("Rule set: " + where + " needs the text \"" + key + "\".");
    return at->get<std::string>();
}

Result<void> onlyKeys(const Json& object, std::initializer_list<std::string_view> allowed, const std::string& where)
{
    for (const auto& [key, value] : object.items()) {
        if (std::find(allowed.begin(), allowed.end(), key) == allowed.end())
            return refused("Rule set: " + where + " has the unknown key \"" + key + "\".");
    }
    return {};
}

Result<Limit> readLimit(const Json& object, const RuleKey& key)
{
    const std::string where = "limit \"" + std::string(key.key) + "\"";
    if (!object.is_object())
        return refused("Rule set: " + where + " must be an object.");
    if (auto ok = onlyKeys(object, {"value", "unit", "kind", "inclusive", "source", "mark", "note", "verified"}, where); !ok)
        return tl::unexpected(ok.error());
    Limit limit;
    const auto value = text(object, "value", where).and_then([](const std::string& t) { return Decimal::parse(t); });
    if (!value)
        return refused("Rule set: " + where + ": value must be a decimal as text. " + value.error().what);
    if (*value < Decimal())
        return refused("Rule set: " + where + ": value is " + value->text() + "; it must be 0 or more.");
    limit.value = *value;
    const auto unit = text(object, "unit", where);
    if (!unit)
        return tl::unexpected(unit.error());
    if (!isOneOf(*unit, key.allowed))
        return refused("Rule set: " + where + ": unit is \"" + *unit + "\"; allowed: " + listed(key.allowed) + ".");
    limit.unit = *unit;
    const auto kind = text(object, "kind", where);
    if (!kind || !find(kKinds, *kind))
        return refused("Rule set: " + where + ": kind must be minimum, maximum, percent, z score or value.");
    limit.kind = *find(kKinds, *kind);
    const auto inclusive = object.find("inclusive");
    if (inclusive == object.end() || !inclusive->is_boolean())
        return refused("Rule set: " + where + ": inclusive must be true or false.");
    limit.inclusive = inclusive->get<bool>();
    const auto source = text(object, "source", where);
    const auto mark = text(object, "mark", where);
    if (!source)
        return tl::unexpected(source.error());
    if (!mark || !find(kMarks, *mark))
        return refused("Rule set: " + where + ": mark must be seen, second-hand, memory or own.");
    limit.source = *source;
    limit.mark = *find(kMarks, *mark);
    limit.note = object.contains("note") && object["note"].is_string() ? object["note"].get<std::string>() : "";
    limit.verified = object.contains("verified") && object["verified"].is_string() ? object["verified"].get<std::string>() : "";
    return limit;
}

Result<Choice> readChoice(const Json& object, const RuleKey& key)
{
    const std::string where = "choice \"" + std::string(key.key) + "\"";
    if (!object.is_object())
        return refused("Rule set: " + where + " must be an object.");
    if (auto ok = onlyKeys(object, {"word", "source", "mark", "note"}, where); !ok)
        return tl::unexpected(ok.error());
    const auto word = text(object, "word", where);
    const auto source = text(object, "source", where);
    const auto mark = text(object, "mark", where);
    if (!word)
        return tl::unexpected(word.error());
    if (!isOneOf(*word, key.allowed))
        return refused("Rule set: " + where + " is \"" + *word + "\"; allowed: " + listed(key.allowed) + ".");
    if (!source)
        return tl::unexpected(source.error());
    if (!mark || !find(kMarks, *mark))
        return refused("Rule set: " + where + ": mark must be seen, second-hand, memory or own.");
    return Choice{*word, *source, *find(kMarks, *mark),
                  object.contains("note") && object["note"].is_string() ? object["note"].get<std::string>() : ""};
}

const RuleKey* keyNamed(const std::vector<RuleKey>& keys, std::string_view name)
{
    const auto key = std::find_if(keys.begin(), keys.end(), [&](const RuleKey& k) { return k.key == name; });
    return key == keys.end() ? nullptr : &*key;
}

template <class Value, class Read>
Result<void> readAll(const Json& root, const char* section, const std::vector<RuleKey>& keys, const std::vector<RuleKey>& optional,
                     std::map<std::string, Value, std::less<>>& into, Read read)
{
    const auto at = root.find(section);
    if (at == root.end() || !at->is_object())
        return refused(std::string("Rule set: the object \"") + section + "\" is missing.");
    for (const auto& [name, value] : at->items()) {
        const RuleKey* key = keyNamed(keys, name);
        if (!key)
            key = keyNamed(optional, name);
        if (!key)
            return refused(std::string("Rule set: \"") + name + "\" under \"" + section + "\" is not a key of this program.");
        auto one = read(value, *key);
        if (!one)
            return tl::unexpected(one.error());
        into.emplace(name, std::move(*one));
    }
    for (const auto& key : keys) {
        if (!into.contains(key.key))
            return refused(std::string("Rule set: \"") + std::string(key.key) + "\" is missing under \"" + section + "\" (" +
                           std::string(key.meaning) + ").");
    }
    return {};
}

}  // namespace

Result<RuleSet> ruleSetFromJson(std::string_view source)
{
    const Json root = Json::parse(source, nullptr, false);
    if (!root.is_object())
        return refused("Rule set: the text is not a JSON object.");
    if (auto ok = onlyKeys(root, {"name", "revision", "density_unit", "note", "limits", "choices"}, "the rule set"); !ok)
        return tl::unexpected(ok.error());
    RuleSet rules;
    for (auto [key, into] : {std::pair{"name", &rules.name}, {"revision", &rules.revision}, {"density_unit", &rules.densityUnit}}) {
        auto value = text(root, key, "the rule set");
        if (!value)
            return tl::unexpected(value.error());
        *into = *value;
    }
    if (rules.densityUnit != "lb/ft3" && rules.densityUnit != "kg/m3")
        return refused("Rule set: density_unit is \"" + rules.densityUnit + "\"; allowed: lb/ft3, kg/m3.");
    rules.note = root.contains("note") && root["note"].is_string() ? root["note"].get<std::string>() : "";
    if (auto ok = readAll(root, "limits", limitKeys(), optionalLimitKeys(), rules.limits, readLimit); !ok)
        return tl::unexpected(ok.error());
    if (auto ok = readAll(root, "choices", choiceKeys(), {}, rules.choices, readChoice); !ok)
        return tl::unexpected(ok.error());
    return rules;
}

std::string toJson(const RuleSet& rules)
{
    Json root{{"name", rules.name}, {"revision", rules.revision}, {"density_unit", rules.densityUnit}, {"note", rules.note}};
    std::vector<RuleKey> written = limitKeys();
    for (const auto& key : optionalLimitKeys()) {
        if (rules.limits.contains(key.key))
            written.push_back(key);
    }
    for (const auto& key : written) {
        const Limit& l = rules.limits.find(key.key)->second;
        Json one{{"value", l.value.text()}, {"unit", l.unit},     {"kind", wordOf(kKinds, l.kind)}, {"inclusive", l.inclusive},
                 {"source", l.source},      {"mark", wordOf(kMarks, l.mark)}, {"note", l.note}};
        if (!l.verified.empty())
            one["verified"] = l.verified;
        root["limits"][std::string(key.key)] = std::move(one);
    }
    for (const auto& key : choiceKeys()) {
        const Choice& c = rules.choices.find(key.key)->second;
        root["choices"][std::string(key.key)] = {{"word", c.word}, {"source", c.source}, {"mark", wordOf(kMarks, c.mark)}, {"note", c.note}};
    }
    return root.dump(2);
}

}  // namespace groundcount::method
