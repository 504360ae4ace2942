#pragma once

#include "method/decimal.h"
#include "method/error.h"

#include <initializer_list>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace groundcount::method {

/// A JSON object read key by key; the first failure is kept in one shared place, later reads return neutral values, so
/// that a reader is a list of what it reads. Nothing read may be used before the shared error was looked at.
class JsonObject {
public:
    /// @param name how a message calls the object, for example "The test" or "The test's gauge"
    JsonObject(const nlohmann::json& json, std::string name, std::optional<Error>& firstError);

    bool has(const char* key) const;
    /// Refuses any key that is not in the list.
    void only(std::initializer_list<std::string_view> keys);
    std::string text(const char* key);
    std::string textOr(const char* key, std::string otherwise);
    /// A decimal as text or a JSON number.
    std::optional<Decimal> decimalIf(const char* key);
    double number(const char* key);
    double numberOr(const char* key, double otherwise);
    JsonObject object(const char* key);
    /// The objects of a list; empty when the key is missing.
    std::vector<JsonObject> list(const char* key);
    /// Keeps "NAME what." as the error.
    void refuse(const std::string& what);
    void fail(const Error& error);

private:
    const nlohmann::json* m_json;
    std::string m_name;
    std::optional<Error>* m_error;
};

}  // namespace groundcount::method
