#include "gis/layer.h"

namespace groundcount::gis {

Result<void> checkReadable(const LayerRow& row, const std::vector<LayerField>& fields)
{
    for (std::size_t i = 0; i < fields.size(); ++i)
        if (const auto* wrong = std::get_if<Unreadable>(&row.values[i]))
            return refused(row.name + ": " + fields[i].name + " must be " + (fields[i].form == FieldForm::Real ? "a decimal number" : "a UTC time")
                           + "; it is \"" + wrong->text + "\".");
    return {};
}

const char* typeName(FieldForm form)
{
    switch (form) {
    case FieldForm::Text:
        return "TEXT";
    case FieldForm::Real:
        return "REAL";
    case FieldForm::Whole:
        return "MEDIUMINT";
    case FieldForm::Instant:
        return "DATETIME";
    }
    return "TEXT";
}

std::string titleWithUnit(const LayerField& field)
{
    return field.unit.empty() ? field.title : field.title + " (" + field.unit + ")";
}

}  // namespace groundcount::gis
