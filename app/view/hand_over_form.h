#pragma once

#include "view/row_list.h"

#include "gis/hand_over.h"

#include <QStringList>
#include <optional>

namespace groundcount::view {

struct Snapshot;

/// The forms that a hand-over file can have, in the order in which they are offered.
enum class HandOverForm { GeoPackage, GeoJson, Csv, Shapefile, Kml, Bundle };

QStringList handOverFormWords();
/// One or two sentences on what the form holds and in which coordinates.
QString handOverFormNote(HandOverForm form);
/// "gpkg"; "" for a Shapefile, which is a folder.
QString handOverEnding(HandOverForm form);
/// None for a bundle, which holds records and no layers.
std::optional<gis::HandOverFormat> handOverFormat(HandOverForm form);
/// Whether a file of this form holds one layer, which must be chosen.
bool holdsOneLayer(HandOverForm form);

/// The layers that can be chosen, for people and as docs/geopackage-layers.md names them; in the same order.
QStringList handOverLayerWords();
std::string handOverLayer(int index);

/// What the file will hold: a row a layer with how many. @param layer index of the one layer, where the form holds one
/// @param records of the whole book, for a bundle
std::vector<Row> handOverContents(HandOverForm form, int layer, const Snapshot& all, std::int64_t records);

}  // namespace groundcount::view
