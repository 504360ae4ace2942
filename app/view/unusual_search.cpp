#include "view/unusual_search.h"

namespace groundcount::view {

UnusualSearch::UnusualSearch(QObject* parent) : QObject(parent)
{
    connect(this, &UnusualSearch::over, this, &UnusualSearch::end, Qt::QueuedConnection);
}

UnusualSearch::~UnusualSearch()
{
    if (m_thread.joinable())
        m_thread.join();
}

void UnusualSearch::start(const book::Store& store, const method::RuleSet& rules, std::int64_t state)
{
    if (state == m_state)
        return;
    m_state = state;
    if (m_running)
        m_next = std::make_unique<std::pair<const book::Store*, method::RuleSet>>(&store, rules);
    else
        run(store, rules);
}

void UnusualSearch::run(const book::Store& store, const method::RuleSet& rules)
{
    if (m_thread.joinable())
        m_thread.join();
    m_running = true;
    emit changed();
    m_thread = std::thread([this, opened = std::make_shared<Result<book::Store>>(store.readBeside()), rules] {
        m_found = opened->and_then([&](book::Store& beside) { return book::unusual(beside, rules); });
        emit over();
    });
}

void UnusualSearch::end()
{
    m_thread.join();
    m_running = false;
    auto found = std::move(m_found);
    m_trouble = found ? QString() : QString::fromStdString(found.error().what);
    m_lines = found ? std::move(*found) : std::vector<book::UnusualLine>();
    if (const auto next = std::move(m_next))
        run(*next->first, next->second);
    else
        emit changed();
}

}  // namespace groundcount::view
