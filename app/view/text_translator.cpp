#include "view/text_translator.h"

#include <QByteArray>

namespace groundcount::view {

QString TextTranslator::translate(const char* context, const char* text, const char* note, int count) const
{
    const QString found = QTranslator::translate(context, text, note, count);
    const auto colons = found.isEmpty() ? QByteArrayView(context).lastIndexOf(':') : -1;
    return colons < 0 ? found : QTranslator::translate(context + colons + 1, text, note, count);
}

}  // namespace groundcount::view
