#pragma once

#include "gis/field_map.h"

#include <optional>
#include <string>
#include <vector>

/// How a layer is drawn, apart from any format: the day colours and the shapes of the app's map (app/map/symbol_paint.h), so that
/// a verdict looks the same in the owner's GIS. Lengths in px of 1/96 in.
namespace groundcount::gis {

struct StyleMark {
    std::string svg;     ///< a whole SVG picture, square
    double sizePx = 24;  ///< of the picture
};

struct StyleLine {
    std::string colour;  ///< "#17181a"
    double widthPx = 1;
    std::vector<double> dashPx;  ///< stroke and gap in turn; empty = solid
};

enum class StylePattern { None, Hatch, Stipple };

struct StyleRule {
    std::string value;  ///< of the layer's field; "" = the rest
    std::string label;
    std::optional<StyleMark> mark;
    std::optional<StyleLine> line;  ///< the line, or the edge of an area
    StylePattern pattern = StylePattern::None;
    std::string patternColour;
};

struct LayerStyle {
    std::string field;       ///< whose words choose the rule; "" = one rule for all
    std::string labelField;  ///< written beside it; "" = none
    std::vector<StyleRule> rules;
};

inline constexpr double kHatchPeriodPx = 9, kHatchStrokePx = 1.4, kStipplePeriodPx = 11, kStippleRadiusPx = 1.3;

/// The style of a layer of layersOf by its own name; nothing for an unknown one.
std::optional<LayerStyle> styleOf(const std::string& layer);

/// Gives the fields of a style the names of a field map; a label whose field is left out goes.
void renameFields(LayerStyle& style, const std::string& layer, const FieldMap& map);

/// A state's symbol as SVG on a grid of 24 with 2.5 of knocked-out paper round it, 29 units wide.
/// @param state a word of test_state, or "owed", "tested" of site_state
std::string stateSymbol(const std::string& state);

}  // namespace groundcount::gis
