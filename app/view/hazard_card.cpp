#include "view/hazard_card.h"

#include "book/kinds.h"
#include "view/figure_text.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace groundcount::view {
namespace {

struct HazardWords {
    const char* key;
    const char* record;
    const char* limit;
};
constexpr std::array<HazardWords, 4> kWords{{{"face", "vertical face", "clearance.vertical_face"},
                                             {"people", "people", "clearance.people"},
                                             {"vehicles", "vehicles", "clearance.vehicles"},
                                             {"gauges", "other gauges", "clearance.other_gauges"}}};

const HazardWords& wordsOf(Hazard hazard)
{
    return kWords[static_cast<std::size_t>(hazard)];
}

QString lengthText(double value, const RuleLength& unit)
{
    // What is far away in inches is said in feet.
    if (unit.unit == QStringLiteral("in.") && value >= 120)
        return figureText(unit.lengthOf(value).feet(), 0) + QStringLiteral(" ft");
    const int places = value == std::floor(value) ? 0 : 1;
    return figureText(value, places) + ' ' + unit.unit;
}

}  // namespace

HazardCard::HazardCard(Hazard hazard, SheetFacts& facts, QObject* parent) : QObject(parent), m_hazard(hazard), m_facts(facts) {}

QString HazardCard::key() const
{
    return QString::fromLatin1(wordsOf(m_hazard).key);
}

std::string HazardCard::recordWord() const
{
    return wordsOf(m_hazard).record;
}

QString HazardCard::name() const
{
    switch (m_hazard) {
    case Hazard::VerticalFace: return tr("Vertical face");
    case Hazard::People: return tr("People");
    case Hazard::Vehicles: return tr("Vehicles");
    case Hazard::OtherGauges: return tr("Other gauges");
    }
    return {};
}

QString HazardCard::actWord(Act act) const
{
    switch (act) {
    case Act::TrenchCorrection: return tr("Trench correction");
    case Act::MoveTest: return tr("Move the test");
    case Act::EnterTape: return tr("Enter the tape");
    case Act::NoneInside: return m_hazard == Hazard::VerticalFace ? tr("None near") : tr("None inside");
    case Act::HaveMoved: return tr("Have it moved");
    case Act::HaveWaited: return tr("Wait till clear");
    }
    return {};
}

RuleLength HazardCard::required() const
{
    return m_facts.book->length(wordsOf(m_hazard).limit);
}

void HazardCard::say(const QJsonObject& texts)
{
    if (!m_isSealed)
        emit typedText(texts);
}

void HazardCard::act(int index)
{
    if (m_isSealed || index < 0 || index >= static_cast<int>(m_actList.size()))
        return;
    switch (m_actList[static_cast<std::size_t>(index)]) {
    case Act::TrenchCorrection:
        say({{QStringLiteral("remedy"), QStringLiteral("trench correction")}});
        break;
    case Act::MoveTest:
        emit moveWanted();
        break;
    case Act::EnterTape:
        emit tapeWanted();
        break;
    case Act::NoneInside:
        say({{QStringLiteral("by"), QStringLiteral("eye")}});
        break;
    case Act::HaveMoved:
        say({{QStringLiteral("remedy"), QStringLiteral("moved")}, {QStringLiteral("tape"), QString()}, {QStringLiteral("by"), QString()}});
        break;
    case Act::HaveWaited:
        say({{QStringLiteral("remedy"), QStringLiteral("waited")}, {QStringLiteral("tape"), QString()}, {QStringLiteral("by"), QString()}});
        break;
    }
}

void HazardCard::overrideWith(const QString& reason)
{
    say({{QStringLiteral("reason"), reason.trimmed()}});
}

void HazardCard::startOver()
{
    if (m_isSettled)
        say({{QStringLiteral("by"), QString()}, {QStringLiteral("tape"), QString()}, {QStringLiteral("remedy"), QString()}, {QStringLiteral("reason"), QString()}});
}

