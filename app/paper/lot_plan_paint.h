#pragma once

#include "book/state.h"
#include "method/accept/draw.h"

#include <QPainter>
#include <QRectF>
#include <QString>

#include <vector>

namespace groundcount::paper {

/// A lot that is given by its corners, with the tests and owed sites of one lift. Places and ground in the job's grid.
struct LotPlan {
    method::PlanArea ground;
    std::vector<book::TestRow> tests;
    std::vector<book::SiteRow> owed;
    QString unit;  ///< of the grid: "ft" or "m"
};

/// Draws the plan into `box`, north up: the outer ring, its holes hatched, tests by state with their numbers, owed sites as dotted
/// rings, an arrow to the north and a bar of a round length.
void drawLotPlan(QPainter& painter, const QRectF& box, const LotPlan& plan);

/// The mark of a test with its number: a disc that passed, a diamond that failed, an open ring for the rest.
void drawTestMark(QPainter& painter, QPointF at, const book::TestRow& test);
/// A drawn site where no test was made yet.
void drawOwedMark(QPainter& painter, QPointF at);

}  // namespace groundcount::paper
