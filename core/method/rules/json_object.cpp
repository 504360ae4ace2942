#include "method/rules/json_object.h"

#include <algorithm>

namespace groundcount::method {
namespace {

const nlohmann::json kEmpty = nlohmann::json::object();

}  // namespace

JsonObject::JsonObject(const nlohmann::json& json, std::string name, std::optional<Error>& firstError)
    : m_json(json.is_object() ? &json : &kEmpty), m_name(std::move(name)), m_error(&firstError)
{
    if (!json.is_object())
        refuse("must be a JSON object");
}

bool JsonObject::has(const char* key) const
{
    return m_json->contains(key);
}

void JsonObject::only(std::initializer_list<std::string_view> keys)
{
    for (const auto& [key, value] : m_json->items()) {
        if (std::find(keys.begin(), keys.end(), key) == keys.end())
            refuse("has the unknown key \"" + key + "\"");
    }
}

std::string JsonObject::text(const char* key)
{
    if (!has(key) || !(*m_json)[key].is_string()) {
        refuse(std::string("needs the text \"") + key + "\"");
        return {};
    }
    return (*m_json)[key].get<std::string>();
}

std::string JsonObject::textOr(const char* key, std::string otherwise)
{
    return has(key) ? text(key) : std::move(otherwise);
}

std::optional<Decimal> JsonObject::decimalIf(const char* key)
{
    if (!has(key))
        return std::nullopt;
    const auto& value = (*m_json)[key];
    if (!value.is_string() && !value.is_number()) {
        refuse(std::string("\"") + key + "\" must be a decimal number");
        return std::nullopt;
    }
    const auto decimal = value.is_string() ? Decimal::parse(value.get_ref<const std::string&>())
                         : value.is_number_integer() ? Decimal::parse(value.dump())
                                                     : Decimal::fromDouble(value.get<double>(), 9);
    if (!decimal) {
        refuse(std::string("\"") + key + "\": " + decimal.error().what);
        return std::nullopt;
    }
    return *decimal;
}

double JsonObject::number(const char* key)
{
    if (!has(key)) {
        refuse(std::string("needs the number \"") + key + "\"");
        return 0;
    }
    const auto decimal = decimalIf(key);
    return decimal ? decimal->value() : 0;
}

double JsonObject::numberOr(const char* key, double otherwise)
{
    return has(key) ? number(key) : otherwise;
}

JsonObject JsonObject::object(const char* key)
{
    if (!has(key)) {
        refuse(std::string("needs the object \"") + key + "\"");
        return JsonObject(kEmpty, m_name, *m_error);
    }
    return JsonObject((*m_json)[key], m_name + "'s " + key, *m_error);
}

std::vector<JsonObject> JsonObject::list(const char* key)
{
    std::vector<JsonObject> objects;
    if (!has(key))
        return objects;
    const auto& value = (*m_json)[key];
    if (!value.is_array()) {
        refuse(std::string("\"") + key + "\" must be a list");
        return objects;
    }
    int n = 0;
    for (const auto& one : value)
        objects.emplace_back(one, m_name + "'s " + key + " " + std::to_string(++n), *m_error);
    return objects;
}

void JsonObject::refuse(const std::string& what)
{
    fail({Fault::Refused, m_name + (what.starts_with('"') ? ": " : " ") + what + (what.ends_with('.') ? "" : ".")});
}

void JsonObject::fail(const Error& error)
{
    if (!*m_error)
        *m_error = error;
}

}  // namespace groundcount::method
