#pragma once

#include "view/clear_step.h"
#include "view/count_step.h"
#include "view/dig_step.h"
#include "view/place_step.h"
#include "view/seat_step.h"
#include "view/sheet_ask.h"
#include "view/sheet_book.h"
#include "view/sheet_record.h"
#include "view/step_model.h"
#include "view/verdict_step.h"

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <array>
#include <memory>

namespace groundcount::view {

/// One test on one sheet of six steps, each closed by sealing it. What is typed is kept as a local draft on every edit; what is
/// sealed is in the book. Opened again, it goes on at the first step that is not sealed.
class TestSheet : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY sessionChanged)
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY changed)
    Q_PROPERTY(QString testId READ testId NOTIFY changed)
    Q_PROPERTY(QString title MEMBER m_title NOTIFY changed)
    Q_PROPERTY(QString context MEMBER m_context NOTIFY changed)
    Q_PROPERTY(QString context2 MEMBER m_context2 NOTIFY changed)
    Q_PROPERTY(groundcount::view::StepModel* steps READ steps CONSTANT)
    Q_PROPERTY(int step READ step NOTIFY changed)
    Q_PROPERTY(QString sealText MEMBER m_sealText NOTIFY changed)
    Q_PROPERTY(QString sealNotYet MEMBER m_sealNotYet NOTIFY changed)
    Q_PROPERTY(QString lock MEMBER m_lock NOTIFY changed)
    Q_PROPERTY(QString sealedText MEMBER m_sealedText NOTIFY changed)
    Q_PROPERTY(bool struckShown MEMBER m_struckShown NOTIFY struckChanged)
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
    Q_PROPERTY(groundcount::view::NumberEntry* entry READ entry NOTIFY entryChanged)
    Q_PROPERTY(groundcount::view::PlaceStep* place READ place CONSTANT)
    Q_PROPERTY(groundcount::view::ClearStep* clear READ clear CONSTANT)
    Q_PROPERTY(groundcount::view::SeatStep* seat READ seat CONSTANT)
    Q_PROPERTY(groundcount::view::CountStep* count READ countStep CONSTANT)
    Q_PROPERTY(groundcount::view::DigStep* dig READ dig CONSTANT)
    Q_PROPERTY(groundcount::view::VerdictStep* verdict READ verdict CONSTANT)
    Q_PROPERTY(groundcount::view::SheetRecord* record READ record CONSTANT)
    Q_PROPERTY(groundcount::view::SheetAsk* ask READ ask CONSTANT)
    Q_PROPERTY(bool recordShown MEMBER m_recordShown NOTIFY recordShownChanged)
    Q_PROPERTY(bool hasRecord READ hasRecord NOTIFY changed)
    Q_PROPERTY(bool canAmend MEMBER m_canAmend NOTIFY changed)
    Q_PROPERTY(QString amending MEMBER m_amending NOTIFY changed)
    Q_PROPERTY(QString voidText MEMBER m_voidText NOTIFY changed)

