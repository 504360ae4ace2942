#include "paper/paper_ink.h"

#include <QFontDatabase>

namespace groundcount::paper {
namespace {

// Layout is done in points on a device of 72 dots an inch, where a pixel is a point.
QFont lato(double points, int weight)
{
    QFont font(QStringLiteral("Lato"));
    font.setPixelSize(static_cast<int>(points));
    font.setWeight(static_cast<QFont::Weight>(weight));
    // Any spacing of its own keeps letters apart: a joined "ti" could not be searched for or copied out of the PDF.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.03);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

}  // namespace

QFont bodyFont()
{
    return lato(9, QFont::Medium);
}

QFont labelFont()
{
    return lato(7, QFont::Medium);
}

QFont strongFont()
{
    return lato(9, QFont::Bold);
}

QFont headFont()
{
    return lato(11, QFont::Bold);
}

QFont titleFont()
{
    return lato(18, QFont::Bold);
}

bool loadPaperFonts()
{
    bool all = true;
    for (const char* weight : {"Medium", "Bold", "Black"})
        all = QFontDatabase::addApplicationFont(QStringLiteral(":/groundcount/fonts/Lato-%1.ttf").arg(QLatin1String(weight))) >= 0 && all;
    return all;
}

}  // namespace groundcount::paper
