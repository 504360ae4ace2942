#pragma once

#include "book/record.h"
#include "book/state.h"
#include "method/accept/evaluate.h"
#include "method/error.h"
#include "method/quantity.h"
#include "view/session.h"

#include <QByteArray>
#include <QString>

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace groundcount::view {

/// A length of the rule set in its own unit: what a page shows, what a record carries, what the core compares.
struct RuleLength {
    double value = 0;
    std::string text;  ///< decimal as in the rule set
    QString unit;      ///< "in.", "ft", "m", "mm"
    std::string key;   ///< ending of a record's key: "in", "ft", "m", "mm"
    bool inclusive = true;
    Length length() const { return lengthOf(value); }
    Length lengthOf(double inThisUnit) const;
    double of(Length other) const;
};

/// What the book answers to the sheet of a test. Reads only; sealing goes through the session.
class SheetBook {
public:
    explicit SheetBook(Session& session) : m_session(session) {}

    const std::vector<book::LotRow>& lots() const;
    std::vector<book::LiftRow> lifts(const std::string& lot) const;
    std::optional<book::LotRow> lot(const std::string& id) const;
    std::optional<book::LiftRow> lift(const std::string& id) const;
    const std::vector<book::SiteRow>& sites() const;
    const std::vector<book::TestRow>& tests() const;
    std::optional<book::TestRow> test(const std::string& id) const;
    const std::vector<book::ObstacleRow>& obstacles() const;

    /// Live records of a subject, in order.
    std::vector<book::Record> records(const std::string& subject) const;
    /// Why a test was voided; empty while it is not.
    QString voidReason(const std::string& test) const;
    /// Body of the calibration in force of a gauge.
    std::optional<book::Body> calibration(const std::string& gauge) const;
    /// Whether an offset of this kind is in force for the gauge.
    bool hasOffset(const std::string& gauge, const std::string& kind) const;
    /// The accepted standard count that a test of now belongs to.
    std::optional<book::StandardCountRow> standardCount(const std::string& gauge) const;

    /// Next number of a test in the book: one more than the greatest.
    QString nextNumber() const;
    /// Number of the next retest of a test: its first test's number with a letter.
    Result<QString> retestNumber(const std::string& test) const;

    /// A limit of the rule set that is a length.
    RuleLength length(const char* key) const;
    /// A limit of the rule set as a plain number.
    double number(const char* key) const;
    /// A choice of the rule set as a word.
    std::string choice(const char* key) const;
    QString ruleSetWords() const;

    /// What the newest other test with the same gauge, material and depth read, as text; empty where it has no such number.
    struct LastReading {
        QString number, densityCount, moistureCount, wet, water, content;
    };
    std::optional<LastReading> lastReading(const std::string& test, const std::string& gauge, const std::string& lot, const QString& depthIn) const;

    /// Everything the verdict needs, out of sealed records, worked through.
    struct Judged {
        method::TestInput input;
        method::EvaluationRules rules;
        method::Evaluation evaluation;
    };
    Result<Judged> judge(const std::string& test) const;
    /// The verdict as the book seals it. @error Refused as judge
    Result<book::Entry> verdict(const std::string& test) const;

    QByteArray draft(const std::string& key) const;
    Result<void> saveDraft(const std::string& key, const QByteArray& text);
    void dropDraft(const std::string& key);

    /// A place in the job's grid and on the globe. @error Refused: no coordinate system; off the line
    struct Spot {
        double north = 0, east = 0, latitudeDeg = 0, longitudeDeg = 0;
    };
    Result<Spot> spotAt(const JobLine& line, double stationFt, double offsetRightFt) const;
    Result<Spot> spotAtGrid(double north, double east) const;
    Result<Spot> spotAtPosition(double latitudeDeg, double longitudeDeg) const;

    /// Key ending of the job's grid unit, "usft", "ft" or "m", and of its densities, "lb_ft3" or "kg_m3".
    std::string gridKey() const;
    std::string densityKey() const;
    QString densityUnit() const;  ///< "lb/ft³" or "kg/m³"
    Length gridLength(double gridUnits) const;

private:
    Session& m_session;
};

}  // namespace groundcount::view
