#pragma once

#include "book/provenance.h"
#include "book/store.h"
#include "gis/geopackage_writer.h"
#include "gis/layer_style.h"

#include <optional>
#include <string>
#include <vector>

namespace groundcount::gis {

/// Puts the photos whose things were written (GeoPackageWriter::remember) into the attributes table `photo`, joined to each layer by a
/// mapping table `LAYER_photo`. No table at all without a photo. @return how many photos
/// @source OGC 18-000 (related tables), requirements 2, 12 and 13
Result<std::size_t> addPhotos(GeoPackageWriter& writer, const book::Store& store, const std::vector<book::PhotoRow>& photos);

/// Puts the styles into the table `layer_styles`, as the default of each layer: once in the form that desktop programs read by themselves, once
/// as Styled Layer Descriptor. The table is a convention outside the standard, registered as attributes.
Result<void> addStyles(GeoPackageWriter& writer, const std::vector<Layer>& layers, const std::vector<std::optional<LayerStyle>>& styles);

/// Puts the provenance into the metadata of the whole file. @source OGC 12-128r17 annex F.8
Result<void> addProvenance(GeoPackageWriter& writer, const std::string& json);

}  // namespace groundcount::gis
