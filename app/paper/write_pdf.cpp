#include "paper/pages.h"

#include <QFile>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace groundcount::paper {

Result<void> writePdf(const Document& document, Format format, const QString& path)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return unavailable(path.toStdString() + " cannot be written: " + file.errorString().toStdString() + ".");
    {
        QPdfWriter writer(&file);
        // A dot a point would round every line to whole points; ten times finer is far below what an eye sees.
        constexpr int kDotsPerInch = 720;
        writer.setResolution(kDotsPerInch);
        writer.setPageSize(QPageSize(sizeOf(format), QPageSize::Point));
        writer.setPageMargins(QMarginsF(0, 0, 0, 0));
        writer.setTitle(document.title);
        writer.setCreator(QStringLiteral("Groundcount"));
        const Pages pages(document, format);
        QPainter painter(&writer);
        if (!painter.isActive())
            return unavailable("The pages cannot be drawn into " + path.toStdString() + ".");
        painter.scale(kDotsPerInch / 72.0, kDotsPerInch / 72.0);
        for (int page = 0; page < pages.count(); ++page) {
            if (page > 0)
                writer.newPage();
            pages.paint(painter, page);
        }
    }
    if (!file.commit())
        return unavailable(path.toStdString() + " cannot be written: " + file.errorString().toStdString() + ".");
    return {};
}

}  // namespace groundcount::paper
