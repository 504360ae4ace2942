#include "gis/new_job.h"

#include "book/keys.h"

namespace groundcount::gis {

Result<std::string> gridUnitOf(const Crs& crs)
{
    if (!crs.isProjected())
        return refused("\"" + crs.name() + "\" is not a projected coordinate system; a job's grid needs one in metres or feet.");
    const auto unit = crs.unitName();
    if (unit == "metre")
        return std::string("m");
    if (unit == "US survey foot")
        return std::string("ftUS");
    if (unit == "foot")
        return std::string("ft");
    return refused("\"" + crs.name() + "\" counts in " + unit + "; allowed: metre, foot, US survey foot.");
}

Result<std::vector<book::Entry>> newJobEntries(const NewJob& job)
{
    if (job.name.empty() || (job.by.empty() && job.person.empty()))
        return refused(job.name.empty() ? "A job needs a name." : "A job needs the name of the person who begins it.");
    const auto crs = Crs::fromEpsg(job.epsg);
    if (!crs)
        return tl::unexpected(crs.error());
    const auto unit = gridUnitOf(*crs);
    if (!unit)
        return tl::unexpected(unit.error());
    const std::string by = job.by.empty() ? book::newSubject() : job.by;
    std::vector<book::Entry> entries;
    const auto add = [&](const char* kind, const std::string& subject, book::Body body) {
        book::Entry& entry = entries.emplace_back();
        entry.kind = kind;
        entry.subject = subject;
        entry.by = by;
        entry.body = std::move(body);
        return subject;
    };
    if (job.by.empty()) {
        book::Body who{{"name", job.person}, {"role", job.role}};
        if (!job.certificate.empty())
            who["certificate"] = job.certificate;
        add("person", by, std::move(who));
    }
    const auto system = add("crs", book::newSubject(), {{"epsg", job.epsg}, {"name", crs->name()}, {"unit", *unit}});
    const auto rules = add("rule-set", book::newSubject(), {{"rules", book::Body::parse(method::toJson(job.rules))}});
    book::Body body{{"name", job.name}, {"density_unit", job.rules.densityUnit}, {"crs", system}, {"rule_set", rules}};
    if (!job.place.empty())
        body["place"] = job.place;
    add("job", book::newSubject(), std::move(body));
    return entries;
}

}  // namespace groundcount::gis
