#include "view/fonts.h"

#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>

namespace groundcount::view {

Result<QString> readFonts()
{
    for (const char* weight : {"Medium", "Bold", "Black"}) {
        const QString path = QStringLiteral(":/groundcount/fonts/Lato-%1.ttf").arg(QLatin1String(weight));
        const int id = QFontDatabase::addApplicationFont(path);
        const QStringList families = QFontDatabase::applicationFontFamilies(id);
        if (id < 0 || families.isEmpty()) {
            return unavailable("The font file " + path.toStdString() + " could not be read from the program.");
        }
    }
    // The heavier files answer to "Lato" with a style of their own; "Lato" is the family they all join.
    return QStringLiteral("Lato");
}

Result<QString> useFonts(Result<QString> family)
{
    if (family) {
        QFont font(*family);
        font.setPixelSize(16);
        font.setStyleStrategy(QFont::PreferNoShaping);  // kerned by the font's own table; scripts that need shaping get it
        QGuiApplication::setFont(font);
    }
    return family;
}

Result<QString> loadFonts()
{
    return useFonts(readFonts());
}

} // namespace groundcount::view
