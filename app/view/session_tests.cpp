// The tests of the book: read at once, or of a long book beside the pages (decision 0012).
#include "book/arrivals.h"
#include "book/read_view.h"
#include "book/state_query.h"
#include "book/store.h"
#include "book/test_columns.h"
#include "book/test_stream.h"
#include "view/session.h"

#include <utility>

namespace groundcount::view {
namespace {

std::int64_t readAtOnce = 30'000;  // a third of a second

}  // namespace

struct Session::Beside {
    Result<std::vector<book::TestRow>> tests;
    std::int64_t seen = 0;
};

bool Session::takeArrivals()
{
    if (!m_seen)
        return false;
    auto arrived = book::arrivedSince(*m_store, *m_seen, m_snapshot.sites);
    if (!arrived)
        return false;
    book::takeOver(m_snapshot.tests, std::move(arrived->tests));
    book::takeOver(m_snapshot.sites, arrived->sites);
    if (arrived->onlyTests)
        m_seen = arrived->upTo;
    return arrived->onlyTests && !m_readAllAgain;
}

void Session::setReadAtOnce(std::int64_t tests)
{
    readAtOnce = tests;
}

void Session::readTests(std::string& trouble)
{
    if (book::hasMoreTests(*m_store, readAtOnce).value_or(false))
        readLongTests(trouble);
    else
        readTestsNow(trouble);
}

void Session::readTestsNow(std::string& trouble)
{
    m_besideWork.stop();
    m_columns.reset();
    m_seen.reset();
    if (const auto last = m_store->lastRow())
        m_seen = *last;
    if (auto tests = book::StateQuery(*m_store).tests({}))
        m_snapshot.tests = std::move(*tests);
    else if (trouble.empty())
        trouble = tests.error().what;
}

void Session::readLongTests(std::string& trouble)
{
    // The rows that are there, if any, stay until the new ones are whole.
    if (m_snapshot.tests.empty() && !m_columns) {
        if (auto columns = book::testColumns(*m_store))
            m_columns = std::make_unique<const book::TestColumns>(std::move(*columns));
        else if (trouble.empty())
            trouble = columns.error().what;
    }
    // On the watch's own thread: a book may be opened on another one.
    if (!m_besideWork.isRunning())
        QMetaObject::invokeMethod(this, [this] { readTestsBeside(); });
}

void Session::readTestsBeside()
{
    if (m_besideWork.isRunning())
        return;
    auto opened = m_store->readBeside();
    if (!opened) {  // the pages wait for it then
        std::string trouble;
        readTestsNow(trouble);
        setTrouble(QString::fromStdString(trouble));
        emit recordsChanged();
        emit readingChanged();
        return;
    }
    m_beside = std::make_shared<Beside>();
    m_besideWork.start([into = m_beside, store = std::make_shared<book::Store>(std::move(*opened))](const std::atomic<bool>& stop) {
        const auto moment = book::ReadView::begin(*store);
        const auto last = store->lastRow();
        into->tests = !moment ? tl::unexpected(moment.error()) : !last ? tl::unexpected(last.error()) : book::allTests(*store, stop);
        into->seen = last.value_or(0);
    });
}

void Session::takeTests()
{
    const bool isFirst = isReading();
    std::string trouble;
    const auto read = std::exchange(m_beside, nullptr);
    if (read->tests) {
        m_snapshot.tests = std::move(*read->tests);
        m_columns.reset();
        m_seen = read->seen;
        if (m_listsSeen < read->seen)
            readLists(trouble);
    } else {
        readTestsNow(trouble);
    }
    refresh();  // what came since the moment that was read
    if (!trouble.empty())
        setTrouble(QString::fromStdString(trouble));
    if (isFirst)
        emit readingChanged();
}

}  // namespace groundcount::view
