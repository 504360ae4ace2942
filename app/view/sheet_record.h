#pragma once

#include "book/audit.h"
#include "view/photo_take.h"
#include "view/row_list.h"
#include "view/sheet_facts.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <map>
#include <set>
#include <string>
#include <vector>

namespace groundcount::view {

/// The record of one test: who sealed what, when, and why it was changed; notes and photos; and a conflict with the way out.
class SheetRecord : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(SheetRecord)
    QML_UNCREATABLE("belongs to a TestSheet")
    Q_PROPERTY(groundcount::view::RowList* history READ history CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* conflict READ conflict CONSTANT)
    Q_PROPERTY(groundcount::view::PhotoTake* camera READ camera CONSTANT)
    Q_PROPERTY(QString conflictText MEMBER m_conflictText NOTIFY changed)
    Q_PROPERTY(QStringList photos MEMBER m_photos NOTIFY changed)
    Q_PROPERTY(QStringList photoNames MEMBER m_photoNames NOTIFY changed)
    Q_PROPERTY(QString summary MEMBER m_summary NOTIFY changed)
    Q_PROPERTY(QString trouble MEMBER m_trouble NOTIFY changed)

public:
    SheetRecord(SheetFacts& facts, QObject* parent);

    RowList* history() { return &m_history; }
    RowList* conflict() { return &m_conflict; }
    PhotoTake* camera() { return &m_camera; }

    /// Reads the test's records again.
    void refresh();
    /// Seals a note. @return whether it is on disk
    Q_INVOKABLE bool addNote(const QString& text);
    /// Takes a picture file in, whole, by its content. On refusal `trouble` has the sentence.
    /// @param file local JPEG or PNG of at most 30 MB
    Q_INVOKABLE bool addPhoto(const QUrl& file);
    /// Settles the conflict: the row that is kept speaks from now on, both sides stay in the book.
    Q_INVOKABLE void keep(const QString& hash);

signals:
    void changed();
    /// Records were added by this card.
    void sealed();

private:
    void showHistory(const std::vector<book::HistoryLine>& lines);
    void findConflict(const std::vector<book::HistoryLine>& lines);
    void showPhotos(const std::vector<book::HistoryLine>& lines);
    bool fail(const QString& sentence);

    SheetFacts& m_facts;
    PhotoTake m_camera;
    RowList m_history, m_conflict;
    std::vector<std::string> m_rivals;  ///< hashes of the live records in conflict
    std::map<std::string, QString> m_thumbnails;  ///< by blob, made once
    QStringList m_photos, m_photoNames;
    QString m_conflictText, m_summary, m_trouble;
};

}  // namespace groundcount::view
