#pragma once

#include "method/error.h"
#include "view/row_list.h"
#include "view/session.h"

#include <QObject>
#include <QUrl>

namespace groundcount::view {

/// The field books of this device, one per job: which is open, which others there are, a new one. Another book is asked for by
/// `wanted`; the program then shows it from the beginning, so that nothing of the first one stays behind.
class BookShelf : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(BookShelf)
    QML_UNCREATABLE("belongs to the desk")
    Q_PROPERTY(groundcount::view::RowList* books READ books CONSTANT)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)

public:
    explicit BookShelf(Session* session, QObject* parent = nullptr);

    /// The books lie in `folder`, the device's own; which one was opened last is kept there.
    void keepIn(const QString& folder);
    /// The book that was opened last on this device, when it is still there; else empty.
    static QString lastOpened(const QString& folder);

    RowList* books() { return &m_books; }
    QString trouble() const { return m_trouble; }

    /// Lists the books as they are now; the page does so when it is opened.
    Q_INVOKABLE void refresh();
    /// Opens a book of the list. @param path its row's id
    Q_INVOKABLE void pick(const QString& path);
    /// Opens a book that lies elsewhere; it stays where it is.
    Q_INVOKABLE void openFile(const QUrl& file) { pick(file.toLocalFile()); }
    /// A new, empty book of this name.
    Q_INVOKABLE void begin(const QString& name);

signals:
    void changed();
    void wanted(const QString& path);

private:
    QString openPath() const;
    QString newPath(const QString& name);
    void ask(const QString& path);
    void setTrouble(const QString& sentence);

    Session* m_session;
    QString m_folder, m_trouble;
    RowList m_books;
};

}  // namespace groundcount::view
