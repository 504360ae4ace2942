#pragma once

#include "book/lot_statistics.h"
#include "book/state.h"
#include "book/store.h"
#include "gis/layer.h"
#include "gis/layer_tests.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace groundcount::gis {

/// How the sites of one draw were drawn.
struct DrawFacts {
    std::string hash, generator, seed, policy;
};

/// What the layers of a book are made from. Tests are given out a few at a time, the rest is small.
struct LayerSource {
    book::JobRow job;
    std::vector<book::MaterialRow> materials;
    std::vector<book::ProctorRow> proctors;
    std::vector<book::LotRow> lots;
    std::vector<book::LiftRow> lifts;
    std::vector<book::SiteRow> sites;
    std::vector<DrawFacts> draws;
    std::vector<book::ObstacleRow> obstacles;
    std::vector<book::AlignmentRow> lines;
    std::optional<book::StatisticsRules> statistics;  ///< nothing when the job names no rule set
    EachTest tests;
    std::function<Result<std::vector<book::TestRow>>(const std::string& lot)> testsOfLot;
};

/// Reads everything but the tests. @param store must outlive the result and the layers made from it
/// @error Refused or Unavailable as the book's own readers.
Result<std::shared_ptr<const LayerSource>> layerSource(const book::Store& store);

/// The layers of docs/geopackage-layers.md in their order: density_test, test_site_drawn, lift_coverage, lot, obstacle,
/// obstacle_line, alignment. What cannot be drawn is a row without a shape, its column `not_drawn` says why.
/// @error Refused: a density unit that is neither lb/ft3 nor kg/m3.
Result<std::vector<Layer>> layersOf(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options);

/// @name The single layers; `source` is kept by the layer.
/// @{
Layer siteLayer(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options);
Layer coverageLayer(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options);
Layer lotLayer(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options);
Layer obstacleLayer(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options);
Layer obstacleLineLayer(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options);
Layer alignmentLayer(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options);
/// @}

/// Name of the row with this id, "" without one.
template <class Row>
const std::string& nameOf(const std::vector<Row>& rows, const std::string& id)
{
    static const std::string kNone;
    for (const auto& row : rows)
        if (row.id == id)
            return row.name;
    return kNone;
}

}  // namespace groundcount::gis
