#include "view/obstacle_sheet.h"

#include "method/site/heading.h"
#include "view/figure_text.h"
#include "view/sheet_book.h"

#include <cmath>

namespace groundcount::view {
namespace {

const char* const kKinds[] = {"wall", "structure", "pipe", "vehicle", "gauge"};
constexpr int kKindCount = 5;
constexpr int kDirectionCount = 8;
constexpr double kDegreesApart = 45;
// A direction by eye is one of eight: it may be off by half a step either way.
constexpr double kDirectionUnsureDeg = kDegreesApart / 2;

std::string decimal(double value, int places)
{
    return QString::number(value, 'f', places).toStdString();
}

}  // namespace

void ObstacleSheet::open(double north, double east, double uncertaintyMetres, const QString& placeText)
{
    m_north = north;
    m_east = east;
    m_uncertaintyMetres = std::isfinite(uncertaintyMetres) ? uncertaintyMetres : 0;
    m_placeText = placeText;
    m_isOpen = true;
    m_kind = m_direction = -1;
    m_distance.clear();
    m_name.clear();
    m_trouble.clear();
    derive();
}

void ObstacleSheet::openAt(double north, double east, double uncertaintyMetres, const QString& placeText)
{
    m_byTape = false;
    open(north, east, uncertaintyMetres, placeText);
}

void ObstacleSheet::openFrom(double north, double east, double uncertaintyMetres, const QString& placeText)
{
    m_byTape = true;
    open(north, east, uncertaintyMetres, placeText);
}

void ObstacleSheet::setName(const QString& name)
{
    m_name = name;
    derive();
}

void ObstacleSheet::pickKind(int index)
{
    if (index < 0 || index >= kKindCount)
        return;
    m_kind = index;
    derive();
}

void ObstacleSheet::pickDirection(int index)
{
    if (index < 0 || index >= kDirectionCount)
        return;
    m_direction = index;
    derive();
}

void ObstacleSheet::typeDistance()
{
    auto* entry = new NumberEntry(tr("By tape"), tr("to the nearest edge"), tr("Use the tape"), this);
    entry->add(tr("Distance"), QStringLiteral("ft"), m_distance);
    connect(entry, &NumberEntry::typed, this, [this, entry] {
        m_distance = entry->typedAt(0);
        entry->setNotYet(m_distance.isEmpty() ? tr("Type the distance") : QString());
        derive();
    });
    connect(entry, &NumberEntry::finished, this, &ObstacleSheet::closeEntry);
    entry->setNotYet(m_distance.isEmpty() ? tr("Type the distance") : QString());
    setEntry(entry);
}

void ObstacleSheet::setEntry(NumberEntry* entry)
{
    if (m_entry)
        m_entry->deleteLater();
    m_entry = entry;
    emit entryChanged();
}

void ObstacleSheet::closeEntry()
{
    setEntry(nullptr);
}

void ObstacleSheet::close()
{
    m_isOpen = false;
    setEntry(nullptr);
    emit changed();
}

void ObstacleSheet::derive()
{
    m_distanceText = m_distance.isEmpty() ? tr("Enter the tape") : tr("%1 ft by tape").arg(m_distance);
    m_notYet = m_kind < 0                                   ? tr("Seal: say what it is")
               : m_byTape && m_distance.isEmpty()           ? tr("Seal: enter the tape")
               : m_byTape && m_direction < 0                ? tr("Seal: say in which direction")
                                                            : QString();
    emit changed();
}

bool ObstacleSheet::seal()
{
    if (!m_notYet.isEmpty()) {
        m_trouble = m_notYet;
        emit changed();
        return false;
    }
    double north = m_north;
    double east = m_east;
    double unsure = m_uncertaintyMetres;
    if (m_byTape) {
        const Length away = Length::feet(m_distance.toDouble());
        const auto shift = method::shiftOf(away, m_direction * kDegreesApart);
        const auto across = method::acrossOf(away, kDirectionUnsureDeg);
        if (!shift || !across) {
            m_trouble = QString::fromStdString(shift ? across.error().what : shift.error().what);
            emit changed();
            return false;
        }
        north += shift->north.metres() / m_session->metresPerGridUnit();
        east += shift->east.metres() / m_session->metresPerGridUnit();
        unsure += across->metres();
    }
    const SheetBook book(*m_session);
    const QString name = m_name.trimmed().isEmpty() ? kindWords()[m_kind] : m_name.trimmed();
    const book::Body body{{"name", name.toStdString()}, {"obstacle_kind", kKinds[m_kind]}, {"grid_north_" + book.gridKey(), decimal(north, 3)},
                          {"grid_east_" + book.gridKey(), decimal(east, 3)}, {"radius_ft", "0"}, {"uncertainty_ft", decimal(Length::metres(unsure).feet(), 1)}};
    const auto record = m_session->seal("obstacle", Session::newId(), body);
    m_trouble = record ? QString() : QString::fromStdString(record.error().what);
    if (!record) {
        emit changed();
        return false;
    }
    close();
    emit sealed();
    return true;
}

}  // namespace groundcount::view
