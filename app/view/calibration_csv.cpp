#include "view/calibration_csv.h"

#include "book/csv_text.h"
#include "method/decimal.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

#include <algorithm>
#include <map>
#include <set>

namespace groundcount::view {
namespace {

constexpr qsizetype kMostFiles = 12;

using Columns = std::map<std::string, std::size_t>;

std::string cell(const book::CsvRow& row, const Columns& columns, const std::string& name)
{
    const auto at = columns.find(name);
    return at == columns.end() || at->second >= row.size() ? std::string() : row[at->second].text;
}

Result<void> take(QJsonObject& into, const QString& key, const book::CsvRow& row, const Columns& columns, const std::string& name)
{
    std::string text = cell(row, columns, name);
    if (text.empty())
        return {};
    if (!Decimal::parse(text))
        return refused("Line " + std::to_string(row.front().line) + ", column \"" + name + "\" must be a decimal number; it is \"" + text + "\".");
    const bool isBelow = text.front() == '-';
    into.insert(key, QString::fromStdString(isBelow ? text.substr(1) : text));
    if (isBelow)
        into.insert(key + ".sign", QStringLiteral("1"));
    return {};
}

}  // namespace

Result<QJsonObject> calibrationFromCsv(std::string_view text, const std::string& densityKey)
{
    const auto rows = book::readCsv(text);
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return refused("The file holds no line; the first must name the columns depth_in, a, b_per_" + densityKey + ", c.");
    const std::string b = "b_per_" + densityKey, slope = "slope_per_" + densityKey, low = "range_low_" + densityKey, high = "range_high_" + densityKey;
    const std::set<std::string> known{"depth_in", "mode", "a", b, "c", low, high, "e", slope};
    Columns columns;
    for (std::size_t i = 0; i < rows->front().size(); ++i) {
        const std::string& name = rows->front()[i].text;
        if (!known.contains(name))
            return refused("Column " + std::to_string(i + 1) + " is called \"" + name + "\"; allowed: depth_in, mode, a, " + b + ", c, " + low + ", " + high + ", e, " + slope + ".");
        if (!columns.emplace(name, i).second)
            return refused("The column \"" + name + "\" stands twice.");
    }
    for (const auto& needed : {std::string("depth_in"), std::string("a"), b, std::string("c"), std::string("e"), slope})
        if (!columns.contains(needed))
            return refused("The column \"" + needed + "\" is missing.");
    QJsonObject texts;
    int curves = 0;
    for (std::size_t i = 1; i < rows->size(); ++i) {
        const auto& row = (*rows)[i];
        if (!cell(row, columns, "depth_in").empty()) {
            const QString stem = 'c' + QString::number(++curves) + '.';
            for (const auto& [key, name] : {std::pair("depth", std::string("depth_in")), std::pair("a", std::string("a")), std::pair("b", b), std::pair("c", std::string("c")),
                                            std::pair("low", low), std::pair("high", high)})
                if (const auto taken = take(texts, stem + QLatin1String(key), row, columns, name); !taken)
                    return tl::unexpected(taken.error());
            for (const char* must : {"a", "b", "c"})
                if (texts.value(stem + QLatin1String(must)).toString().isEmpty())
                    return refused("Line " + std::to_string(row.front().line) + " has a depth but no " + must + ".");
        }
        for (const auto& [key, name] : {std::pair("w.e", std::string("e")), std::pair("w.slope", slope)})
            if (const auto taken = take(texts, QLatin1String(key), row, columns, name); !taken)
                return tl::unexpected(taken.error());
    }
    if (curves == 0)
        return refused("The file holds no curve: no line has a depth_in.");
    if (texts.value(QStringLiteral("w.slope")).toString().isEmpty() || texts.value(QStringLiteral("w.e")).toString().isEmpty())
        return refused("The file holds no water curve: no line has e and " + slope + ".");
    texts.insert(QStringLiteral("n"), QString::number(curves));
    return texts;
}

QStringList csvFilesAround(const QString& bookFolder)
{
    QFileInfoList found;
    QStringList folders{bookFolder};
    folders << QStandardPaths::standardLocations(QStandardPaths::DocumentsLocation) << QStandardPaths::standardLocations(QStandardPaths::DownloadLocation);
    folders.removeDuplicates();
    for (const auto& folder : folders)
        found << QDir(folder).entryInfoList({QStringLiteral("*.csv"), QStringLiteral("*.CSV")}, QDir::Files | QDir::Readable, QDir::Time);
    std::stable_sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.lastModified() > b.lastModified(); });
    QStringList paths;
    for (const auto& file : found)
        if (!paths.contains(file.absoluteFilePath()) && paths.size() < kMostFiles)
            paths << file.absoluteFilePath();
    return paths;
}

}  // namespace groundcount::view
