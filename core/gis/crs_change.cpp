#include "gis/crs_change.h"

#include "gis/proj_object.h"

namespace groundcount::gis {

struct CrsChange::Machine {
    ProjContext context = newProjContext();
    ProjObject way = owned(nullptr);
};

CrsChange::CrsChange(std::unique_ptr<Machine> machine) : m_machine(std::move(machine)) {}
CrsChange::CrsChange(CrsChange&&) noexcept = default;
CrsChange& CrsChange::operator=(CrsChange&&) noexcept = default;
CrsChange::~CrsChange() = default;

Result<CrsChange> CrsChange::between(const Crs& source, const Crs& target)
{
    auto machine = std::make_unique<Machine>();
    auto* context = machine->context.get();
    const ProjObject from = owned(proj_create(context, source.wkt2().c_str()));
    const ProjObject to = owned(proj_create(context, target.wkt2().c_str()));
    if (from && to)
        machine->way = wayBetween(context, from.get(), to.get());
    if (!machine->way)
        return refused("No way is known from " + source.name() + " to " + target.name() + ".");
    return CrsChange(std::move(machine));
}

std::optional<GridPoint> CrsChange::operator()(GridPoint point) const
{
    const auto to = movedPlace(m_machine->way.get(), PJ_FWD, point.east, point.north);
    return to ? std::optional(GridPoint{to->y, to->x}) : std::nullopt;
}

}  // namespace groundcount::gis
