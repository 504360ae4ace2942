#pragma once

#include "gis/layer.h"
#include "gis/layer_style.h"

#include <string>
#include <string_view>

namespace groundcount::gis {

/// A style with titles, value lists and ranges of the columns for forms, in the XML that desktop programs read from the column
/// `styleQML` of `layer_styles` and apply by themselves when they open the file.
std::string desktopStyle(const LayerStyle& style, const Layer& layer);

/// A style as Styled Layer Descriptor 1.1 with Symbology Encoding 1.1; pictures stand in the text itself.
/// @source OGC 05-078r4, OGC 05-077r4
std::string styledLayerDescriptor(const LayerStyle& style, const Layer& layer);

/// Text for XML, also within double quotes.
std::string xmlText(std::string_view text);
/// @source RFC 4648 section 4
std::string base64(std::string_view bytes);
/// At most 4 decimals, no trailing zeros.
std::string plainNumber(double value);

}  // namespace groundcount::gis
