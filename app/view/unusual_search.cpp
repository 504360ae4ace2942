#include "view/unusual_search.h"

#include <QMetaObject>

namespace groundcount::view {

UnusualSearch::~UnusualSearch()
{
    if (m_thread.joinable())
        m_thread.join();
}

void UnusualSearch::start(const std::string& bookPath, const method::RuleSet& rules, std::int64_t state)
{
    if (state == m_state)
        return;
    m_state = state;
    if (m_running)
        m_next = std::make_unique<std::pair<std::string, method::RuleSet>>(bookPath, rules);
    else
        run(bookPath, rules);
}

void UnusualSearch::run(const std::string& bookPath, const method::RuleSet& rules)
{
    if (m_thread.joinable())
        m_thread.join();
    m_running = true;
    emit changed();
    m_thread = std::thread([this, bookPath, rules] {
        auto store = book::Store::open(bookPath, book::OpenMode::ReadOnly);
        auto found = std::make_shared<Result<std::vector<book::UnusualLine>>>(
            store ? book::unusual(*store, rules) : Result<std::vector<book::UnusualLine>>(tl::unexpected(store.error())));
        QMetaObject::invokeMethod(this, [this, found] { end(std::move(*found)); }, Qt::QueuedConnection);
    });
}

void UnusualSearch::end(Result<std::vector<book::UnusualLine>> found)
{
    m_running = false;
    m_trouble = found ? QString() : QString::fromStdString(found.error().what);
    m_lines = found ? std::move(*found) : std::vector<book::UnusualLine>();
    if (const auto next = std::move(m_next))
        run(next->first, next->second);
    else
        emit changed();
}

}  // namespace groundcount::view
