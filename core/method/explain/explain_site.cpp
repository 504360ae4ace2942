#include "method/explain/explain_site.h"

namespace groundcount::method {
namespace {

std::string length(Length d, LengthUnit unit)
{
    switch (unit) {
    case LengthUnit::Inches: return shown(d.inches(), 1) + " in.";
    case LengthUnit::Feet: return shown(d.feet(), 2) + " ft";
    case LengthUnit::Millimetres: return shown(d.metres() * 1000, 0) + " mm";
    case LengthUnit::Metres: break;
    }
    return shown(d.metres(), 3) + " m";
}

}  // namespace

std::vector<ExplainStep> explainClearance(Length measured, Length uncertainty, Length required, Inclusive inclusive,
                                          ClearanceAnswer answer, LengthUnit unit)
{
    ExplainSteps s(DensityUnit::KgPerM3);
    const std::string d = length(measured, unit), u = length(uncertainty, unit);
    const char* edge = inclusive == Inclusive::Yes ? "at least " : "more than ";
    s.add("Nearest believable distance", "distance \xE2\x88\x92 uncertainty", d + kMinus + u,
          length(Length::metres(measured.metres() - uncertainty.metres()), unit), "DESIGN");
    s.add("Farthest believable distance", "distance + uncertainty", d + " + " + u,
          length(Length::metres(measured.metres() + uncertainty.metres()), unit), "DESIGN");
    s.add("Clearance", "clear when even the nearest is " + std::string(edge) + length(required, unit) + "; too close when not even the farthest is",
          d + " \xC2\xB1 " + u, std::string(clearanceWord(answer)), "DESIGN");
    return s.take();
}

std::vector<ExplainStep> explainHole(Length testDepth, Length hole, Length margin, Length lift, const Result<void>& checked, LengthUnit unit)
{
    ExplainSteps s(DensityUnit::KgPerM3);
    s.add("Hole needed", "test depth + margin", length(testDepth, unit) + " + " + length(margin, unit),
          length(Length::metres(testDepth.metres() + margin.metres()), unit), "D6938-TXT, KY-KM64");
    s.add("Depth and lift", "test depth at most the lift", length(testDepth, unit) + " in a lift of " + length(lift, unit),
          testDepth <= lift ? "met" : "not met", "COMMON");
    s.add("Hole", "hole at least the hole needed, depth within the lift", length(hole, unit), checked ? "deep enough" : checked.error().what, "D6938-TXT, COMMON");
    return s.take();
}

std::vector<ExplainStep> explainSecondReading(double first, double second, DifferenceKind kind, double limit,
                                              const SecondReading& reading, DensityUnit unit)
{
    ExplainSteps s(unit);
    const std::string word = std::string(" ") + unitWord(unit);
    if (kind == DifferenceKind::Absolute)
        s.add("Difference", "|second \xE2\x88\x92 first|, at most " + figure(limit) + word, "|" + shown(second, 2) + kMinus + shown(first, 2) + "|",
              shown(reading.difference, 2) + word, "WAQTC-T310");
    else
        s.add("Difference", "100" + std::string(kTimes) + "|second \xE2\x88\x92 first| / first, at most " + figure(limit) + " %",
              "100" + std::string(kTimes) + "|" + shown(second, 2) + kMinus + shown(first, 2) + "| / " + shown(first, 2),
              shown(reading.differencePct, 2) + " %", "COMMON");
    if (reading.agreement == Agreement::Apart)
        s.add("Second reading", "readings apart", shown(first, 2) + ", " + shown(second, 2), "take the test at a new spot", "WAQTC-T310");
    else
        s.add("Second reading", "(first + second) / 2", "(" + shown(first, 2) + " + " + shown(second, 2) + ") / 2", shown(reading.mean, 2) + word, "WAQTC-T310");
    return s.take();
}

std::vector<ExplainStep> explainPlace(const Strip& strip, double along, double across, EdgePolicy policy, const RandomPlace& place)
{
    ExplainSteps s(DensityUnit::LbPerFt3);
    s.add("Station", "begin + r1" + std::string(kTimes) + "length", shown(strip.beginFt, 1) + " + " + shown(along, 4) + kTimes + shown(strip.lengthFt, 1),
          shown(place.stationFt, 1) + " ft", "LA-S605");
    if (policy == EdgePolicy::Shrink)
        s.add("From the left", "left edge + r2" + std::string(kTimes) + "(width \xE2\x88\x92 both edges)",
              shown(strip.leftEdgeFt, 1) + " + " + shown(across, 4) + kTimes + shown(strip.widthFt - strip.leftEdgeFt - strip.rightEdgeFt, 1),
              shown(place.fromLeftFt, 1) + " ft", "SK-STP107");
    else
        s.add("From the left", "r2" + std::string(kTimes) + "width", shown(across, 4) + kTimes + shown(strip.widthFt, 1),
              shown(place.fromLeftFt, 1) + (place.insideEdge ? " ft, inside an edge: draw again" : " ft"), "LA-S605");
    s.add("Offset from the middle, right positive", "from the left \xE2\x88\x92 width / 2", shown(place.fromLeftFt, 1) + kMinus + shown(strip.widthFt, 1) + " / 2",
          shown(place.offsetRightFt, 1) + " ft", "SK-STP107");
    return s.take();
}

}  // namespace groundcount::method
