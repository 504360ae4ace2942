#include "map/point_names.h"

namespace groundcount::map {
namespace {

constexpr std::size_t kUsualLength = 48; // a UUID and a number

QString shown(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

}  // namespace

void PointNames::reserve(std::size_t points)
{
    m_text.reserve(points * kUsualLength);
    m_ends.reserve(2 * points);
}

void PointNames::add(std::string_view label, std::string_view id)
{
    for (const std::string_view text : {label, id}) {
        m_text += text;
        m_ends.push_back(static_cast<std::uint32_t>(m_text.size()));
    }
}

std::string_view PointNames::part(std::size_t index) const
{
    const std::size_t from = index == 0 ? 0 : m_ends[index - 1];
    return std::string_view(m_text).substr(from, m_ends[index] - from);
}

QString PointNames::label(std::size_t point) const
{
    return point < size() ? shown(part(2 * point)) : QString();
}

QString PointNames::id(std::size_t point) const
{
    return point < size() ? shown(part(2 * point + 1)) : QString();
}

int PointNames::indexOf(const QString& id) const
{
    const std::string wanted = id.toStdString();
    for (std::size_t point = 0; !wanted.empty() && point < size(); ++point)
        if (part(2 * point + 1) == wanted)
            return static_cast<int>(point);
    return -1;
}

}  // namespace groundcount::map
