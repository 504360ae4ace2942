#pragma once

#include "book/record.h"
#include "book/state.h"
#include "method/accept/evaluation_rules.h"
#include "method/error.h"
#include "method/rules/rule_set.h"
#include "view/beside_work.h"
#include "view/job_lines.h"
#include "view/job_system.h"

#include <QDateTime>
#include <QObject>
#include <QString>
#include <QTimer>
#include <QtQml/qqmlregistration.h>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace groundcount::book {
class Store;
struct TestColumns;
}
namespace groundcount::position {
class PositionSource;
}

class QJSEngine;
class QQmlEngine;

namespace groundcount::view {

/// Own place as the pages use it, in the job's grid.
struct OwnPlace {
    double north = 0, east = 0;     ///< unit of the job's coordinate system
    double accuracyMetres = 0;      ///< radius of the circle that is shown
};

/// The rows of the book as of the last record, read once and shared by the pages.
struct Snapshot {
    book::JobRow job;
    std::vector<book::TestRow> tests;
    std::vector<book::SiteRow> sites;
    std::vector<book::GaugeRow> gauges;
    std::vector<book::StandardCountRow> standardCounts;  ///< of every gauge, oldest first
    std::vector<book::LotRow> lots;
    std::vector<book::LiftRow> lifts;
    std::vector<book::MaterialRow> materials;
    std::vector<book::ProctorRow> proctors;
    std::vector<book::PersonRow> people;
    std::vector<book::ObstacleRow> obstacles;
    Length retestDistance;  ///< of the rule set: a retest closes a failure no farther away
};

/// The open book with what every page needs from it: clock, person, gauge in use, rule set, alignment, coordinate system
/// and own position. Main makes one and hands it to QML as the singleton `Session`; tests make their own.
class Session : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
    Q_PROPERTY(QString bookName READ bookName NOTIFY recordsChanged)
    Q_PROPERTY(bool readOnly READ isReadOnly NOTIFY recordsChanged)
    /// The tests of a long book are being read beside the pages for the first time: only its map can be shown until then (decision 0012).
    Q_PROPERTY(bool reading READ isReading NOTIFY readingChanged)
    Q_PROPERTY(double ownEast READ ownEast NOTIFY placeChanged)
    Q_PROPERTY(double ownNorth READ ownNorth NOTIFY placeChanged)
    Q_PROPERTY(double ownAccuracyMetres READ ownAccuracyMetres NOTIFY placeChanged)
    Q_PROPERTY(QString ownLabel READ ownLabel NOTIFY placeChanged)
    /// What is wrong with the receiver now: lost, repeating itself, jumped; empty while it is well or none is in use.
    Q_PROPERTY(QString receiverTrouble READ receiverTrouble NOTIFY placeChanged)

public:
    /// No default: a default-constructible singleton would be made anew by QML instead of taken from `create`.
    explicit Session(QObject* parent);
    ~Session() override;

    /// Opens a book, or makes an empty one where there is none. A damaged book is opened read-only and says what is broken.
    /// @error Unavailable when the file can be neither opened nor made
    Result<void> open(const QString& bookPath, const QString& keyPath);
    /// Replays an NMEA 0183 log as the receiver. @error Unavailable when the file cannot be read
    Result<void> replay(const QString& nmeaPath);
    /// Opens a receiver by `opening`; the one before is closed. @error that of `opening`: then there is none
    Result<void> receive(const std::function<Result<void>(position::PositionSource&)>& opening);
    void stopReceiving();
    /// A fixed clock for demonstrations and screenshots; it stands still.
    void setClock(const QDateTime& at) { m_clock = at; }

    static Session* create(QQmlEngine* engine, QJSEngine* scriptEngine);
    /// The instance that QML gets as `Session`; main sets it before it loads QML.
    static void setInstance(Session* session);

    bool isOpen() const { return m_store != nullptr; }
    bool isReadOnly() const;
    bool isReading() const { return m_columns != nullptr; }
    /// In the place of the snapshot's tests while it is reading, else nullptr.
    const book::TestColumns* columns() const { return m_columns.get(); }
    /// Books of more tests are read beside the pages.
    static void setReadAtOnce(std::int64_t tests);
    book::Store& store() { return *m_store; }
    QString bookName() const { return m_bookName; }
    QString trouble() const { return m_trouble; }
    void setTrouble(const QString& sentence);

