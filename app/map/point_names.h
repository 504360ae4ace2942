#pragma once

#include <QString>

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace groundcount::map {

/// What the points of a scene are called, one text behind the other: a million names lie in some 50 MB and two pieces of memory.
class PointNames {
public:
    void reserve(std::size_t points);
    /// The next point's. @param label "26", "Site 4"; drawn beside the symbol when there is room @param id what `picked` reports; both in UTF-8
    void add(std::string_view label, std::string_view id);

    std::size_t size() const { return m_ends.size() / 2; }
    /// Empty for a point without a name.
    QString label(std::size_t point) const;
    QString id(std::size_t point) const;
    /// The first point of this id, or -1.
    int indexOf(const QString& id) const;

private:
    std::string_view part(std::size_t index) const;

    std::string m_text;
    std::vector<std::uint32_t> m_ends; ///< of each label and id in turn
};

}  // namespace groundcount::map
