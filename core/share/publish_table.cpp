#include "share/publish_table.h"

#include "gis/shape_bytes.h"

#include <charconv>
#include <cstdint>
#include <cstring>

namespace groundcount::share {
namespace {

using gis::FieldForm;
using gis::Layer;
using gis::LayerRow;

const char* typeOf(FieldForm form)
{
    switch (form) {
    case FieldForm::Text:
        return "text";
    case FieldForm::Real:
        return "double precision";
    case FieldForm::Whole:
        return "integer";
    case FieldForm::Instant:
        return "timestamp with time zone";
    }
    return "text";
}

std::string geometryOf(const Layer& layer, const Site& site)
{
    const char* kind = layer.kind == gis::ShapeKind::Point ? "Point" : layer.kind == gis::ShapeKind::Line ? "LineString" : "MultiPolygon";
    return site.postgis + ".geometry(" + kind + "," + std::to_string(site.epsg) + ")";
}

/// What tells whether a table can stay: its columns with their types and closed lists, in order. Kept as the table's comment.
std::string shapeOfTable(const Layer& layer, const Site& site)
{
    std::string text = layer.what + "\n" + geometryOf(layer, site);
    for (const auto& field : layer.fields) {
        text += "\n" + field.name + " " + typeOf(field.form);
        for (const auto& word : field.list.words)
            text += "|" + word;
    }
    return text;
}

Result<void> createTable(Connection& server, const Site& site, const Layer& layer, const std::string& table)
{
    std::string columns = "fid integer PRIMARY KEY, geom " + geometryOf(layer, site);
    for (const auto& field : layer.fields) {
        const auto name = server.quoted(field.name);
        if (!name)
            return tl::unexpected(name.error());
        columns += ", " + *name + " " + typeOf(field.form);
        std::string words;
        for (const auto& word : field.list.words) {
            const auto literal = server.literal(word);
            if (!literal)
                return tl::unexpected(literal.error());
            words += (words.empty() ? "" : ", ") + *literal;
        }
        columns += words.empty() ? "" : " CHECK (" + *name + " IN (" + words + "))";
    }
    for (const auto& sql : {"DROP TABLE IF EXISTS " + table, "CREATE TABLE " + table + "(" + columns + ")",
                            "CREATE INDEX ON " + table + " USING gist (geom)"})
        if (const auto done = server.run(sql); !done)
            return tl::unexpected(done.error());
    return {};
}

Result<void> comment(Connection& server, const std::string& on, const std::string& text)
{
    const auto literal = server.literal(text);
    if (!literal)
        return tl::unexpected(literal.error());
    const auto done = server.run("COMMENT ON " + on + " IS " + *literal);
    return done ? Result<void>{} : tl::unexpected(done.error());
}

Result<std::string> tableOf(Connection& server, const Site& site, const Layer& layer)
{
    return server.quoted(layer.name).map([&](const std::string& name) { return site.schema + "." + name; });
}

void addHex(std::string& line, const std::string& bytes)
{
    constexpr char kDigits[] = "0123456789abcdef";
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        line += kDigits[byte >> 4U];
        line += kDigits[byte & 15U];
    }
}

/// WKB with the code of its system, as PostGIS reads it: a flag in the type, then the code.
std::string withSystem(std::string wkb, int epsg)
{
    constexpr std::uint32_t kHasSystem = 0x20000000;
    std::uint32_t type = 0;
    std::memcpy(&type, wkb.data() + 1, sizeof type);
    type |= kHasSystem;
    std::memcpy(wkb.data() + 1, &type, sizeof type);
    const auto code = static_cast<std::int32_t>(epsg);
    wkb.insert(5, reinterpret_cast<const char*>(&code), sizeof code);
    return wkb;
}

/// A text of a COPY line. @source PostgreSQL 15 documentation, COPY, "Text Format"
void addText(std::string& line, const std::string& text)
{
    for (const char c : text)
        switch (c) {
        case '\\': line += "\\\\"; break;
        case '\n': line += "\\n"; break;
        case '\r': line += "\\r"; break;
        case '\t': line += "\\t"; break;
        default: line += c;
        }
}

void addValue(std::string& line, const gis::FieldValue& value)
{
    char digits[32];
    if (const auto* text = std::get_if<std::string>(&value)) {
        addText(line, *text);
    } else if (const auto* real = std::get_if<double>(&value)) {
        line.append(digits, std::to_chars(digits, digits + sizeof digits, *real).ptr);  // the shortest text that gives the same number
    } else if (const auto* whole = std::get_if<int>(&value)) {
        line += std::to_string(*whole);
    } else if (const auto* utc = std::get_if<gis::Instant>(&value)) {
        line += gis::instantText(*utc);
    } else {
        line += "\\N";
    }
}

std::string lineOf(const LayerRow& row, std::int64_t fid, const Layer& layer, int epsg)
{
    std::string line = std::to_string(fid) + "\t";
    if (row.shape.known())
        addHex(line, withSystem(gis::wellKnownBinary(row.shape, layer.kind), epsg));
    else
        line += "\\N";
    for (const auto& value : row.values) {
        line += '\t';
        addValue(line, value);
    }
    return line + '\n';
}

}  // namespace

Result<void> prepareTable(Connection& server, const Site& site, const Layer& layer)
{
    const auto table = tableOf(server, site, layer);
    if (!table)
        return tl::unexpected(table.error());
    const std::string shape = shapeOfTable(layer, site);
    const auto there = server.run("SELECT pg_catalog.obj_description(pg_catalog.to_regclass($1), 'pg_class')", {textOf(*table)});
    if (!there)
        return tl::unexpected(there.error());
    if (there->bytes(0, 0) == shape) {
        const auto emptied = server.run("DELETE FROM " + *table);
        return emptied ? Result<void>{} : tl::unexpected(emptied.error());
    }
    if (const auto made = createTable(server, site, layer, *table); !made)
        return made;
    if (const auto told = comment(server, "TABLE " + *table, shape); !told)
        return told;
    for (const auto& field : layer.fields) {
        const auto name = server.quoted(field.name);
        if (!name)
            return tl::unexpected(name.error());
        if (const auto told = comment(server, "COLUMN " + *table + "." + *name, titleWithUnit(field) + ": " + field.what); !told)
            return told;
    }
    return {};
}

Result<gis::LayerCount> fillTable(Connection& server, const Site& site, const Layer& layer, const gis::ExportOptions& options)
{
    const auto table = tableOf(server, site, layer);
    if (!table)
        return tl::unexpected(table.error());
    gis::LayerCount count{layer.name, 0, 0};
    const auto sent = server.copy("COPY " + *table + " FROM STDIN", [&](const Connection::LineSink& sink) {
        return layer.each([&](const LayerRow& row) -> Result<void> {
            if (options.keepOn && !options.keepOn(static_cast<std::size_t>(count.rows)))
                return refused("Publishing was stopped after " + std::to_string(count.rows) + " rows of " + layer.name + "; the tables are as they were.");
            if (const auto readable = checkReadable(row, layer.fields); !readable)
                return readable;
            ++count.rows;
            count.shapes += row.shape.known() ? 1 : 0;
            return sink(lineOf(row, count.rows, layer, site.epsg));
        });
    });
    return sent ? Result<gis::LayerCount>(count) : tl::unexpected(sent.error());
}

}  // namespace groundcount::share
