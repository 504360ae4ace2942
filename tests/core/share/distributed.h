#pragma once

#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <QStringList>
#include <vector>

/// What a distributed PostgreSQL does not take (docs/shared-server.md), asked of a server's catalogue and of the statements that it was sent.
namespace distributed {

/// Each counts what must not be there in the schema groundcount.
struct Rule {
    const char* what;
    const char* sql;
};
inline const std::vector<Rule> kRules = {
    {"policies with a sub-select",
     "SELECT count(*) FROM pg_policy WHERE polrelid::regclass::text LIKE 'groundcount.%'"
     " AND concat(pg_get_expr(polqual, polrelid), pg_get_expr(polwithcheck, polrelid)) ~* '\\mselect\\M'"},
    {"triggers", "SELECT count(*) FROM pg_trigger WHERE tgrelid::regclass::text LIKE 'groundcount.%' AND NOT tgisinternal"},
    {"grants on columns", "SELECT count(*) FROM pg_attribute WHERE attrelid::regclass::text LIKE 'groundcount.%' AND attacl IS NOT NULL"},
    {"sequences", "SELECT count(*) FROM pg_class WHERE relnamespace = 'groundcount'::regnamespace AND relkind = 'S'"},
    {"identity columns", "SELECT count(*) FROM pg_attribute WHERE attrelid::regclass::text LIKE 'groundcount.%' AND attidentity <> ''"},
    {"functions", "SELECT count(*) FROM pg_proc WHERE pronamespace = 'groundcount'::regnamespace"},
    {"keys without the job",
     "SELECT count(*) FROM pg_constraint WHERE connamespace = 'groundcount'::regnamespace AND contype IN ('p', 'u', 'f', 'x') AND NOT"
     " (SELECT attnum FROM pg_attribute WHERE attrelid = conrelid AND attname = 'project_id') = ANY(conkey)"},
    {"unique indexes without the job",
     "SELECT count(*) FROM pg_index WHERE indrelid::regclass::text LIKE 'groundcount.%' AND indisunique AND NOT"
     " (SELECT attnum FROM pg_attribute WHERE attrelid = indrelid AND attname = 'project_id') = ANY(indkey)"},
};

/// The different statements on the job's tables in a server's log (log_statement=all).
inline QStringList statementsIn(const QString& logFile)
{
    QFile log(logFile);
    if (!log.open(QIODevice::ReadOnly))
        return {};
    static const QRegularExpression kTable("(FROM|JOIN|INTO|UPDATE) groundcount\\.");
    QSet<QString> all;
    const QStringList lines = QString::fromLatin1(log.readAll()).split('\n');
    for (const QString& line : lines)
        if (const auto at = line.indexOf("LOG:  execute <unnamed>: "); at >= 0 && line.contains(kTable))
            all.insert(line.mid(at + 25));
    return all.values();
}

/// "" or what is wrong with a statement.
inline QString faultOf(const QString& sql)
{
    static const QRegularExpression kToken("[A-Za-z_]+|[()]"), kJob("project_id = \\$1|\\(project_id[,)]|s\\.project_id = p\\.project_id"),
        kForbidden("\\b(nextval|currval|serial|LISTEN|NOTIFY|TEMP|TEMPORARY|pg_advisory\\w*|pg_snapshot\\w*|txid\\w*)\\b", QRegularExpression::CaseInsensitiveOption);
    if (!kJob.match(sql).hasMatch())
        return "it is not bound to a job";
    if (kForbidden.match(sql).hasMatch())
        return "it uses what each node has for itself";
    std::vector<bool> amongTargets{false};
    for (auto it = kToken.globalMatch(sql); it.hasNext();) {
        const QString token = it.next().captured().toUpper();
        if (token == "(") {
            amongTargets.push_back(false);
        } else if (token == ")" && amongTargets.size() > 1) {
            amongTargets.pop_back();
        } else if (token == "SELECT") {
            for (const bool inside : amongTargets)
                if (inside)
                    return "a sub-select stands in its target list";
            amongTargets.back() = true;
        } else if (token == "FROM") {
            amongTargets.back() = false;
        }
    }
    return {};
}

}  // namespace distributed
