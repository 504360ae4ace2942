#pragma once

#include "book/engineer_review.h"
#include "gis/lot_ground.h"
#include "view/beside_work.h"
#include "view/row_list.h"
#include "view/session.h"
#include "view/unusual_search.h"

#include <QObject>
#include <QStringList>
#include <map>
#include <memory>
#include <string>

namespace groundcount::view {

/// The engineer's review of a lot: where it and its lifts stand and why, what is open and owed, what changed since the last
/// review, everything unusual, and the word that is sealed.
class ReviewView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY sessionChanged REQUIRED)
    Q_PROPERTY(QString lot READ lot WRITE setLot NOTIFY changed)
    /// Id of the lift that is reviewed, "" for the whole lot.
    Q_PROPERTY(QString part READ part WRITE setPart NOTIFY changed)
    Q_PROPERTY(QString title MEMBER m_title NOTIFY changed)
    Q_PROPERTY(QString partName MEMBER m_partName NOTIFY changed)
    Q_PROPERTY(int standingMark MEMBER m_standingMark NOTIFY changed)
    Q_PROPERTY(QString standingWord MEMBER m_standingWord NOTIFY changed)
    Q_PROPERTY(QString reason MEMBER m_reason NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* parts READ parts CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* failures READ failures CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* owed READ owed CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* changes READ changes CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* unusual READ unusual CONSTANT)
    Q_PROPERTY(QString unusualText MEMBER m_unusualText NOTIFY unusualChanged)
    Q_PROPERTY(QStringList reviewers MEMBER m_reviewers NOTIFY changed)
    Q_PROPERTY(int reviewer READ reviewer WRITE setReviewer NOTIFY changed)
    /// What stands against accepting, "" when nothing does.
    Q_PROPERTY(QString notAccepted MEMBER m_notAccepted NOTIFY changed)
    Q_PROPERTY(QString trouble MEMBER m_trouble NOTIFY changed)
    /// The ground of the open failures is being measured beside the page.
    Q_PROPERTY(bool reading READ isReading NOTIFY changed)

public:
    explicit ReviewView(QObject* parent = nullptr);
    Session* session() const { return m_session; }
    void setSession(Session* session);
    QString lot() const { return m_lot; }
    void setLot(const QString& id);
    QString part() const { return m_part; }
    void setPart(const QString& id);
    bool isReading() const { return m_beside.isRunning(); }
    RowList* parts() { return &m_parts; }
    RowList* failures() { return &m_failures; }
    RowList* owed() { return &m_owed; }
    RowList* changes() { return &m_changes; }
    RowList* unusual() { return &m_unusual; }
    int reviewer() const { return m_reviewer; }
    void setReviewer(int index);

    /// Seals a word on the part that is chosen, by the reviewer that is chosen. @return whether it is on disk; else `trouble` says why
    Q_INVOKABLE bool accept();
    Q_INVOKABLE bool giveBack(const QString& reason);
    Q_INVOKABLE bool acceptWithException(const QString& reason);

signals:
    void sessionChanged();
    void changed();
    void unusualChanged();

private:
    void refresh();
    void showParts(const book::ReviewedLot& lot);
    void showFailures(const book::ReviewedLot& lot);
    void measureFailures(const book::LotRow& lot, std::vector<book::LiftRow> lifts);
    void takeGround();
    void showOwed(const book::ReviewedLot& lot);
    void showChanges(const book::ReviewedLot& lot);
    void showUnusual();
    bool say(book::ReviewWord word, const QString& note);
    bool isOfPart(const std::string& lift) const { return m_part.isEmpty() || m_part.toStdString() == lift; }

    Session* m_session = nullptr;
    QString m_lot, m_part, m_title, m_partName, m_standingWord, m_reason, m_unusualText, m_notAccepted, m_trouble;
    int m_standingMark = 0, m_reviewer = 0;
    QStringList m_reviewers;
    std::vector<book::PersonRow> m_engineers;
    book::Tally m_tally;  ///< of the part
    RowList m_parts, m_failures, m_owed, m_changes, m_unusual;
    UnusualSearch* m_search = nullptr;  ///< the session's
    using Ground = std::map<std::string, gis::Surface>;  ///< by the test's id
    std::shared_ptr<Ground> m_ground;
    BesideWork m_beside;  ///< last: its thread ends first
};

/// The lot as it stands by the rows of the session; nothing when the book does not have it or cannot be read.
std::optional<book::ReviewedLot> reviewedLot(Session& session, const QString& lot);

}  // namespace groundcount::view
