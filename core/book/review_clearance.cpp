#include "book/review_clearance.h"

#include "method/decimal.h"
#include "method/quantity.h"
#include "method/site/clearance.h"

namespace groundcount::book {

namespace {

Length lengthOf(const WithUnit& value)
{
    const auto number = Decimal::parse(value.text);
    const double v = number ? number->value() : 0;
    return value.unit == "in" ? Length::inches(v) : value.unit == "ft" ? Length::feet(v) : value.unit == "usft" ? Length::surveyFeet(v)
           : value.unit == "mm" ? Length::metres(v / 1000) : Length::metres(v);
}

}  // namespace

std::string clearanceFault(const FlatBody& hazard)
{
    const std::string answer = hazard.text("answer");
    if ((answer == "too close" || answer == "cannot tell") && hazard.text("remedy").empty())
        return "The answer for " + hazard.text("hazard") + " is \"" + answer + "\" and there is no remedy.";
    const WithUnit distance = withUnit(hazard, "distance", Unit::Length);
    const WithUnit required = withUnit(hazard, "required", Unit::Length);
    if (answer != "clear" || distance.text.empty() || required.text.empty())
        return {};
    const auto judged = method::judgeClearance(lengthOf(distance), lengthOf(withUnit(hazard, "uncertainty", Unit::Length)), lengthOf(required), method::Inclusive::Yes);
    if (!judged || *judged != method::ClearanceAnswer::TooClose)
        return {};
    return "The answer for " + hazard.text("hazard") + " is \"clear\" at " + distance.text + " " + distance.unit + "; " + required.text + " " + required.unit + " is required.";
}

}  // namespace groundcount::book
