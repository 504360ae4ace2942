#include "view/clear_step.h"

#include "book/kinds.h"

#include <algorithm>

namespace groundcount::view {
namespace {

constexpr const char* kTextKeys[] = {"by", "tape", "spread", "remedy", "reason"};

}  // namespace

ClearStep::ClearStep(SheetFacts& facts, QObject* parent) : SheetStep(facts, parent)
{
    for (const auto which : {Hazard::VerticalFace, Hazard::People, Hazard::Vehicles, Hazard::OtherGauges}) {
        auto* card = new HazardCard(which, facts, this);
        connect(card, &HazardCard::typedText, this, [this, card](const QJsonObject& texts) { keep(card->key(), texts); });
        connect(card, &HazardCard::tapeWanted, this, [this, card] { takeTape(card); });
        connect(card, &HazardCard::moveWanted, this, [this, card] { emit moveWanted(tr("moved: %1 too close").arg(card->name().toLower())); });
        m_cards.push_back(card);
    }
}

void ClearStep::keep(const QString& key, const QJsonObject& texts)
{
    QJsonObject prefixed;
    for (auto it = texts.begin(); it != texts.end(); ++it)
        prefixed.insert(key + '.' + it.key(), it.value());
    typeAll(prefixed);
}

void ClearStep::takeTape(HazardCard* card)
{
    const auto need = m_facts.book->length((std::string("clearance.") + (card->recordWord() == "vertical face" ? "vertical_face" : card->recordWord() == "other gauges" ? "other_gauges" : card->recordWord())).c_str());
    auto* entry = new NumberEntry(tr("By tape"), card->name(), tr("Use the tape"), this);
    const std::string key = card->key().toStdString() + ".tape";
    entry->add(tr("Distance"), need.unit, draft().value(QString::fromStdString(key)).toString());
    connect(entry, &NumberEntry::typed, this, [this, card] { keep(card->key(), {{QStringLiteral("by"), QStringLiteral("tape")}, {QStringLiteral("remedy"), QString()}, {QStringLiteral("reason"), QString()}}); });
    connect(card, &HazardCard::changed, entry, [entry, card] {
        const bool typedSome = !entry->typedAt(0).isEmpty();
        entry->setNote(typedSome ? card->property("known").toString() : QString(), typedSome ? card->property("word").toString() : QString(), static_cast<Mark>(card->mark()));
        entry->setNotYet(typedSome ? QString() : tr("Type the distance"));
    });
    entry->setNotYet(entry->typedAt(0).isEmpty() ? tr("Type the distance") : QString());
    open(entry, {key});
}

void ClearStep::addHazard()
{
    if (!isSealed() && m_facts.place && m_facts.place->north)
        emit hazardWanted(*m_facts.place->north, *m_facts.place->east, m_facts.place->accuracyMetres, tr("from test %1").arg(m_facts.number));
}

int ClearStep::unsettled() const
{
    return static_cast<int>(std::count_if(m_cards.begin(), m_cards.end(), [](const HazardCard* card) { return !card->isSettled(); }));
}

bool ClearStep::isOverridden() const
{
    return std::any_of(m_cards.begin(), m_cards.end(), [](const HazardCard* card) { return card->isOverridden(); });
}

void ClearStep::refresh()
{
    for (auto* card : m_cards) {
        QJsonObject texts;
        for (const char* key : kTextKeys) {
            const auto value = draft().value(card->key() + '.' + QLatin1String(key));
            if (value.isString())
                texts.insert(QLatin1String(key), value);
        }
        card->derive(texts, isSealed());
    }
    const int left = unsettled();
    m_summary = left == 0 ? tr("All four settled") : tr("%1 of 4 to settle").arg(left);
    m_rules = tr("Rules: %1").arg(m_facts.book->ruleSetWords());
    setNotYet(left == 0 ? QString() : left == 1 ? tr("Seal: settle 1 hazard first") : tr("Seal: settle %1 hazards first").arg(left));
}

Result<std::vector<book::Entry>> ClearStep::entries() const
{
    book::Body list = book::Body::array();
    for (const auto* card : m_cards) {
        auto one = card->body();
        if (!one)
            return tl::unexpected(one.error());
        list.push_back(std::move(*one));
    }
    return std::vector{entry("clearance", {{"hazards", std::move(list)}})};
}

QJsonObject ClearStep::textOf(const book::Body& clearance)
{
    static const std::pair<const char*, const char*> kKeys[] = {{"vertical face", "face"}, {"people", "people"}, {"vehicles", "vehicles"}, {"other gauges", "gauges"}};
    QJsonObject all;
    for (const auto& hazard : clearance.at("hazards")) {
        for (const auto& [word, key] : kKeys) {
            if (book::textAt(hazard, "hazard") != word)
                continue;
            const QJsonObject texts = HazardCard::textOf(hazard);
            for (auto it = texts.begin(); it != texts.end(); ++it)
                if (!it->toString().isEmpty())
                    all.insert(QLatin1String(key) + '.' + it.key(), it.value());
        }
    }
    return all;
}

}  // namespace groundcount::view
