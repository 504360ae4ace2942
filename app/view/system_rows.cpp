#include "view/system_rows.h"

#include "gis/crs.h"
#include "gis/crs_search.h"

#include <QCoreApplication>

namespace groundcount::view {
namespace {

constexpr std::size_t kSystemsShown = 12;

Row rowOf(const QString& name, const QString& area, int code)
{
    Row row = Row::ofWords(name, area, {});
    row.id = row.figure = QString::number(code);
    return row;
}

}  // namespace

Result<std::vector<Row>> systemRows(const QString& words)
{
    const auto found = gis::findCrs(words.toStdString(), kSystemsShown);
    if (!found)
        return tl::unexpected(found.error());
    std::vector<Row> rows;
    for (const auto& one : *found)
        rows.push_back(rowOf(QString::fromStdString(one.name), QString::fromStdString(one.area), one.epsg));
    bool isCode = false;
    const int code = words.trimmed().section(':', -1).toInt(&isCode);
    if (rows.empty() && isCode)
        if (const auto system = gis::Crs::fromEpsg(code))
            rows.push_back(rowOf(QString::fromStdString(system->name()), {}, code));
    if (rows.empty())
        return refused(QCoreApplication::translate("SystemRows", "No coordinate system has all of the words \"%1\" in its code, name or place.").arg(words.trimmed()).toStdString());
    return rows;
}

QString systemName(int epsg)
{
    const auto system = gis::Crs::fromEpsg(epsg);
    return system ? QString::fromStdString(system->name()) + QStringLiteral(", EPSG:%1").arg(epsg) : QString::fromStdString(system.error().what);
}

}  // namespace groundcount::view
