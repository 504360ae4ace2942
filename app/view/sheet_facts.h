#pragma once

#include "book/record.h"
#include "method/quantity.h"
#include "view/session.h"

#include <QDateTime>
#include <QString>

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace groundcount::view {

class SheetBook;

/// Where the test stands, as sealed.
struct SealedPlace {
    std::optional<double> north, east;  ///< unit of the job's coordinate system; empty when not recorded
    double accuracyMetres = 0;          ///< radius of the circle round it; 0 by tape
    std::string lot, lift;
    std::optional<double> stationFt, offsetFt;
};

/// Depth and mode of the test, as sealed with its seating.
struct SealedSeat {
    QString mode;     ///< "direct" or "backscatter"
    QString depthIn;  ///< decimal text
};

/// What the steps of one test share: the session, the book's answers, and what earlier steps have sealed.
struct SheetFacts {
    Session* session = nullptr;
    SheetBook* book = nullptr;
    std::string testId;
    QString number;
    std::optional<SealedPlace> place;
    book::Body placeBody;                ///< of the live test-site; what an amendment does not touch is kept from it
    std::vector<book::Body> readings;    ///< of the live readings, by number
    std::optional<SealedSeat> seat;
    bool isTrench = false;  ///< the clearance was sealed with a trench correction
};

}  // namespace groundcount::view
