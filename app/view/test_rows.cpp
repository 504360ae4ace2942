#include "view/test_rows.h"

#include "view/figure_text.h"

#include <QCoreApplication>

namespace groundcount::view {
namespace {

QString tr(const char* text)
{
    return QCoreApplication::translate("groundcount::view", text);
}

}  // namespace

Mark markOf(book::TestState state)
{
    switch (state) {
    case book::TestState::Pass: return Mark::Pass;
    case book::TestState::Fail: return Mark::Fail;
    case book::TestState::InformationOnly: return Mark::InformationOnly;
    case book::TestState::Void: return Mark::Void;
    case book::TestState::Open:
    case book::TestState::Waiting: break;
    }
    return Mark::Waiting;
}

QString wordOf(book::TestState state)
{
    switch (state) {
    case book::TestState::Pass: return tr("Pass");
    case book::TestState::Fail: return tr("Fail");
    case book::TestState::InformationOnly: return tr("Information only");
    case book::TestState::Void: return tr("Void");
    case book::TestState::Waiting: return tr("provisional");
    case book::TestState::Open: break;
    }
    return tr("open");
}

Row testRow(const book::TestRow& test)
{
    Row row;
    row.id = QString::fromStdString(test.id);
    row.mark = markOf(test.state);
    row.lead = QString::fromStdString(test.number);
    row.title = QStringLiteral("  ") + stationOffsetText(test.stationFt, test.offsetFt);
    row.second = tr("Lot %1, lift %2").arg(QString::fromStdString(test.lotName)).arg(test.liftNumber);
    row.figure = shownDecimal(test.compactionPct);
    row.unit = test.compactionPct.empty() ? QString() : QStringLiteral("%");
    row.word = wordOf(test.state);
    row.wordMark = test.state == book::TestState::Pass || test.state == book::TestState::Fail ? row.mark : Mark::Nothing;
    return row;
}

}  // namespace groundcount::view
