#include "view/hazard_card.h"

#include "book/kinds.h"
#include "method/site/heading.h"

#include <algorithm>
#include <cmath>

namespace groundcount::view {

bool HazardCard::isNear(const std::string& kind) const
{
    switch (m_hazard) {
    case Hazard::VerticalFace: return kind == "wall" || kind == "structure" || kind == "pipe";
    case Hazard::Vehicles: return kind == "vehicle";
    case Hazard::OtherGauges: return kind == "gauge";
    case Hazard::People: return false;
    }
    return false;
}

void HazardCard::measureOnMap(const RuleLength& required)
{
    m_onMap.reset();
    if (!m_facts.place || !m_facts.place->north)
        return;
    for (const auto& obstacle : m_facts.book->obstacles()) {
        if (!isNear(obstacle.obstacleKind))
            continue;
        const auto heading = method::headingOf({m_facts.book->gridLength(obstacle.north - *m_facts.place->north), m_facts.book->gridLength(obstacle.east - *m_facts.place->east)});
        if (!heading)
            continue;
        const double away = std::max(0.0, required.of(heading->distance) - required.of(Length::feet(obstacle.radiusFt)));
        // Own circle and the obstacle's are added, not squared and rooted: both may be off the same way.
        const double unsure = required.of(Length::metres(m_facts.place->accuracyMetres)) + required.of(Length::feet(obstacle.uncertaintyFt));
        if (!m_onMap || away - unsure < m_onMap->value - m_onMap->uncertainty)
            m_onMap = Measured{away, unsure, QString::fromStdString(obstacle.name)};
    }
    if (m_hazard == Hazard::OtherGauges)
        measureOtherGauges(required);
}

void HazardCard::measureOtherGauges(const RuleLength& required)
{
    // A gauge stands where its newest test is, as long as that test has no verdict yet.
    const std::string own = book::textAt(m_facts.placeBody, "gauge");
    for (const auto& test : m_facts.book->tests()) {
        if (test.id == m_facts.testId || test.gauge == own || test.state != book::TestState::Open || !m_facts.session->isToday(test.startedAt, test.offsetMinutes))
            continue;
        const auto heading = method::headingOf({m_facts.book->gridLength(test.north - *m_facts.place->north), m_facts.book->gridLength(test.east - *m_facts.place->east)});
        if (!heading)
            continue;
        const double sigma = std::hypot(test.sigmaNorthM.value_or(0), test.sigmaEastM.value_or(0));
        const double unsure = required.of(Length::metres(m_facts.place->accuracyMetres + 2 * sigma));
        const double away = required.of(heading->distance);
        if (!m_onMap || away - unsure < m_onMap->value - m_onMap->uncertainty)
            m_onMap = Measured{away, unsure, QString::fromStdString(test.gaugeName)};
    }
}

void HazardCard::derive(const QJsonObject& texts, bool sealed)
{
    m_texts = texts;
    m_isSealed = sealed;
    const RuleLength need = required();
    measureOnMap(need);
    m_measured.reset();
    m_answer.reset();
    m_knownBy.clear();
    bool isTaped = false;
    const double tape = typed("tape").toDouble(&isTaped);
    if (isTaped) {
        m_measured = Measured{tape, typed("spread").toDouble(), m_onMap ? m_onMap->name : QString()};
        m_knownBy = typed("by") == "map" ? typed("by") : QStringLiteral("tape");
    } else if (typed("by") == "eye") {
        m_knownBy = QStringLiteral("eye");
    } else if (m_onMap && typed("remedy") != "moved" && typed("remedy") != "waited") {
        m_measured = m_onMap;
        m_knownBy = QStringLiteral("map");
    }
    if (m_measured) {
        const auto answer = method::judgeClearance(need.lengthOf(m_measured->value), need.lengthOf(m_measured->uncertainty), need.length(),
                                                   need.inclusive ? method::Inclusive::Yes : method::Inclusive::No);
        if (answer)
            m_answer = *answer;
    }
    settle();
    draw(need);
    offerActs();
    emit changed();
}

}  // namespace groundcount::view
