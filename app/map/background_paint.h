#pragma once

#include "map/map_scene.h"
#include "method/error.h"

#include <memory>
#include <string>

namespace groundcount::map {

/// How far a background gives way, so that marks stay readable on it: towards white by day and in the sun, towards black at dusk.
enum class BackgroundTone { Day, Sun, Dusk };

/// An open background of a book (gis/background.h), shared by the maps that show it.
class BackgroundPicture {
public:
    /// @error as gis::Background::open
    static Result<std::shared_ptr<BackgroundPicture>> open(const std::string& path);
    ~BackgroundPicture();

    /// Paints it for a scene with this origin. The painter keeps the picture alive and may run on any thread.
    static GroundPainter painter(const std::shared_ptr<BackgroundPicture>& picture, MapVertex origin, BackgroundTone tone);

private:
    struct Inner;
    explicit BackgroundPicture(std::unique_ptr<Inner> inner);
    QImage paint(const MapWindow& window, QSize devicePixels, MapVertex origin, BackgroundTone tone) const;
    std::unique_ptr<Inner> m_inner;
};

}  // namespace groundcount::map
