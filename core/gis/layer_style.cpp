#include "gis/layer_style.h"

#include <array>
#include <utility>

namespace groundcount::gis {
namespace {

// The day set of the app's theme.
constexpr const char* kInk = "#17181a";
constexpr const char* kInk2 = "#47463f";
constexpr const char* kPaper = "#faf8f4";
constexpr const char* kPass = "#004488";
constexpr const char* kFail = "#9e1b0d";
constexpr double kStatePx = 24.0 * 29 / 24;  // a symbol of 24 with its paper

std::string picture(const std::string& box, const std::string& inside)
{
    return R"(<svg xmlns="http://www.w3.org/2000/svg" viewBox=")" + box + R"(">)" + inside + "</svg>";
}

/// The paper that is knocked out round an outline: 2.5 wide.
std::string paperRound(const std::string& outline)
{
    return "<g fill=\"" + std::string(kPaper) + "\" stroke=\"" + kPaper + "\" stroke-width=\"5\" stroke-linejoin=\"round\">" + outline + "</g>";
}

std::string stroked(const std::string& shape, const char* colour, const char* width)
{
    return "<g fill=\"none\" stroke=\"" + std::string(colour) + "\" stroke-width=\"" + width + "\">" + shape + "</g>";
}

std::string filled(const std::string& shape, const char* colour)
{
    return "<g fill=\"" + std::string(colour) + "\">" + shape + "</g>";
}

std::string disc(const char* radius)
{
    return R"(<circle cx="12" cy="12" r=")" + std::string(radius) + "\"/>";
}

StyleRule stateRule(const std::string& state, const std::string& label)
{
    StyleRule rule{state, label, StyleMark{stateSymbol(state), kStatePx}, {}, StylePattern::None, {}};
    return rule;
}

StyleRule lineRule(const std::string& value, const std::string& label, StyleLine line)
{
    return {value, label, {}, std::move(line), StylePattern::None, {}};
}

/// An obstacle's symbol on its own grid of 24, ink 2 on paper.
StyleRule obstacleRule(const std::string& kind, const std::string& label, const std::string& shape)
{
    const std::string svg = picture("0 0 24 24", "<g fill=\"" + std::string(kPaper) + "\" stroke=\"" + kInk + "\" stroke-width=\"2\">" + shape + "</g>");
    return {kind, label, StyleMark{svg, 24}, {}, StylePattern::None, {}};
}

LayerStyle obstacles()
{
    const std::string crossed = R"(<path d="M4 4H20V20H4Z"/><path fill="none" d="M4 4L20 20M4 20L20 4"/>)";
    return {"kind", "obstacle",
            {obstacleRule("gauge", "Gauge", R"(<path d="M3 6H21V18H3Z"/><circle fill="#17181a" stroke="none" cx="8" cy="12" r="2.2"/>)"),
             obstacleRule("vehicle", "Vehicle", R"(<path d="M1 6H23V18H1Z"/><path fill="none" d="M17 6V18"/>)"), obstacleRule("structure", "Structure", crossed),
             obstacleRule("wall", "Wall", crossed), obstacleRule("pipe", "Pipe", crossed)}};
}

LayerStyle coverage()
{
    StyleRule fail{"fail", "Failed", {}, StyleLine{kFail, 2.6, {}}, StylePattern::Hatch, kFail};
    StyleRule untested{"untested", "Untested", {}, {}, StylePattern::Stipple, kInk2};
    return {"state", "", {lineRule("pass", "Passed", {kInk2, 1, {}}), std::move(fail), std::move(untested)}};
}

}  // namespace

std::string stateSymbol(const std::string& state)
{
    const std::string box = "-2.5 -2.5 29 29";
    const std::string square = R"(<path d="M6.5 6.5H17.5V17.5H6.5Z"/>)";
    const std::string diamond = R"(<path d="M12 0.3L23.7 12L12 23.7L0.3 12Z"/>)";
    if (state == "pass")
        return picture(box, paperRound(disc("11")) + filled(disc("11"), kPass) + stroked(R"(<path d="M6.6 12.6L10.5 16.4L17.4 8.2"/>)", kPaper, "2.8"));
    if (state == "fail")
        return picture(box, paperRound(diamond) + filled(diamond, kFail) + stroked(R"(<path d="M6.2 12H17.8"/>)", kPaper, "3"));
    if (state == "information only")
        return picture(box, paperRound(square) + filled(square, kInk));
    if (state == "void")
        return picture(box, paperRound(disc("10")) + stroked(R"(<path d="M5 5L19 19M19 5L5 19"/>)", kInk, "1.8"));
    if (state == "owed")
        return picture(box, paperRound(disc("12")) + stroked(R"(<path d="M12 0V6.5M12 17.5V24M0 12H6.5M17.5 12H24"/>)", kInk, "2.6"));
    if (state == "tested")
        return picture(box, filled(disc("2"), kInk2));
    return picture(box, paperRound(disc("11")) + stroked(disc("9.5"), kInk, "3"));  // open and waiting
}

std::optional<LayerStyle> styleOf(const std::string& layer)
{
    if (layer == "density_test")
        return LayerStyle{"state", "test_number",
                          {stateRule("pass", "Pass"), stateRule("fail", "Fail"), stateRule("waiting", "Waiting"), stateRule("open", "Open"),
                           stateRule("information only", "Information only"), stateRule("void", "Void")}};
    if (layer == "test_site_drawn")
        return LayerStyle{"state", "", {stateRule("owed", "Owed"), stateRule("tested", "Tested")}};
    if (layer == "lift_coverage")
        return coverage();
    if (layer == "lot")
        return LayerStyle{"", "lot", {lineRule("", "Lot", {kInk, 1.4, {}})}};
    if (layer == "obstacle")
        return obstacles();
    if (layer == "obstacle_line")
        return LayerStyle{"", "", {lineRule("", "Obstacle", {kInk, 2, {}})}};
    if (layer == "alignment")
        return LayerStyle{"", "alignment", {lineRule("", "Alignment", {kInk, 1.2, {19.2, 4.8, 3.6, 4.8}})}};  // 16 4 3 4 widths of the line
    return std::nullopt;
}

void renameFields(LayerStyle& style, const std::string& layer, const FieldMap& map)
{
    const auto found = map.layers.find(layer);
    if (found == map.layers.end())
        return;
    const auto& [name, columns, onlyThese] = found->second;
    for (std::string* field : {&style.field, &style.labelField})
        if (const auto theirs = columns.find(*field); theirs != columns.end())
            *field = theirs->second;
        else if (onlyThese)
            field->clear();
    if (style.field.empty() && style.rules.size() > 1)
        style.rules.clear();  // nothing left to tell the rules apart
}

}  // namespace groundcount::gis
