#include "gis/failure_ground.h"

namespace groundcount::gis {

std::map<std::string, Surface> failureGround(const book::LotRow& lot, const book::LiftRow& lift, const book::JobRow& job,
                                             std::span<const book::AlignmentRow> lines, std::span<const book::TestRow> tests)
{
    std::map<std::string, Surface> ground;
    const auto coverage = liftCoverage(lot, lift, job, lines, tests);
    if (!coverage)
        return ground;
    const auto sites = speakingTests(tests, lift.id);
    for (const CoverageCell& cell : coverage->cells)
        if (cell.answer == SiteAnswer::Fail)
            ground.emplace(sites[cell.sites.back()].number, Surface::squareMetres(cell.surface.squareMetres() - cell.beyondShare.squareMetres()));
    return ground;
}

}  // namespace groundcount::gis
