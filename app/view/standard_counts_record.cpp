#include "view/standard_counts.h"

#include "book/kinds.h"
#include "book/store.h"
#include "view/sealed_words.h"

#include <algorithm>

namespace groundcount::view {

using method::Channel;

Result<std::vector<book::Entry>> StandardCounts::entries() const
{
    const Judged density = judge(Channel::Density), moisture = judge(Channel::Moisture);
    if (density.today.empty() || moisture.today.empty())
        return refused("Both standard counts must be typed.");
    book::Body body{{"gauge", m_subject}, {"density_count", density.today}, {"moisture_count", moisture.today}};
    body["density_before"] = density.before;
    body["moisture_before"] = moisture.before;
    if (howIndex() == 0) {
        for (const auto& [key, channel] : {std::pair("density_counts", Channel::Density), std::pair("moisture_counts", Channel::Moisture)}) {
            book::Body counts = book::Body::array();
            for (int i = 1; i <= countsAsked(); ++i)
                counts.push_back(typed(keyOf(channel, i)).toStdString());
            body[key] = counts;
        }
    }
    body["seconds"] = howIndex() == 1 ? kAutomaticSeconds : countsAsked() * kSecondsPerCount;
    const bool accepted = density.verdict && moisture.verdict && density.verdict->isAccepted && moisture.verdict->isAccepted;
    body["accepted"] = accepted;
    for (const auto& [stem, judged] : {std::pair("density", &density), std::pair("moisture", &moisture)}) {
        if (!judged->verdict)
            continue;
        body[std::string(stem) + "_mean"] = reportedText(judged->verdict->base, 2, TieRule::HalfEven);
        body[std::string(stem) + "_deviation_pct"] = reportedText(judged->verdict->deviationPercent, 3, TieRule::HalfEven);
    }
    if (const auto rules = m_session->store().records({.subject = m_session->job().ruleSet, .kind = "rule-set"}); rules && !rules->empty() && !m_session->job().ruleSet.empty())
        body["rule_set"] = rules->back().hash;
    body["rule"] = density.verdict ? density.verdict->rule : "none";
    book::Body seen = book::Body::array();
    for (const auto& check : kChecks)
        if (!typed("seen." + check).isEmpty())
            seen.push_back(check.toStdString());
    body["seen"] = seen;
    if (!accepted)
        put(body, "override_reason", "reason");
    book::Entry entry;
    entry.kind = "standard-count";
    entry.subject = Session::newId();
    entry.body = std::move(body);
    return std::vector{entry};
}

}  // namespace groundcount::view
