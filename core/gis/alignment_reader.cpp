#include "gis/alignment_reader.h"

#include "method/rules/json_object.h"

#include <algorithm>

namespace groundcount::gis {
namespace {

using method::JsonObject;

std::string oneOf(JsonObject& object, const char* key, std::initializer_list<const char*> words)
{
    const std::string word = object.text(key);
    if (std::find(words.begin(), words.end(), word) == words.end()) {
        std::string list;
        for (const char* one : words)
            list += (list.empty() ? "" : " or ") + std::string(one);
        object.refuse("must have " + std::string(key) + " " + list + "; it is \"" + word + "\"");
    }
    return word;
}

double aboveZero(JsonObject& object, const char* key)
{
    const double value = object.number(key);
    if (!(value > 0))
        object.refuse("must have a " + std::string(key) + " above 0; it is " + std::to_string(value));
    return value;
}

method::AlignmentElement elementFrom(JsonObject& object)
{
    method::AlignmentElement element;
    element.lengthFt = aboveZero(object, "length");
    if (oneOf(object, "kind", {"line", "curve"}) == "curve") {
        element.radiusFt = aboveZero(object, "radius");
        element.turn = oneOf(object, "turn", {"left", "right"}) == "left" ? method::Turn::Left : method::Turn::Right;
    }
    return element;
}

}  // namespace

Result<method::Alignment> alignmentFrom(const std::string& bodyJson)
{
    const auto json = nlohmann::json::parse(bodyJson, nullptr, false);
    std::optional<Error> error;
    JsonObject body(json, "The alignment", error);
    oneOf(body, "unit", {"ft", "ftUS", "m"});
    const double beginStation = body.number("begin_station");
    const method::PlanPoint begin{body.number("begin_north"), body.number("begin_east")};
    const double azimuthDeg = body.number("begin_azimuth_deg");
    std::vector<method::AlignmentElement> elements;
    for (JsonObject& element : body.list("elements"))
        elements.push_back(elementFrom(element));
    std::vector<method::StationEquation> equations;
    for (JsonObject& equation : body.list("equations"))
        equations.push_back({equation.number("back"), equation.number("ahead")});
    if (error)
        return tl::unexpected(*error);
    return method::Alignment::fromElements(begin, azimuthDeg, beginStation, elements, equations);
}

}  // namespace groundcount::gis
