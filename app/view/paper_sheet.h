#pragma once

#include "paper/pages.h"
#include "view/session.h"

#include <QObject>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace groundcount::view {

/// A sheet to be signed, as it will lie on paper: shown page by page, then saved as a PDF.
class PaperSheet : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY changed)
    Q_PROPERTY(QString what READ what WRITE setWhat NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(int pageCount READ pageCount NOTIFY changed)
    Q_PROPERTY(double heightOfWidth READ heightOfWidth NOTIFY changed)
    Q_PROPERTY(QStringList formatWords READ formatWords CONSTANT)
    Q_PROPERTY(int formatIndex READ formatIndex NOTIFY changed)
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed)
    Q_PROPERTY(QString trouble MEMBER m_trouble NOTIFY changed)
    Q_PROPERTY(QString saved MEMBER m_saved NOTIFY changed)

public:
    using QObject::QObject;

    Session* session() const { return m_session; }
    void setSession(Session* session);
    /// "day" today's tests, "day:2026-06-09", "test:ID", "lot:ID", "review:LOT ID", "counts:GAUGE ID", "custody:GAUGE ID" or "reference:ID".
    QString what() const { return m_what; }
    void setWhat(const QString& what);

    QString title() const { return m_pages ? m_document.title : QString(); }
    int pageCount() const { return m_pages ? m_pages->count() : 0; }
    /// Height of a page by its width.
    double heightOfWidth() const;
    QStringList formatWords() const { return {tr("Letter"), tr("A4")}; }
    int formatIndex() const { return m_format == paper::Format::A4 ? 1 : 0; }
    Q_INVOKABLE void pickFormat(int index);
    /// The name that is offered for the file: "test 24.pdf".
    QString fileName() const;
    /// Writes the PDF; `saved` or `trouble` says what became of it.
    Q_INVOKABLE bool save(const QUrl& file);
    /// Writes the PDF into a folder of this program for the system's own viewer, which prints it; sheets of more than a day ago are
    /// taken out of it. @return the file, empty when it could not be written
    Q_INVOKABLE QUrl forViewer();
    /// What became of opening it: nothing is said when a viewer took it.
    Q_INVOKABLE void viewerAnswered(bool opened);

    const paper::Pages* pages() const { return m_pages.get(); }

signals:
    void changed();

private:
    Result<paper::Document> document() const;
    void refresh();

    Session* m_session = nullptr;
    QString m_what, m_trouble, m_saved;
    paper::Format m_format = paper::Format::Letter;
    bool m_formatPicked = false;
    paper::Document m_document;
    std::unique_ptr<paper::Pages> m_pages;
};

}  // namespace groundcount::view
