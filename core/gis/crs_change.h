#pragma once

#include "gis/crs.h"
#include "method/error.h"

#include <memory>
#include <optional>

namespace groundcount::gis {

/// The way from one system to another that PROJ holds for the best without a network; east and north each. One object serves one thread at a time.
class CrsChange {
public:
    /// @error Refused: no way is known.
    static Result<CrsChange> between(const Crs& source, const Crs& target);
    CrsChange(CrsChange&&) noexcept;
    CrsChange& operator=(CrsChange&&) noexcept;
    ~CrsChange();
    /// In the units of both systems, degrees in a geographic one (north = latitude). nullopt: beyond the reach.
    std::optional<GridPoint> operator()(GridPoint point) const;

private:
    struct Machine;
    explicit CrsChange(std::unique_ptr<Machine> machine);
    std::unique_ptr<Machine> m_machine;
};

}  // namespace groundcount::gis
