#pragma once

#include "book/review.h"

#include <QObject>
#include <QString>

#include <cstdint>
#include <memory>
#include <thread>
#include <vector>

namespace groundcount::view {

/// Looks through a whole book for what is unusual, on a thread of its own with its own store: a programme of a million tests
/// takes its time, and the pages go on. It belongs to the session, so that a page that is left does not wait for it and one
/// that is opened again finds the answer.
class UnusualSearch : public QObject {
    Q_OBJECT
public:
    explicit UnusualSearch(QObject* parent = nullptr);
    ~UnusualSearch() override;

    /// Starts a search unless this state of the book was looked through already; one that runs is asked again when it ends.
    /// @param store outlives this object; asked on its own thread for one to read beside it
    /// @param state grows with each record: Store::lastRow
    void start(const book::Store& store, const method::RuleSet& rules, std::int64_t state);
    bool isRunning() const { return m_running; }
    const std::vector<book::UnusualLine>& lines() const { return m_lines; }
    /// The sentence when the book cannot be looked through, else "".
    QString trouble() const { return m_trouble; }

signals:
    void changed();
    /// From the search's own thread: it is over.
    void over();

private:
    void run(const book::Store& store, const method::RuleSet& rules);
    void end();

    std::thread m_thread;
    Result<std::vector<book::UnusualLine>> m_found;  // the thread's until it is joined
    std::vector<book::UnusualLine> m_lines;
    QString m_trouble;
    std::unique_ptr<std::pair<const book::Store*, method::RuleSet>> m_next;
    std::int64_t m_state = -1;
    bool m_running = false;
};

}  // namespace groundcount::view