void HazardCard::settle()
{
    const QString need = lengthText(required().value, required());
    m_remark.clear();
    m_wantsTrenchOffset = false;
    m_isSettled = m_isOverridden = false;
    m_mark = Mark::CannotTell;
    m_word = tr("Not known");
    m_known = tr("%1 needed").arg(need);
    if (m_knownBy == "eye") {
        m_isSettled = true;
        m_mark = Mark::Clear;
        m_word = m_hazard == Hazard::VerticalFace ? tr("None near") : tr("None inside");
        m_known = m_hazard == Hazard::VerticalFace ? tr("Within %1, by eye").arg(need) : tr("Ring of %1, by eye").arg(need);
    } else if (m_measured && m_answer) {
        const QString thing = m_measured->name.isEmpty() ? QString() : m_measured->name + QStringLiteral(", ");
        m_known = m_knownBy == "tape" ? (thing.isEmpty() ? tr("By tape") : thing + tr("by tape"))
                                      : thing + tr("from the map, ±%1").arg(lengthText(m_measured->uncertainty, required()));
        m_isSettled = *m_answer == method::ClearanceAnswer::Clear;
        m_mark = m_isSettled ? Mark::Clear : *m_answer == method::ClearanceAnswer::TooClose ? Mark::TooClose : Mark::CannotTell;
        m_word = m_isSettled ? tr("Clear") : m_mark == Mark::TooClose ? tr("Too close") : tr("Cannot tell");
        if (m_isSettled)
            m_known = thing + tr("at %1, %2 needed").arg(lengthText(m_measured->value, required()), need);
        if (m_isSettled && m_knownBy == "map" && !m_isSealed)
            m_remark = tr("The map knows only what was placed on it. Look round for anything nearer.");
    } else if (typed("remedy") == "moved") {
        m_remark = tr("Asked to move. Say so when it stands outside.");
    } else if (typed("remedy") == "waited") {
        m_remark = tr("Waiting. Say so when nobody is inside.");
    }
    if (m_mark != Mark::TooClose)
        return;
    if (typed("remedy") == "trench correction") {
        const auto& gauge = m_facts.session->gauge();
        if (m_isSealed || (gauge && m_facts.book->hasOffset(gauge->id, "trench"))) {
            m_isSettled = true;
            m_known = tr("%1, with the trench correction").arg(lengthText(m_measured->value, required()));
        } else {
            m_wantsTrenchOffset = true;
            m_remark = tr("No trench offset of today is in the book for this gauge. Take standard counts in and outside the trench first, or move the test.");
        }
    }
    if (!m_isSettled && !typed("reason").isEmpty()) {
        m_isSettled = m_isOverridden = true;
        m_known = tr("%1, overridden: %2").arg(lengthText(m_measured->value, required()), typed("reason"));
        m_remark = tr("Information only.");
    }
}

void HazardCard::draw(const RuleLength& need)
{
    LimitReading reading{.low = need.value, .high = {}, .value = {}, .spread = {}};
    if (m_measured) {
        reading.value = m_measured->value;
        reading.spread = m_measured->uncertainty;
    }
    m_line = LimitScale::forDistance(need.value).place(reading, m_mark);
    addLabel(m_line, 0.5, tr("%1 needed").arg(lengthText(need.value, need)), LabelKind::Plain);
    if (m_measured)
        addLabel(m_line, m_line.value, lengthText(m_measured->value, need), LabelKind::Measured);
}

void HazardCard::offerActs()
{
    m_actList.clear();
    m_acts.clear();
    if (m_isSealed || m_isSettled)
        return;
    const bool tooClose = m_mark == Mark::TooClose;
    if (tooClose && m_hazard == Hazard::VerticalFace)
        m_actList = {Act::TrenchCorrection, Act::MoveTest};
    else if (tooClose && m_hazard == Hazard::People)
        m_actList = {Act::EnterTape, Act::HaveWaited};
    else if (tooClose || (m_measured && m_hazard != Hazard::VerticalFace))
        m_actList = {Act::EnterTape, Act::HaveMoved};
    else if (m_measured)
        m_actList = {Act::EnterTape, Act::MoveTest};
    else
        m_actList = {Act::NoneInside, Act::EnterTape};
    for (const auto one : m_actList)
        m_acts.append(actWord(one));
}

Result<book::Body> HazardCard::body() const
{
    if (!m_isSettled)
        return refused(name().toStdString() + " is not settled yet.");
    const RuleLength need = required();
    book::Body body{{"hazard", recordWord()}, {"known_by", m_knownBy.toStdString()}, {"required_" + need.key, need.text}};
    body["answer"] = m_knownBy == "eye" ? std::string("none inside") : std::string(method::clearanceWord(*m_answer));
    if (m_measured && m_knownBy == "tape") {
        body["distance_" + need.key] = typed("tape").toStdString();
    } else if (m_measured) {
        body["distance_" + need.key] = QString::number(m_measured->value, 'f', 2).toStdString();
        body["uncertainty_" + need.key] = QString::number(m_measured->uncertainty, 'f', 2).toStdString();
    }
    if (!typed("remedy").isEmpty() && !m_isOverridden)
        body["remedy"] = typed("remedy").toStdString();
    if (m_isOverridden)
        body["override_reason"] = typed("reason").toStdString();
    return body;
}

QJsonObject HazardCard::textOf(const book::Body& hazard)
{
    const auto text = [&](const char* key) { return QString::fromStdString(book::textAt(hazard, key)); };
    return {{QStringLiteral("by"), text("known_by")},
            {QStringLiteral("tape"), QString::fromStdString(book::withUnit(hazard, "distance", book::Unit::Length).text)},
            {QStringLiteral("spread"), QString::fromStdString(book::withUnit(hazard, "uncertainty", book::Unit::Length).text)},
            {QStringLiteral("remedy"), text("remedy")},
            {QStringLiteral("reason"), text("override_reason")}};
}

}  // namespace groundcount::view