    /// Now in UTC, and the local offset that is sealed with it.
    QDateTime now() const;
    int offsetMinutes() const;
    /// UTC text of a record to the local clock, for example "6:48".
    QString localTime(const std::string& utc, int offsetMinutes) const;

    const Snapshot& snapshot() const { return m_snapshot; }
    const book::JobRow& job() const { return m_snapshot.job; }
    const book::PersonRow& person() const { return m_person; }      ///< the technician who is at work
    const std::optional<book::GaugeRow>& gauge() const { return m_gauge; }  ///< the gauge in use
    const method::RuleSet& ruleSet() const { return m_ruleSet; }
    const method::EvaluationRules& rules() const { return m_rules; }
    const JobLines& lines() const { return m_lines; }  ///< by name; the ones that can be read
    const gis::Crs* crs() const { return m_system.crs(); }  ///< made when it is first asked for
    /// Where the person is now; empty while the receiver is lost or repeats itself.
    std::optional<OwnPlace> ownPlace() const;
    QString receiverTrouble() const { return m_receiverTrouble; }
    position::PositionSource* positionSource() const { return m_position.get(); }
    /// Whether the gauge in use may count today; the sentence says what is missing.
    QString gaugeMissing() const { return m_gaugeMissing; }
    double metresPerGridUnit() const { return m_snapshot.job.metresPerGridUnit; }
    /// The newest standard count of the gauge in use that was taken today; nullptr when there is none.
    const book::StandardCountRow* standardToday() const;
    /// Whether a record's local day is today.
    bool isToday(const std::string& utc, int offsetMinutes) const;

    /// Reads the book again and tells every page.
    void readAgain();

    /// Seals one fact by the person at work, now. On success every page is told by `recordsChanged`.
    /// @param kind, subject, body as docs/record-format.md; amends and reason for an amendment
    /// @error what the store says; it is also shown as `trouble`
    Result<book::Record> seal(const std::string& kind, const std::string& subject, const book::Body& body,
                              const std::string& amends = {}, const std::string& reason = {});
    Result<book::Record> seal(book::Entry entry);
    /// The same for several facts: all or none.
    Result<std::vector<book::Record>> sealAll(std::vector<book::Entry> entries);

    double ownEast() const;
    double ownNorth() const;
    double ownAccuracyMetres() const;
    QString ownLabel() const;

    /// A fresh UUID for a new subject.
    static std::string newId();

public slots:
    /// Makes the job's coordinate system beside the pages, once; `trouble` tells when it, or PROJ's database, cannot be used.
    void findSystem() { m_system.makeBeside(); }

signals:
    void recordsChanged();
    void readingChanged();
    void troubleChanged();
    void placeChanged();

private:
    void sign(book::Entry& entry) const;
    void refresh();
    bool takeArrivals();
    void readAll(std::string& trouble);
    void readLists(std::string& trouble);
    void readTests(std::string& trouble);
    void readTestsNow(std::string& trouble);
    void readLongTests(std::string& trouble);
    void readTestsBeside();
    void takeTests();
    void refreshGround(std::string& trouble);
    void refreshPeople();
    void refreshGauge();
    void lookForOthers();
    void takeFix();
    bool placeIsFresh() const;

    std::unique_ptr<book::Store> m_store;
    std::unique_ptr<position::PositionSource> m_position;
    QTimer m_lookTimer;
    std::int64_t m_dataVersion = 0;
    std::optional<std::int64_t> m_seen;  ///< the last record that the snapshot's tests know, by arrival
    QString m_bookName, m_trouble, m_gaugeMissing, m_receiverTrouble;
    std::optional<QDateTime> m_clock;
    Snapshot m_snapshot;
    book::PersonRow m_person;
    std::optional<book::GaugeRow> m_gauge;
    method::RuleSet m_ruleSet;
    method::EvaluationRules m_rules;
    JobLines m_lines;
    mutable JobSystem m_system;
    std::optional<OwnPlace> m_own;
    std::int64_t m_listsSeen = 0;  ///< the last record that the snapshot's other lists know, at least
    bool m_readAllAgain = false;
    std::unique_ptr<const book::TestColumns> m_columns;
    struct Beside;
    std::shared_ptr<Beside> m_beside;  ///< what is being read
    BesideWork m_besideWork;           ///< last: its thread ends first
};

}  // namespace groundcount::view
