#include "view/server_work.h"

#include "book/bundle.h"
#include "book/store.h"
#include "share/exchange.h"

namespace groundcount::view {
namespace {

book::KeepOn counting(ServerProgress& progress, ServerProgress::Stage stage, const std::atomic<bool>& stop)
{
    return [&progress, stage, &stop](std::size_t count) {
        progress.stage = stage;
        progress.count = count;
        return !stop;
    };
}

void note(ServerOutcome& outcome, const Result<book::BundleReport>& report)
{
    if (!report) {
        outcome.trouble = report.error().what;
        return;
    }
    outcome.taken = report->taken;
    outcome.contents = report->blobs;
    outcome.refused = report->refused;
    outcome.stopped = report->stopped;
}

ServerOutcome unopened(const Error& error)
{
    ServerOutcome outcome;
    outcome.trouble = error.what;
    return outcome;
}

}  // namespace

ServerOutcome exchangeWith(const std::string& book, const std::string& address, ServerProgress& progress, const std::atomic<bool>& stop)
{
    auto store = book::Store::open(book, book::OpenMode::ReadWrite);
    if (!store)
        return unopened(store.error());
    ServerOutcome outcome;
    const auto patience = [&stop] { return !stop; };
    const auto pushed = share::push(*store, address, counting(progress, ServerProgress::Sending, stop), patience);
    if (!pushed)
        return unopened(pushed.error());
    outcome.sent = pushed->sent;
    outcome.stopped = pushed->stopped;
    if (!outcome.stopped)
        note(outcome, share::pull(*store, address, {}, counting(progress, ServerProgress::Taking, stop), patience));
    return outcome;
}

ServerOutcome joinJob(const std::string& book, const std::string& address, const std::string& job, ServerProgress& progress, const std::atomic<bool>& stop)
{
    auto store = book::Store::open(book, book::OpenMode::ReadWrite);
    if (!store)
        return unopened(store.error());
    ServerOutcome outcome;
    note(outcome, share::pull(*store, address, job, counting(progress, ServerProgress::Taking, stop), [&stop] { return !stop; }));
    if (outcome.trouble.empty() && !outcome.stopped && outcome.taken == 0)
        outcome.trouble = "The server has no record of the job " + job + " yet; nothing was taken.";
    return outcome;
}

ServerOutcome takeBundle(const std::string& book, const std::string& path, ServerProgress& progress, const std::atomic<bool>& stop)
{
    auto store = book::Store::open(book, book::OpenMode::ReadWrite);
    if (!store)
        return unopened(store.error());
    ServerOutcome outcome;
    note(outcome, book::takeBundleFile(*store, path, counting(progress, ServerProgress::Taking, stop)));
    return outcome;
}

}  // namespace groundcount::view
