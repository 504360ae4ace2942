#pragma once

#include "gis/crs.h"
#include "gis/geopackage_store.h"
#include "gis/layer.h"
#include "gis/layer_check.h"

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace groundcount::gis {

/// Writes layers into a new GeoPackage 1.3. Nothing comes from the clock, so equal rows give equal bytes.
class GeoPackageWriter {
public:
    /// @param lastChange as instantText: the date of everything in the file
    static Result<GeoPackageWriter> create(const std::string& path, const Crs& crs, std::string lastChange);

    /// Rows whose record is one of these subjects are looked up later with `rowOf`.
    void remember(std::set<std::string> subjects) { m_wanted = std::move(subjects); }
    /// Writes a layer with its spatial index. Rows that were written before count towards `options.keepOn`.
    /// @error Refused: a value that its column cannot hold, stopped by `keepOn`. Unavailable: disk.
    Result<LayerCount> add(const Layer& layer, const ExportOptions& options);

    struct Place {
        std::string layer;
        std::int64_t row = 0;
    };
    /// Where remembered rows stand, by subject.
    const std::map<std::string, Place>& remembered() const { return m_remembered; }

    const std::string& lastChange() const { return m_lastChange; }
    GeoPackageStore& store() { return m_store; }
    Result<void> finish() { return m_store.finish(); }

private:
    GeoPackageWriter(GeoPackageStore store, int srsId, std::string lastChange)
        : m_store(std::move(store)), m_srsId(srsId), m_lastChange(std::move(lastChange))
    {
    }
    GeoPackageStore m_store;
    int m_srsId;
    std::string m_lastChange;
    std::set<std::string> m_wanted;
    std::map<std::string, Place> m_remembered;
    std::size_t m_written = 0;
};

}  // namespace groundcount::gis
