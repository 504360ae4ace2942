#include "view/photo_file.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QImageReader>

namespace groundcount::view {
namespace {

// A phone's picture has 3 to 12 MB; above this something else was chosen by mistake.
constexpr qint64 kLargestBytes = 30LL * 1024 * 1024;
constexpr int kThumbnailPixels = 480;

std::string said(const char* text, const QString& a, const QString& b = {}, const QString& c = {})
{
    return QCoreApplication::translate("groundcount::view::PhotoFile", text).replace("%1", a).replace("%2", b).replace("%3", c).toStdString();
}

}  // namespace

Result<PhotoFile> readPhoto(const QString& path)
{
    PhotoFile photo;
    photo.name = QFileInfo(path).fileName();
    QFile source(path);
    if (!source.open(QIODevice::ReadOnly))
        return unavailable(said(QT_TRANSLATE_NOOP("groundcount::view::PhotoFile", "%1 cannot be read: %2."), photo.name, source.errorString()));
    if (source.size() > kLargestBytes)
        return refused(said(QT_TRANSLATE_NOOP("groundcount::view::PhotoFile", "%1 has %2 MB; a photo may have at most %3 MB."), photo.name,
                            QString::number(source.size() / (1024 * 1024)), QString::number(kLargestBytes / (1024 * 1024))));
    photo.content = source.readAll();
    QBuffer buffer(&photo.content);
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    const QByteArray format = reader.format();
    if ((format != "jpeg" && format != "png") || reader.read().isNull())
        return refused(said(QT_TRANSLATE_NOOP("groundcount::view::PhotoFile", "%1 is no JPEG or PNG picture that can be shown."), photo.name));
    photo.mediaType = "image/" + format.toStdString();
    return photo;
}

QString thumbnail(const QByteArray& content)
{
    QImage image;
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!image.loadFromData(content) || !buffer.open(QIODevice::WriteOnly))
        return {};
    image.scaled(kThumbnailPixels, kThumbnailPixels, Qt::KeepAspectRatio, Qt::SmoothTransformation).save(&buffer, "PNG");
    return QStringLiteral("data:image/png;base64,") + QString::fromLatin1(bytes.toBase64());
}

}  // namespace groundcount::view
