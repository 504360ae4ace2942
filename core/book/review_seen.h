#pragma once

#include "book/engineer_review.h"

/// Which review speaks for which part, and what came after it. Private to the engineer's review.
namespace groundcount::book {

/// Gives each lot, lift and test of the lots its latest review.
void assignReviews(std::span<const ReviewLine> all, const ReviewRows& rows, std::vector<ReviewedLot>& lots);

/// Finds the records that the reviewers of each part had not seen.
Result<void> findChanges(const Store& store, const ReviewRows& rows, std::vector<ReviewedLot>& lots);

}  // namespace groundcount::book
