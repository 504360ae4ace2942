#include "gis/style_text.h"

namespace groundcount::gis {
namespace {

std::string parameter(const char* name, const std::string& value)
{
    return "<se:SvgParameter name=\"" + std::string(name) + "\">" + value + "</se:SvgParameter>";
}

std::string graphic(const std::string& svg, double sizePx)
{
    return "<se:Graphic><se:ExternalGraphic><se:InlineContent encoding=\"base64\">" + base64(svg)
           + "</se:InlineContent><se:Format>image/svg+xml</se:Format></se:ExternalGraphic><se:Size>" + plainNumber(sizePx) + "</se:Size></se:Graphic>";
}

/// A picture that repeats without a seam: the hatch at 45 degrees, or dots in rows that are shifted by half.
std::string tile(StylePattern pattern, const std::string& colour, double& sizePx)
{
    const std::string head = R"(<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 )";
    if (pattern == StylePattern::Hatch) {
        sizePx = kHatchPeriodPx * 1.4142135623730951;
        const std::string s = plainNumber(sizePx);
        const std::string half = plainNumber(sizePx / 2);
        // The corners' ends belong to the neighbours' lines.
        return head + s + " " + s + "\"><path fill=\"none\" stroke=\"" + colour + "\" stroke-width=\"" + plainNumber(kHatchStrokePx) + "\" d=\"M-" + half + " " + half
               + "L" + half + " -" + half + "M0 " + s + "L" + s + " 0M" + half + " " + plainNumber(1.5 * sizePx) + "L" + plainNumber(1.5 * sizePx) + " " + half + "\"/></svg>";
    }
    sizePx = 2 * kStipplePeriodPx;
    const double p = kStipplePeriodPx;
    std::string dots;
    for (const auto& [x, y] : {std::pair{0.25 * p, 0.5 * p}, {1.25 * p, 0.5 * p}, {0.75 * p, 1.5 * p}, {1.75 * p, 1.5 * p}})
        dots += "<circle cx=\"" + plainNumber(x) + "\" cy=\"" + plainNumber(y) + "\" r=\"" + plainNumber(kStippleRadiusPx) + "\" fill=\"" + colour + "\"/>";
    return head + plainNumber(sizePx) + " " + plainNumber(sizePx) + "\">" + dots + "</svg>";
}

std::string stroke(const StyleLine& line)
{
    std::string dashes;
    for (const double dash : line.dashPx)
        dashes += (dashes.empty() ? "" : " ") + plainNumber(dash);
    return "<se:Stroke>" + parameter("stroke", line.colour) + parameter("stroke-width", plainNumber(line.widthPx))
           + (dashes.empty() ? std::string() : parameter("stroke-dasharray", dashes)) + "</se:Stroke>";
}

std::string symbolizer(const StyleRule& rule, ShapeKind kind)
{
    if (rule.mark)
        return "<se:PointSymbolizer>" + graphic(rule.mark->svg, rule.mark->sizePx) + "</se:PointSymbolizer>";
    if (kind == ShapeKind::Line)
        return "<se:LineSymbolizer>" + stroke(*rule.line) + "</se:LineSymbolizer>";
    std::string fill;
    if (rule.pattern != StylePattern::None) {
        double size = 0;
        const std::string svg = tile(rule.pattern, rule.patternColour, size);
        fill = "<se:Fill><se:GraphicFill>" + graphic(svg, size) + "</se:GraphicFill></se:Fill>";
    }
    return "<se:PolygonSymbolizer>" + fill + (rule.line ? stroke(*rule.line) : std::string()) + "</se:PolygonSymbolizer>";
}

std::string label(const std::string& field)
{
    return "<se:Rule><se:TextSymbolizer><se:Label><ogc:PropertyName>" + xmlText(field) + "</ogc:PropertyName></se:Label><se:Font>"
           + parameter("font-family", "sans-serif") + parameter("font-size", "12") + parameter("font-weight", "bold")
           + "</se:Font><se:LabelPlacement><se:PointPlacement><se:AnchorPoint><se:AnchorPointX>0</se:AnchorPointX><se:AnchorPointY>0.5</se:AnchorPointY>"
             "</se:AnchorPoint><se:Displacement><se:DisplacementX>16</se:DisplacementX><se:DisplacementY>0</se:DisplacementY></se:Displacement>"
             "</se:PointPlacement></se:LabelPlacement><se:Halo><se:Radius>2</se:Radius><se:Fill>" + parameter("fill", "#faf8f4") + "</se:Fill></se:Halo><se:Fill>"
           + parameter("fill", "#17181a") + "</se:Fill></se:TextSymbolizer></se:Rule>";
}

}  // namespace

std::string styledLayerDescriptor(const LayerStyle& style, const Layer& layer)
{
    std::string rules;
    for (const auto& rule : style.rules) {
        rules += "<se:Rule><se:Name>" + xmlText(rule.label) + "</se:Name>";
        if (!style.field.empty())
            rules += "<ogc:Filter><ogc:PropertyIsEqualTo><ogc:PropertyName>" + xmlText(style.field) + "</ogc:PropertyName><ogc:Literal>" + xmlText(rule.value)
                     + "</ogc:Literal></ogc:PropertyIsEqualTo></ogc:Filter>";
        rules += symbolizer(rule, layer.kind) + "</se:Rule>";
    }
    if (!style.labelField.empty())
        rules += label(style.labelField);
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
           "<StyledLayerDescriptor xmlns=\"http://www.opengis.net/sld\" xmlns:se=\"http://www.opengis.net/se\" xmlns:ogc=\"http://www.opengis.net/ogc\""
           " version=\"1.1.0\"><NamedLayer><se:Name>" + xmlText(layer.name) + "</se:Name><UserStyle><se:Name>" + xmlText(layer.name)
           + "</se:Name><se:FeatureTypeStyle>" + rules + "</se:FeatureTypeStyle></UserStyle></NamedLayer></StyledLayerDescriptor>\n";
}

}  // namespace groundcount::gis
