#include "book/csv_columns.h"

#include "book/seal.h"
#include "method/decimal.h"

namespace groundcount::book {

namespace {

enum class Content { Text, Date, AboveZero, FromZero, Any };
enum class Fill { Needed, MayBeEmpty };

struct ColumnRule {
    const char* name;
    Content content;
    Fill fill;
    std::string FieldTestRow::*into;
};

constexpr ColumnRule kRules[] = {
    {"test_no", Content::Text, Fill::Needed, &FieldTestRow::number},
    {"test_date", Content::Date, Fill::Needed, &FieldTestRow::date},
    {"material", Content::Text, Fill::Needed, &FieldTestRow::material},
    {"proctor_reference", Content::Text, Fill::Needed, &FieldTestRow::standard},
    {"wet_density_lb_ft3", Content::AboveZero, Fill::Needed, &FieldTestRow::wet},
    {"moisture_percent", Content::FromZero, Fill::Needed, &FieldTestRow::content},
    {"max_dry_density_lb_ft3", Content::AboveZero, Fill::Needed, &FieldTestRow::maximum},
    {"optimum_moisture_percent", Content::AboveZero, Fill::Needed, &FieldTestRow::optimum},
    {"min_compaction_percent", Content::AboveZero, Fill::MayBeEmpty, &FieldTestRow::minimum},
    {"max_compaction_percent", Content::AboveZero, Fill::MayBeEmpty, &FieldTestRow::most},
    {"moisture_window_low_points", Content::Any, Fill::MayBeEmpty, &FieldTestRow::windowLow},
    {"moisture_window_high_points", Content::Any, Fill::MayBeEmpty, &FieldTestRow::windowHigh},
    {"reported_dry_density_lb_ft3", Content::AboveZero, Fill::MayBeEmpty, &FieldTestRow::reportedDry},
    {"reported_compaction_percent", Content::AboveZero, Fill::MayBeEmpty, &FieldTestRow::reportedPercent},
};

/// What the field must be, "" when it is.
const char* missed(const std::string& text, Content content)
{
    if (content == Content::Text)
        return "";
    if (content == Content::Date)
        return isDate(text) ? "" : "a date YYYY-MM-DD";
    const auto number = Decimal::parse(text);
    if (content == Content::AboveZero)
        return number && number->value() > 0 ? "" : "a decimal number above 0";
    if (content == Content::FromZero)
        return number && number->value() >= 0 ? "" : "a decimal number of 0 or more";
    return number ? "" : "a decimal number";
}

}  // namespace

Result<CsvColumns> columnsOf(const CsvRow& head)
{
    CsvColumns columns;
    for (std::size_t i = 0; i < head.size(); ++i)
        if (!columns.emplace(head[i].text, i).second)
            return refused("Line " + std::to_string(head[i].line) + ", column " + std::to_string(head[i].column) +
                           ": the column " + head[i].text + " stands twice.");
    for (const ColumnRule& rule : kRules)
        if (rule.fill == Fill::Needed && !columns.contains(rule.name))
            return refused("Line " + std::to_string(head.front().line) + ": the column " + rule.name + " is missing.");
    return columns;
}

Result<FieldTestRow> fieldTestOf(const CsvRow& row, const CsvColumns& columns, std::size_t width)
{
    if (row.size() != width)
        return refused("Line " + std::to_string(row.front().line) + ", column " + std::to_string(std::min(row.size(), width) + 1) +
                       ": a row must have " + std::to_string(width) + " fields; it has " + std::to_string(row.size()) + ".");
    FieldTestRow test;
    test.line = row.front().line;
    for (const ColumnRule& rule : kRules) {
        const auto place = columns.find(rule.name);
        if (place == columns.end())
            continue;
        const CsvField& field = row[place->second];
        const auto wrong = [&](const std::string& what) {
            return refused("Line " + std::to_string(field.line) + ", column " + std::to_string(field.column) + " (" + rule.name +
                           "): " + what);
        };
        if (field.text.empty() && rule.fill == Fill::Needed)
            return wrong("it must not be empty.");
        if (field.text.empty())
            continue;
        if (const std::string allowed = missed(field.text, rule.content); !allowed.empty())
            return wrong("it must be " + allowed + "; it is \"" + field.text.substr(0, 40) + "\".");
        test.*rule.into = field.text;
    }
    return test;
}

}  // namespace groundcount::book
