#include "book/shape.h"

#include "book/canonical.h"
#include "book/seal.h"
#include "method/decimal.h"

namespace groundcount::book {

namespace {

using Json = nlohmann::json;

const std::string* textOf(const Json& value)
{
    return value.get_ptr<const std::string*>();
}

bool isNumber(const Json& value, double lowest, bool lowestAllowed)
{
    if (!value.is_string())
        return false;
    const auto number = Decimal::parse(*textOf(value));
    return number && (number->value() > lowest || (lowestAllowed && number->value() == lowest));
}

bool isWhole(const Json& value, std::int64_t lowest)
{
    if (!value.is_number_integer())
        return false;
    if (value.is_number_unsigned())
        return *value.get_ptr<const std::uint64_t*>() <= static_cast<std::uint64_t>(kLargestWhole) &&
               static_cast<std::int64_t>(*value.get_ptr<const std::uint64_t*>()) >= lowest;
    const auto whole = *value.get_ptr<const std::int64_t*>();
    return whole >= lowest && whole >= -kLargestWhole && whole <= kLargestWhole;
}

template <class Check>
bool all(const Json& value, Check check)
{
    if (!value.is_array())
        return false;
    for (const Json& one : value)
        if (!check(one))
            return false;
    return true;
}

bool holds(const Json& value, const Key& key)
{
    constexpr double kAnything = -1e300;
    switch (key.form) {
    case Form::Text: return value.is_string() && !textOf(value)->empty();
    case Form::AnyText: return value.is_string();
    case Form::Subject: return value.is_string() && isSubject(*textOf(value));
    case Form::Hash: return value.is_string() && isHash(*textOf(value));
    case Form::Number: return isNumber(value, kAnything, true);
    case Form::NumberAboveZero: return isNumber(value, 0, false);
    case Form::NumberFromZero: return isNumber(value, 0, true);
    case Form::Whole: return isWhole(value, -kLargestWhole);
    case Form::WholeAboveZero: return isWhole(value, 1);
    case Form::WholeFromZero: return isWhole(value, 0);
    case Form::Flag: return value.is_boolean();
    case Form::Date: return value.is_string() && isDate(*textOf(value));
    case Form::Choice:
        if (value.is_string())
            for (const char* choice : key.choices)
                if (*textOf(value) == choice)
                    return true;
        return false;
    case Form::Object: return value.is_object();
    case Form::Objects: return all(value, [](const Json& v) { return v.is_object(); });
    case Form::Texts: return all(value, [](const Json& v) { return v.is_string(); });
    case Form::Hashes: return all(value, [](const Json& v) { return v.is_string() && isHash(*textOf(v)); });
    case Form::Numbers: return all(value, [](const Json& v) { return isNumber(v, kAnything, true); });
    }
    return false;
}

std::string allowed(const Key& key)
{
    switch (key.form) {
    case Form::Text: return "text that is not empty";
    case Form::AnyText: return "text";
    case Form::Subject: return "a UUID in lower case";
    case Form::Hash: return "a hash of 64 hexadecimal digits";
    case Form::Number: return "a decimal number as text";
    case Form::NumberAboveZero: return "a decimal number above 0 as text";
    case Form::NumberFromZero: return "a decimal number of 0 or more as text";
    case Form::Whole: return "a whole number";
    case Form::WholeAboveZero: return "a whole number above 0";
    case Form::WholeFromZero: return "a whole number of 0 or more";
    case Form::Flag: return "true or false";
    case Form::Date: return "a date YYYY-MM-DD";
    case Form::Object: return "an object";
    case Form::Objects: return "a list of objects";
    case Form::Texts: return "a list of texts";
    case Form::Hashes: return "a list of hashes of 64 hexadecimal digits";
    case Form::Numbers: return "a list of decimal numbers as text";
    case Form::Choice: break;
    }
    std::string words = "one of";
    for (std::size_t i = 0; i < key.choices.size(); ++i)
        words += std::string(i == 0 ? " \"" : ", \"") + key.choices[i] + "\"";
    return words;
}

std::string namesOf(const Key& key)
{
    std::string names;
    for (const char* ending : endings(key.unit))
        names += (names.empty() ? "" : ", ") + std::string(key.name) + ending;
    return names;
}

Result<void> checkValue(const Json& value, const std::string& name, const Key& key, const std::string& where)
{
    if (!holds(value, key))
        return refused(where + name + " must be " + allowed(key) + "; it is " + shown(value) + ".");
    if (key.form == Form::Object && !key.inner.empty())
        return checkShape(value, key.inner, where + name + ".");
    if (key.form == Form::Objects)
        for (std::size_t i = 0; i < value.size(); ++i)
            if (auto inner = checkShape(value[i], key.inner, where + name + "[" + std::to_string(i) + "]."); !inner)
                return inner;
    return {};
}

}  // namespace

std::span<const char* const> endings(Unit unit)
{
    static constexpr const char* kNone[] = {""};
    static constexpr const char* kDensity[] = {"_lb_ft3", "_kg_m3"};
    static constexpr const char* kPerDensity[] = {"_per_lb_ft3", "_per_kg_m3"};
    static constexpr const char* kLength[] = {"_ft", "_usft", "_m", "_in", "_mm"};
    static constexpr const char* kMass[] = {"_g", "_lb"};
    switch (unit) {
    case Unit::None: return kNone;
    case Unit::Density: return kDensity;
    case Unit::PerDensity: return kPerDensity;
    case Unit::Length: return kLength;
    case Unit::Mass: return kMass;
    }
    return kNone;
}

std::string shown(const nlohmann::json& value)
{
    const auto text = canonicalText(value);
    if (!text)
        return "something that JSON cannot hold";
    if (text->size() <= 60)
        return *text;
    std::size_t end = 57;
    while (end > 0 && (static_cast<unsigned char>((*text)[end]) & 0xC0U) == 0x80U)
        --end;  // never cut inside a UTF-8 character
    return text->substr(0, end) + "...";
}

Result<void> checkShape(const nlohmann::json& object, std::span<const Key> shape, const std::string& where)
{
    for (const Key& key : shape) {
        const Json* found = nullptr;
        std::string foundName;
        for (const char* ending : endings(key.unit)) {
            const std::string name = std::string(key.name) + ending;
            const auto it = object.find(name);
            if (it == object.end())
                continue;
            if (found)
                return refused(where + "only one of " + namesOf(key) + " may stand; " + foundName + " and " + name +
                               " both do.");
            found = &*it;
            foundName = name;
        }
        if (!found) {
            if (key.need == Need::May)
                continue;
            return refused(where + (key.unit == Unit::None ? key.name : "one of " + namesOf(key)) + " must be " +
                           allowed(key) + "; it is missing.");
        }
        if (auto value = checkValue(*found, foundName, key, where); !value)
            return value;
    }
    return {};
}

}  // namespace groundcount::book
