#include "method/accept/evaluate.h"

namespace groundcount::method {

const char* word(Outcome outcome)
{
    switch (outcome) {
    case Outcome::Pass: return "pass";
    case Outcome::Fail: return "fail";
    case Outcome::InformationOnly: return "information only";
    case Outcome::Provisional: break;
    }
    return "provisional";
}

const char* word(Reason reason)
{
    switch (reason) {
    case Reason::DensityLow: return "density low";
    case Reason::DensityHigh: return "density high";
    case Reason::TooDry: return "too dry";
    case Reason::TooWet: return "too wet";
    case Reason::AwaitsSample: return "waits for the check sample";
    case Reason::AwaitsOven: return "waits for the oven";
    case Reason::CheckOverridden: return "a check was overridden";
    case Reason::OutsideDensityCurve: return "wet density outside the calibrated range";
    case Reason::OutsideWaterCurve: return "water density outside the calibrated range";
    case Reason::LargeTrenchOffset: return "trench offset is large";
    case Reason::AboveSaturation: break;
    }
    return "wetter than saturation allows";
}

bool isRemark(Reason reason)
{
    return reason == Reason::OutsideDensityCurve || reason == Reason::OutsideWaterCurve ||
           reason == Reason::LargeTrenchOffset || reason == Reason::AboveSaturation;
}

}  // namespace groundcount::method
