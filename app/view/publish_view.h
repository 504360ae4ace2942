#pragma once

#include "view/beside_work.h"
#include "view/row_list.h"
#include "view/session.h"

#include "gis/layer_check.h"

#include <QObject>
#include <atomic>

namespace groundcount::view {

/// Publishing the layers as tables of a PostGIS database: where, under which name, who may read; beside the pages, and it can be stopped.
class PublishView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY changed REQUIRED)
    Q_PROPERTY(QString address READ address WRITE setAddress NOTIFY changed)
    Q_PROPERTY(QString schema READ schema WRITE setSchema NOTIFY changed)
    Q_PROPERTY(QString readers READ readers WRITE setReaders NOTIFY changed)
    Q_PROPERTY(QString missing READ missing NOTIFY changed)
    Q_PROPERTY(bool running READ isRunning NOTIFY changed)
    Q_PROPERTY(QString progress READ progress NOTIFY changed)
    Q_PROPERTY(QString done READ done NOTIFY changed)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* tables READ tables CONSTANT)

public:
    explicit PublishView(QObject* parent = nullptr);

    Session* session() const { return m_session; }
    void setSession(Session* session);
    /// libpq's connection string or URI, kept as a draft of this device; never handed over.
    QString address() const { return m_address; }
    void setAddress(const QString& address);
    /// Schema of the job's tables; share::PublishAsk.
    QString schema() const { return m_schema; }
    void setSchema(const QString& schema);
    /// Role that may read them, "" for nobody else.
    QString readers() const { return m_readers; }
    void setReaders(const QString& readers);
    /// Why nothing can be published, "" when it can.
    QString missing() const;
    bool isRunning() const { return m_work.isRunning(); }
    QString progress() const;
    QString done() const { return m_done; }
    QString trouble() const { return m_trouble; }
    /// What was published last: a row a table with its rows.
    RowList* tables() { return &m_tables; }

    Q_INVOKABLE void publish();
    Q_INVOKABLE void stop();

signals:
    void changed();

private:
    struct Outcome {
        std::vector<gis::LayerCount> tables;
        std::string trouble;
    };
    void readDrafts();
    void take(QString& into, const char* step, const QString& text);
    void tell();

    Session* m_session = nullptr;
    QString m_book, m_address, m_schema, m_readers, m_done, m_trouble;
    RowList m_tables;
    std::atomic<std::size_t> m_rows = 0;
    Outcome m_outcome;  ///< of the work, when it ended
    BesideWork m_work;  ///< the last member: it ends before what it writes to
};

}  // namespace groundcount::view