public:
    enum Step { Place, Clear, Seat, Count, Dig, Verdict };
    Q_ENUM(Step)
    static constexpr int kSteps = 6;

    explicit TestSheet(QObject* parent = nullptr);
    ~TestSheet() override;

    Session* session() const { return m_facts.session; }
    void setSession(Session* session);
    bool isOpen() const { return !m_facts.testId.empty(); }
    QString testId() const { return QString::fromStdString(m_facts.testId); }
    StepModel* steps() { return &m_steps; }
    int step() const { return m_step; }
    QString trouble() const { return m_trouble; }
    NumberEntry* entry() const { return m_entry; }
    PlaceStep* place() const { return m_place; }
    ClearStep* clear() const { return m_clear; }
    SeatStep* seat() const { return m_seat; }
    CountStep* countStep() const { return m_count; }
    DigStep* dig() const { return m_dig; }
    VerdictStep* verdict() const { return m_verdict; }
    SheetRecord* record() const { return m_record; }
    SheetAsk* ask() const { return m_ask; }
    bool hasRecord() const { return m_facts.place.has_value(); }
    bool isVoid() const { return !m_voidText.isEmpty(); }

    /// A new test; one that was begun and not yet placed is taken up again.
    Q_INVOKABLE void begin();
    /// A new test aimed at a drawn site. @param siteId draw's hash, '/' and the site's number
    Q_INVOKABLE void beginAt(const QString& siteId);
    /// A new test with the station and offset of a point of the job's grid offered. @param north, east unit of the grid
    Q_INVOKABLE void beginAtPoint(double north, double east);
    /// A new test that retests a failed one.
    Q_INVOKABLE void beginRetest(const QString& testId);
    /// Goes on with a test, or shows a finished one.
    Q_INVOKABLE void open(const QString& testId);
    Q_INVOKABLE void pickStep(int index);
    /// Seals the step that is shown. On refusal `trouble` has the sentence and everything typed stays.
    /// @return whether it is on disk
    Q_INVOKABLE bool seal();
    /// Asks why the sealed step that is shown is to be changed; with a reason it is opened for an amendment.
    Q_INVOKABLE void askAmend();
    /// Gives an amendment up: the step shows what is sealed again.
    Q_INVOKABLE void dropAmendment();
    /// Asks why the test is to be taken out; with a reason it is sealed as void.
    Q_INVOKABLE void askVoid();
    /// Does what `ask` asks about, with the reason. Without a reason nothing happens and `ask` says so.
    Q_INVOKABLE void answer(const QString& reason);
    /// Leaves the sheet; drafts stay.
    Q_INVOKABLE void close();
    Q_INVOKABLE void closeEntry();

signals:
    void sessionChanged();
    void changed();
    void troubleChanged();
    void entryChanged();
    void struckChanged();
    void recordShownChanged();
    /// A verdict was sealed.
    void finished(const QString& testId);

private:
    void beginNew();
    /// The test that was begun but not placed; it lives only in the draft that the person's id leads to. Empty for none.
    QString begunTest() const;
    /// Opens the begun test if it was begun for just this; what is typed into it is there again.
    bool resumes(const QJsonObject& place);
    void readSealed();
    void takeRecord(const book::Record& record, std::vector<book::Body>& readings);
    void amend(int step, const QString& reason);
    void readAgain(int without);
    std::string amendedBy(const book::Entry& entry) const;
    void readDraft();
    void saveDraft();
    void show();
    void goTo(int step);
    void setTrouble(const QString& sentence);
    void setEntry(NumberEntry* entry);
    void moveTest(const QString& reason);
    void takeNewSpot(const QString& reason);
    Result<void> sealEntries(std::vector<book::Entry> entries);
    bool sealVoid(const QString& reason);
    int firstUnsealed() const;
    QString missingForVerdict() const;
    QString lockOf(int step) const;
    SheetStep* card(int index) const { return m_cards[static_cast<std::size_t>(index)]; }
    std::string newDraftKey() const;

    SheetFacts m_facts;
    std::unique_ptr<SheetBook> m_book;
    StepModel m_steps;
    PlaceStep* m_place;
    ClearStep* m_clear;
    SeatStep* m_seat;
    CountStep* m_count;
    DigStep* m_dig;
    VerdictStep* m_verdict;
    std::array<SheetStep*, kSteps> m_cards{};
    SheetRecord* m_record;
    SheetAsk* m_ask;
    std::array<std::string, kSteps> m_sealedHash;  ///< of the live record of a step that may be amended
    std::array<std::string, 2> m_readingHash;      ///< of the live readings 1 and 2
    std::array<QJsonObject, kSteps> m_sealedDraft;
    int m_step = 0;
    QString m_title, m_context, m_context2, m_sealText, m_sealNotYet, m_sealedText, m_lock, m_trouble, m_amendReason, m_amending, m_voidText, m_lateReason;
    NumberEntry* m_entry = nullptr;
    int m_amendStep = -1;  ///< the sealed step that is open for an amendment
    bool m_struckShown = false, m_recordShown = false, m_canAmend = false;
};

}  // namespace groundcount::view
