#pragma once

#include "app/command_bench.h"

/// The demo job on the evening of June 9, when the gauge has been signed in.
inline bool playTheEveBefore(const Bench& bench, const QString& book)
{
    QJsonObject scenario = Bench::object(Bench::read(Bench::source("demo/scenario.json")));
    QJsonArray entries = scenario.value("entries"_k).toArray();
    entries.append(QJsonObject{{"kind", "custody"}, {"subject", "@gauge07"}, {"by", "@okafor"}, {"at", "2026-06-09 16:40"},
                               {"body", QJsonObject{{"event", "signed in"}, {"place", "field office"}, {"barriers", 2}, {"badge", true}, {"papers", true}}}});
    scenario.insert("entries"_k, entries);
    for (const char* beside : {"rules.json", "photo-26.jpg"})
        bench.write(beside, Bench::read(Bench::source(QString("demo/%1").arg(beside))));
    const QString file = bench.write("scenario.json", QJsonDocument(scenario).toJson());
    const auto played = bench.run({"play", bench.path(book), file});
    if (played.code != 0)
        qWarning("%s", played.err.constData());
    return played.code == 0;
}
