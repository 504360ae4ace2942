#include "view/map_background.h"

#include "book/store.h"
#include "gis/background.h"
#include "map/background_paint.h"

#include <filesystem>

namespace groundcount::view {

bool isBackgroundShown(Session& session)
{
    const auto kept = session.isOpen() ? session.store().draft("map", "background") : Result<std::string>(std::string());
    return !kept || kept->find("\"hidden\"") == std::string::npos;
}

void MapBackground::layUnder(map::MapScene& scene, Session& session, map::MapVertex origin, const QString& theme)
{
    if (!session.isOpen() || !isBackgroundShown(session))
        return;
    const std::string path = gis::backgroundPath(session.store().path());
    std::error_code none;
    const auto size = std::filesystem::file_size(path, none);
    if (none) {
        m_picture.reset();
        m_state.clear();
        return;
    }
    const auto written = std::filesystem::last_write_time(path, none).time_since_epoch().count();
    if (const std::string state = path + '|' + std::to_string(size) + '|' + std::to_string(written); state != m_state) {
        m_state = state;
        m_picture = map::BackgroundPicture::open(path).value_or(nullptr);  // its page has the sentence
    }
    if (m_picture)
        scene.ground = map::BackgroundPicture::painter(m_picture, origin,
                                                       theme == QStringLiteral("dusk") ? map::BackgroundTone::Dusk
                                                       : theme == QStringLiteral("sun") ? map::BackgroundTone::Sun : map::BackgroundTone::Day);
}

}  // namespace groundcount::view
