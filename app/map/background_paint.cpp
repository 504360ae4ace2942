#include "map/background_paint.h"

#include "gis/background.h"

#include <QPainter>

#include <mutex>

namespace groundcount::map {
namespace {

QColor veil(BackgroundTone tone)
{
    switch (tone) {
    case BackgroundTone::Day: return QColor(255, 255, 255, 80);
    case BackgroundTone::Sun: return QColor(255, 255, 255, 130);
    case BackgroundTone::Dusk: break;
    }
    return QColor(0, 0, 0, 110);
}

}  // namespace

struct BackgroundPicture::Inner {
    gis::Background background;
    std::mutex guard;  // two maps may paint at once; GDAL's dataset serves one thread at a time
};

BackgroundPicture::BackgroundPicture(std::unique_ptr<Inner> inner) : m_inner(std::move(inner)) {}
BackgroundPicture::~BackgroundPicture() = default;

Result<std::shared_ptr<BackgroundPicture>> BackgroundPicture::open(const std::string& path)
{
    auto background = gis::Background::open(path);
    if (!background)
        return tl::unexpected(background.error());
    auto inner = std::unique_ptr<Inner>(new Inner{std::move(*background), {}});
    return std::shared_ptr<BackgroundPicture>(new BackgroundPicture(std::move(inner)));
}

GroundPainter BackgroundPicture::painter(const std::shared_ptr<BackgroundPicture>& picture, MapVertex origin, BackgroundTone tone)
{
    return [picture, origin, tone](const MapWindow& window, QSize devicePixels) { return picture->paint(window, devicePixels, origin, tone); };
}

QImage BackgroundPicture::paint(const MapWindow& window, QSize devicePixels, MapVertex origin, BackgroundTone tone) const
{
    const double ratio = window.size.width() > 0 ? devicePixels.width() / window.size.width() : 1;
    const double west = window.eastAt(0) + origin.east, east = window.eastAt(window.size.width()) + origin.east;
    const double north = window.northAt(0) + origin.north, south = window.northAt(window.size.height()) + origin.north;
    const std::lock_guard lock(m_inner->guard);
    const auto part = m_inner->background.part(west, south, east, north, 1 / (window.pxPerUnit * ratio));
    if (!part || part->width == 0)
        return {};
    const QImage pixels(part->rgba.data(), part->width, part->height, part->width * 4, QImage::Format_RGBA8888);
    QImage image(devicePixels, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.scale(ratio, ratio);
    const QPointF from = window.toScreen(part->west - origin.east, part->north - origin.north);
    const QPointF to = window.toScreen(part->east - origin.east, part->south - origin.north);
    painter.drawImage(QRectF(from, to), pixels);
    painter.setCompositionMode(QPainter::CompositionMode_SourceAtop);
    painter.fillRect(QRectF(from, to), veil(tone));
    return image;
}

}  // namespace groundcount::map
