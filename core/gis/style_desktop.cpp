#include "gis/style_text.h"

namespace groundcount::gis {
namespace {

constexpr double kMmPerPx = 25.4 / 96;

using Options = std::vector<std::pair<std::string, std::string>>;

/// Every setting twice: programs of before and after 2022 read one or the other.
std::string part(const std::string& kind, const Options& options, const std::string& inside = {})
{
    std::string map, props;
    for (const auto& [key, value] : options) {
        map += "<Option type=\"QString\" name=\"" + key + "\" value=\"" + xmlText(value) + "\"/>";
        props += "<prop k=\"" + key + "\" v=\"" + xmlText(value) + "\"/>";
    }
    return "<layer class=\"" + kind + "\" enabled=\"1\" locked=\"0\" pass=\"0\"><Option type=\"Map\">" + map + "</Option>" + props + inside + "</layer>";
}

std::string symbol(const char* type, const std::string& name, const std::string& parts)
{
    return "<symbol type=\"" + std::string(type) + "\" name=\"" + name + "\" alpha=\"1\" clip_to_extent=\"1\" force_rhr=\"0\">" + parts + "</symbol>";
}

std::string mm(double px)
{
    return plainNumber(px * kMmPerPx);
}

std::string rgba(const std::string& colour)
{
    std::string out;
    for (const std::size_t at : {std::size_t{1}, std::size_t{3}, std::size_t{5}})
        out += std::to_string(std::stoi(colour.substr(at, 2), nullptr, 16)) + ",";
    return out + "255";
}

std::string linePart(const StyleLine& line)
{
    std::string dashes;
    for (const double dash : line.dashPx)
        dashes += (dashes.empty() ? "" : ";") + mm(dash);
    return part("SimpleLine", {{"line_color", rgba(line.colour)}, {"line_width", mm(line.widthPx)}, {"line_width_unit", "MM"}, {"capstyle", "flat"},
                               {"joinstyle", "miter"}, {"line_style", "solid"}, {"use_custom_dash", dashes.empty() ? "0" : "1"},
                               {"customdash", dashes.empty() ? "5;2" : dashes}, {"customdash_unit", "MM"}});
}

std::string patternPart(const StyleRule& rule, const std::string& name)
{
    if (rule.pattern == StylePattern::Hatch)
        return part("LinePatternFill", {{"angle", "45"}, {"distance", mm(kHatchPeriodPx)}, {"distance_unit", "MM"}, {"color", rgba(rule.patternColour)},
                                        {"line_width", mm(kHatchStrokePx)}, {"line_width_unit", "MM"}},
                    symbol("line", "@" + name + "@0", linePart({rule.patternColour, kHatchStrokePx, {}})));
    return part("PointPatternFill", {{"distance_x", mm(kStipplePeriodPx)}, {"distance_x_unit", "MM"}, {"distance_y", mm(kStipplePeriodPx)},
                                     {"distance_y_unit", "MM"}, {"displacement_x", mm(kStipplePeriodPx / 2)}, {"displacement_x_unit", "MM"}},
                symbol("marker", "@" + name + "@0",
                       part("SimpleMarker", {{"name", "circle"}, {"color", rgba(rule.patternColour)}, {"outline_style", "no"},
                                             {"size", mm(2 * kStippleRadiusPx)}, {"size_unit", "MM"}})));
}

std::string symbolOf(const StyleRule& rule, ShapeKind kind, const std::string& name)
{
    if (rule.mark)
        return symbol("marker", name, part("SvgMarker", {{"name", "base64:" + base64(rule.mark->svg)}, {"size", mm(rule.mark->sizePx)}, {"size_unit", "MM"},
                                                         {"outline_width", "0"}, {"fixedAspectRatio", "0"}}));
    if (kind == ShapeKind::Line)
        return symbol("line", name, linePart(*rule.line));
    std::string parts;
    if (rule.pattern != StylePattern::None)
        parts += patternPart(rule, name);
    if (rule.line)
        parts += part("SimpleFill", {{"style", "no"}, {"outline_color", rgba(rule.line->colour)}, {"outline_style", "solid"},
                                     {"outline_width", mm(rule.line->widthPx)}, {"outline_width_unit", "MM"}, {"joinstyle", "miter"}});
    return symbol("fill", name, parts);
}

std::string renderer(const LayerStyle& style, ShapeKind kind)
{
    std::string categories, symbols;
    for (std::size_t i = 0; i < style.rules.size(); ++i) {
        const std::string name = std::to_string(i);
        categories += "<category render=\"true\" symbol=\"" + name + "\" value=\"" + xmlText(style.rules[i].value) + "\" label=\"" + xmlText(style.rules[i].label)
                      + "\" type=\"string\"/>";
        symbols += symbolOf(style.rules[i], kind, name);
    }
    if (style.field.empty())
        return "<renderer-v2 type=\"singleSymbol\" symbollevels=\"0\" enableorderby=\"0\" forceraster=\"0\"><symbols>" + symbols + "</symbols></renderer-v2>";
    return "<renderer-v2 type=\"categorizedSymbol\" attr=\"" + xmlText(style.field) + "\" symbollevels=\"0\" enableorderby=\"0\" forceraster=\"0\"><categories>"
           + categories + "</categories><symbols>" + symbols + "</symbols></renderer-v2>";
}

std::string labels(const LayerStyle& style, ShapeKind kind)
{
    if (style.labelField.empty())
        return "";
    // Placement: 1 over an area's middle, 0 around a point, 3 along a line.
    const char* placement = kind == ShapeKind::Point ? "0" : kind == ShapeKind::Line ? "3" : "1";
    return "<labeling type=\"simple\"><settings calloutType=\"simple\"><text-style fieldName=\"" + xmlText(style.labelField)
           + "\" fontFamily=\"Lato\" fontSize=\"9\" fontSizeUnit=\"Point\" fontWeight=\"75\" textColor=\"23,24,26,255\" textOpacity=\"1\" isExpression=\"0\">"
             "<text-buffer bufferDraw=\"1\" bufferSize=\"0.6\" bufferSizeUnits=\"MM\" bufferColor=\"250,248,244,255\" bufferOpacity=\"1\"/></text-style>"
             "<placement placement=\"" + placement + "\" dist=\"4\" distUnits=\"MM\"/><rendering obstacle=\"1\" drawLabels=\"1\"/></settings></labeling>";
}

std::string option(const char* type, const std::string& name, const std::string& value)
{
    return "<Option type=\"" + std::string(type) + "\" name=\"" + xmlText(name) + "\" value=\"" + xmlText(value) + "\"/>";
}

/// How a form shows a column: closed lists as a list, ranges as a range, times as a calendar.
std::string widget(const LayerField& field)
{
    std::string kind = "TextEdit";
    std::string config;
    if (!field.list.words.empty()) {
        kind = "ValueMap";
        for (const auto& word : field.list.words)
            config += "<Option type=\"Map\">" + option("QString", word, word) + "</Option>";
        config = "<Option type=\"List\" name=\"map\">" + config + "</Option>";
    } else if (field.range) {
        kind = "Range";
        config = option("double", "Min", plainNumber(field.range->low)) + option("double", "Max", plainNumber(field.range->high)) + option("bool", "AllowNull", "true");
    } else if (field.form == FieldForm::Instant) {
        kind = "DateTime";
        config = option("bool", "allow_null", "true") + option("QString", "display_format", "yyyy-MM-dd HH:mm:ss") + option("bool", "calendar_popup", "true");
    }
    return "<field name=\"" + xmlText(field.name) + "\" configurationFlags=\"None\"><editWidget type=\"" + kind + "\"><config><Option type=\"Map\">" + config
           + "</Option></config></editWidget></field>";
}

}  // namespace

std::string desktopStyle(const LayerStyle& style, const Layer& layer)
{
    std::string widgets, aliases;
    int index = 1;  // 0 is fid
    for (const auto& field : layer.fields) {
        widgets += widget(field);
        aliases += "<alias field=\"" + xmlText(field.name) + "\" index=\"" + std::to_string(index++) + "\" name=\"" + xmlText(titleWithUnit(field)) + "\"/>";
    }
    const std::string preview = style.labelField.empty() ? "" : "<previewExpression>\"" + xmlText(style.labelField) + "\"</previewExpression>";
    return "<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>\n<qgis version=\"3.22.0\" styleCategories=\"Symbology|Labeling|Fields|Forms\" labelsEnabled=\""
           + std::string(style.labelField.empty() ? "0" : "1") + "\">" + renderer(style, layer.kind) + labels(style, layer.kind) + "<fieldConfiguration>" + widgets
           + "</fieldConfiguration><aliases>" + aliases + "</aliases>" + preview + "</qgis>\n";
}

}  // namespace groundcount::gis
