#pragma once

#include "map/map_scene.h"
#include "view/session.h"

#include <memory>
#include <string>

namespace groundcount::map {
class BackgroundPicture;
}

namespace groundcount::view {

/// Whether the book's background is shown: a setting of this device beside the book, never sealed.
bool isBackgroundShown(Session& session);

/// The background of the open book for its maps, opened once for each state of its file.
class MapBackground {
public:
    /// Lays it under the scene when there is one and it is shown.
    /// @param theme "day", "sun" or "dusk"
    void layUnder(map::MapScene& scene, Session& session, map::MapVertex origin, const QString& theme);

private:
    std::shared_ptr<map::BackgroundPicture> m_picture;
    std::string m_state;  ///< path, size and time of what m_picture shows
};

}  // namespace groundcount::view
