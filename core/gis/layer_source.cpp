#include "gis/layer_source.h"

#include "book/job_rules.h"
#include "book/kinds.h"
#include "book/state_query.h"
#include "book/test_stream.h"
#include "gis/layer_columns.h"

#include <set>

namespace groundcount::gis {
namespace {

template <class T>
Result<void> read(Result<T>&& from, T& into)
{
    if (!from)
        return tl::unexpected(from.error());
    into = std::move(*from);
    return {};
}

Result<std::vector<DrawFacts>> drawsOf(const book::Store& store, const std::vector<book::SiteRow>& sites)
{
    std::vector<DrawFacts> draws;
    std::set<std::string> seen;
    for (const auto& site : sites) {
        if (!seen.insert(site.draw).second)
            continue;
        const auto record = store.record(site.draw);
        if (!record)
            return tl::unexpected(record.error());
        const auto text = [&](const char* key) { return book::textAt(record->body, key); };
        draws.push_back({site.draw, text("generator"), text("seed"), text("policy")});
    }
    return draws;
}

}  // namespace

Result<std::shared_ptr<const LayerSource>> layerSource(const book::Store& store)
{
    auto source = std::make_shared<LayerSource>();
    const book::StateQuery query(store);
    for (const auto& done : {read(query.job(), source->job), read(query.materials(), source->materials), read(query.proctors(), source->proctors),
                             read(query.lots(), source->lots), read(query.lifts({}), source->lifts), read(query.sites({}, {}), source->sites),
                             read(query.obstacles(), source->obstacles), read(query.alignments(), source->lines)})
        if (!done)
            return tl::unexpected(done.error());
    auto draws = drawsOf(store, source->sites);
    if (!draws)
        return tl::unexpected(draws.error());
    source->draws = std::move(*draws);
    if (const auto rules = book::jobRules(store))
        if (auto statistics = book::statisticsRules(*rules))
            source->statistics = *statistics;
    source->tests = [&store](const TestSink& sink) { return book::eachTestByNumber(store, sink); };
    source->testsOfLot = [&store](const std::string& lot) { return book::testsOfLot(store, lot); };
    return std::shared_ptr<const LayerSource>(std::move(source));
}

Result<std::vector<Layer>> layersOf(const std::shared_ptr<const LayerSource>& source, const ExportOptions& options)
{
    auto tests = testLayer(source->job, source->tests, options);
    if (!tests)
        return tl::unexpected(tests.error());
    std::vector<Layer> layers;
    layers.push_back(std::move(*tests));
    for (const auto make : {siteLayer, coverageLayer, lotLayer, obstacleLayer, obstacleLineLayer, alignmentLayer})
        layers.push_back(make(source, options));
    return layers;
}

}  // namespace groundcount::gis
