#include "gis/test_rows.h"

#include <cmath>

namespace groundcount::gis {
namespace {

constexpr int kUtc = 100;  // OGR's time zone flag

OGRFieldType typeOf(FieldForm form)
{
    switch (form) {
    case FieldForm::Text:
        return OFTString;
    case FieldForm::Real:
        return OFTReal;
    case FieldForm::Whole:
        return OFTInteger;
    case FieldForm::Instant:
        return OFTDateTime;
    }
    return OFTString;
}

const char* domainOf(FieldWords words)
{
    return words == FieldWords::States ? "test_state" : words == FieldWords::Purposes ? "test_purpose" : "";
}

bool addDomain(GDALDataset& dataset, FieldWords words)
{
    std::vector<std::string> list = wordsOf(words);
    std::vector<OGRCodedValue> values;
    for (std::string& one : list)
        values.push_back({CPLStrdup(one.c_str()), CPLStrdup(one.c_str())});
    std::string whyNot;
    return dataset.AddFieldDomain(std::make_unique<OGRCodedFieldDomain>(domainOf(words), "", OFTString, OFSTNone, std::move(values)), whyNot);
}

std::string quoted(const std::string& text)
{
    std::string out = "'";
    for (const char c : text)
        out += c == '\'' ? std::string("''") : std::string(1, c);
    return out + "'";
}

void set(OGRFeature& feature, int column, const FieldValue& value)
{
    if (const auto* text = std::get_if<std::string>(&value))
        feature.SetField(column, text->c_str());
    else if (const auto* real = std::get_if<double>(&value))
        feature.SetField(column, *real);
    else if (const auto* whole = std::get_if<int>(&value))
        feature.SetField(column, *whole);
    else if (const auto* utc = std::get_if<Instant>(&value))
        feature.SetField(column, utc->year, utc->month, utc->day, utc->hour, utc->minute, static_cast<float>(utc->second), kUtc);
    else
        feature.SetFieldNull(column);
}

}  // namespace

bool hasPosition(const book::TestRow& test)
{
    return std::isfinite(test.north) && std::isfinite(test.east) && (test.north != 0 || test.east != 0);
}

std::string latestTime(const std::vector<const book::TestRow*>& tests)
{
    std::string latest = "1970-01-01T00:00:00.000Z";
    for (const auto* test : tests)
        for (const auto* text : {&test->startedAt, &test->verdictAt})
            if (const auto utc = parseInstant(*text))
                latest = std::max(latest, instantText(*utc));
    return latest;
}

bool createFields(GDALDataset& dataset, OGRLayer& layer, const std::vector<TestField>& fields, FieldLists lists)
{
    const bool written = lists == FieldLists::Written;
    for (const auto words : {FieldWords::States, FieldWords::Purposes})
        if (written && !addDomain(dataset, words))
            return false;
    for (const TestField& field : fields) {
        OGRFieldDefn definition(field.name.c_str(), typeOf(field.form));
        if (written)
            definition.SetDomainName(domainOf(field.words));
        if (layer.CreateField(&definition) != OGRERR_NONE)
            return false;
    }
    return true;
}

bool describeFields(GDALDataset& dataset, const std::string& layer, const std::vector<TestField>& fields)
{
    for (const TestField& field : fields) {
        const std::string title = quoted(field.title);
        const std::string what = quoted(field.what);
        const std::string where = quoted(layer);
        // Columns with a domain have their row already.
        const std::string sql = field.words == FieldWords::Any
                                    ? "INSERT INTO gpkg_data_columns (table_name, column_name, name, title, description) VALUES (" + where + ", "
                                          + quoted(field.name) + ", " + title + ", " + title + ", " + what + ")"
                                    : "UPDATE gpkg_data_columns SET name = " + title + ", title = " + title + ", description = " + what
                                          + " WHERE table_name = " + where + " AND column_name = " + quoted(field.name);
        CPLErrorReset();
        dataset.ReleaseResultSet(dataset.ExecuteSQL(sql.c_str(), nullptr, nullptr));
        if (CPLGetLastErrorType() >= CE_Failure)
            return false;
    }
    return true;
}

Result<OGRFeatureUniquePtr> featureOf(const book::TestRow& test, const std::vector<TestField>& fields, const ExportOptions& options,
                                      OGRFeatureDefn& definition)
{
    OGRFeatureUniquePtr feature{OGRFeature::CreateFeature(&definition)};
    int column = 0;
    for (const TestField& field : fields) {
        const FieldValue value = field.value(test, options);
        if (const auto* wrong = std::get_if<Unreadable>(&value))
            return refused("Test " + test.number + ": " + field.name + " must be " + (field.form == FieldForm::Real ? "a decimal number" : "a UTC time")
                           + "; it is \"" + wrong->text + "\".");
        set(*feature, column++, value);
    }
    if (hasPosition(test))
        feature->SetGeometryDirectly(new OGRPoint(test.east, test.north));
    return feature;
}

}  // namespace groundcount::gis
