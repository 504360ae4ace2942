#include "view/fonts.h"

#include "device/system_fonts.h"

#include <QFont>
#include <QFontDatabase>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QResource>

namespace groundcount::view {

namespace {

Result<QString> readFonts()
{
    device::keepSystemFontsSimple();
    for (const char* weight : {"Medium", "Bold", "Black"}) {
        const QString path = QStringLiteral(":/groundcount/fonts/Lato-%1.ttf").arg(QLatin1String(weight));
        // as it lies in the program: Qt's own reading of a file would copy half a megabyte each
        const QResource file(path);
        const auto* bytes = reinterpret_cast<const char*>(file.data());
        const int id = file.isValid() && file.compressionAlgorithm() == QResource::NoCompression
                           ? QFontDatabase::addApplicationFontFromData(QByteArray::fromRawData(bytes, file.size()))
                           : QFontDatabase::addApplicationFont(path);
        const QStringList families = QFontDatabase::applicationFontFamilies(id);
        if (id < 0 || families.isEmpty()) {
            return unavailable("The font file " + path.toStdString() + " could not be read from the program.");
        }
    }
    // The heavier files answer to "Lato" with a style of their own; "Lato" is the family they all join.
    return QStringLiteral("Lato");
}

}  // namespace

Result<QString> loadFonts()
{
    // Once, also where one book after the other is opened: a family that is added again is made ready again.
    static const auto family = readFonts();
    if (family) {
        QFont font(*family);
        font.setPixelSize(16);
        font.setStyleStrategy(QFont::PreferNoShaping);  // kerned by the font's own table; scripts that need shaping get it
        QGuiApplication::setFont(font);
    }
    return family;
}

void warmFonts()
{
    struct Style {
        int pixels;
        QFont::Weight weight;
    };
    // of Theme.qml, as the first page has them in the day's theme and at 100 %
    for (const Style style : {Style{28, QFont::Bold}, {22, QFont::Bold}, {20, QFont::Bold}, {18, QFont::Bold}, {18, QFont::Medium}, {16, QFont::Bold}, {16, QFont::Medium}, {14, QFont::Medium}}) {
        QFont font = QGuiApplication::font();
        font.setPixelSize(style.pixels);
        font.setWeight(style.weight);
        QFontMetricsF(font).horizontalAdvance(QStringLiteral("Lot 1"));
    }
}

} // namespace groundcount::view
