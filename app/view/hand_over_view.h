#pragma once

#include "view/beside_work.h"
#include "view/hand_over_form.h"
#include "view/row_list.h"
#include "view/session.h"

#include "gis/field_map.h"

#include <QObject>
#include <QUrl>
#include <atomic>

namespace groundcount::view {

/// What a hand-over file will hold, where it goes, and the writing of it: beside the pages, with progress, and it can be stopped.
class HandOverView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY changed REQUIRED)
    Q_PROPERTY(groundcount::view::RowList* contents READ contents CONSTANT)
    Q_PROPERTY(QStringList formatWords READ formatWords CONSTANT)
    Q_PROPERTY(int formatIndex READ formatIndex NOTIFY changed)
    Q_PROPERTY(QString formatNote READ formatNote NOTIFY changed)
    Q_PROPERTY(bool asksLayer READ asksLayer NOTIFY changed)
    Q_PROPERTY(QStringList layerWords READ layerWords CONSTANT)
    Q_PROPERTY(int layerIndex READ layerIndex NOTIFY changed)
    Q_PROPERTY(bool asksColumns READ asksColumns NOTIFY changed)
    Q_PROPERTY(QString columns READ columns NOTIFY changed)
    Q_PROPERTY(QString ending READ ending NOTIFY changed)
    Q_PROPERTY(QUrl suggested READ suggested NOTIFY changed)
    Q_PROPERTY(QString missing READ missing NOTIFY changed)
    Q_PROPERTY(bool running READ isRunning NOTIFY progressChanged)
    Q_PROPERTY(QString progress READ progress NOTIFY progressChanged)
    Q_PROPERTY(QString done READ done NOTIFY progressChanged)
    Q_PROPERTY(QString trouble READ trouble NOTIFY progressChanged)

public:
    explicit HandOverView(QObject* parent = nullptr);

    Session* session() const { return m_session; }
    void setSession(Session* session);
    /// One row a layer: what it holds and how many.
    RowList* contents() { return &m_contents; }
    QStringList formatWords() const { return handOverFormWords(); }
    int formatIndex() const { return static_cast<int>(m_form); }
    QString formatNote() const { return handOverFormNote(m_form); }
    /// Whether the file holds one layer, which is chosen among `layerWords`.
    bool asksLayer() const { return holdsOneLayer(m_form); }
    QStringList layerWords() const { return handOverLayerWords(); }
    int layerIndex() const { return m_layer; }
    /// Whether layers and columns may take the owner's own names.
    bool asksColumns() const { return m_form != HandOverForm::Bundle; }
    /// Name of the file that the owner's names were read from, "" for our own names.
    QString columns() const { return m_columns; }
    /// "gpkg" for example; "" where a folder is made.
    QString ending() const { return handOverEnding(m_form); }
    /// A name for the file in the person's documents folder.
    QUrl suggested() const;
    /// Why nothing can be handed over, "" when it can.
    QString missing() const;

    bool isRunning() const { return m_work.isRunning(); }
    QString progress() const;
    QString done() const { return m_done; }
    QString trouble() const { return m_trouble; }

    Q_INVOKABLE void pickFormat(int index);
    Q_INVOKABLE void pickLayer(int index);
    /// The owner's names for layers and columns, gis::readFieldMap.
    Q_INVOKABLE void takeColumns(const QUrl& file);
    Q_INVOKABLE void dropColumns();
    /// Writes the file; an older one is replaced when the new one is whole.
    Q_INVOKABLE void write(const QUrl& target);
    Q_INVOKABLE void stop();

signals:
    void changed();
    void progressChanged();

private:
    struct Outcome {
        std::size_t rows = 0, layers = 0, photos = 0, cutTexts = 0, records = 0, contents = 0;
        std::string trouble;
    };
    void refresh();
    void forget();
    void tell();
    QString sentence() const;
    Outcome layersInto(const std::string& book, gis::HandOverAsk ask, const std::atomic<bool>& stop);
    Outcome bundleInto(const std::string& book, const std::string& path, const std::atomic<bool>& stop);

    Session* m_session = nullptr;
    RowList m_contents;
    HandOverForm m_form = HandOverForm::GeoPackage;
    int m_layer = 0;
    gis::FieldMap m_names;
    QString m_columns, m_target, m_done, m_trouble;
    std::atomic<std::size_t> m_rows = 0;
    Outcome m_outcome;  ///< of the work, when it ended
    BesideWork m_work;  ///< the last member: it ends before what it writes to
};

}  // namespace groundcount::view
