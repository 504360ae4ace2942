#pragma once

#include <QTranslator>

namespace groundcount::view {

/// Translations of this program. Qt asks for a view-model's texts by its full name, groundcount::view::LotsView; lupdate, which reads no
/// headers, lists most of them under the last part. A text that is not found under the full name is looked up under that.
class TextTranslator : public QTranslator {
public:
    using QTranslator::QTranslator;
    QString translate(const char* context, const char* text, const char* note, int count) const override;
};

}  // namespace groundcount::view
