#pragma once

#include "gis/site_bodies.h"
#include "gis/site_layers.h"
#include "map/map_scene.h"
#include "view/kit_form.h"
#include "view/row_list.h"
#include "view/site_reading.h"

#include <QUrl>

namespace groundcount::view {

/// A file of others becomes alignments, lots and obstacles of the book: it is read by a child process, what was found is shown,
/// what the file does not say is asked, every layer is given a kind or left out, the ground is drawn, then all of it is sealed.
class SiteFileSheet : public groundcount::view::KitForm {  // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString path READ path NOTIFY changed)
    Q_PROPERTY(bool reading READ isReading NOTIFY changed)
    Q_PROPERTY(bool there READ isThere NOTIFY changed)
    Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* found READ found CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* layers READ layers CONSTANT)
    Q_PROPERTY(QString layer MEMBER m_layerId NOTIFY changed)
    Q_PROPERTY(QString layerName MEMBER m_layerName NOTIFY changed)
    Q_PROPERTY(QStringList kindWords MEMBER m_kindWords NOTIFY changed)
    Q_PROPERTY(int kind MEMBER m_kind NOTIFY changed)
    Q_PROPERTY(bool asksSystem MEMBER m_asksSystem NOTIFY changed)
    Q_PROPERTY(QString systemText MEMBER m_systemText NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* systems READ systems CONSTANT)
    Q_PROPERTY(bool asksUnit MEMBER m_asksUnit NOTIFY changed)
    Q_PROPERTY(QStringList unitWords READ unitWords NOTIFY changed)
    Q_PROPERTY(int unit MEMBER m_unit NOTIFY changed)
    Q_PROPERTY(QString unitNote MEMBER m_unitNote NOTIFY changed)
    Q_PROPERTY(bool asksLot MEMBER m_asksLot NOTIFY changed)
    Q_PROPERTY(QStringList referenceWords MEMBER m_referenceWords NOTIFY changed)
    Q_PROPERTY(int reference MEMBER m_reference NOTIFY changed)
    Q_PROPERTY(QString testsText MEMBER m_testsText NOTIFY changed)
    Q_PROPERTY(bool asksBegin MEMBER m_asksBegin NOTIFY changed)
    Q_PROPERTY(QString beginText MEMBER m_beginText NOTIFY changed)
    Q_PROPERTY(groundcount::map::MapSource* preview READ preview CONSTANT)
    Q_PROPERTY(bool placed MEMBER m_isPlaced NOTIFY changed)
    Q_PROPERTY(QString placeNote MEMBER m_placeNote NOTIFY changed)
    Q_PROPERTY(QString doubt MEMBER m_doubt NOTIFY changed)
    Q_PROPERTY(QString doneText MEMBER m_doneText NOTIFY changed)

public:
    explicit SiteFileSheet(QObject* parent = nullptr);

    QString path() const { return typed("path"); }
    bool isReading() const { return m_reading.isRunning(); }
    bool isThere() const { return m_reading.file().has_value(); }
    /// Why the file is not read, or not laid into the job.
    QString refusal() const { return m_reading.trouble().isEmpty() ? m_refusal : m_reading.trouble(); }
    RowList* found() { return &m_found; }
    RowList* layers() { return &m_layers; }
    RowList* systems() { return &m_systems; }
    QStringList unitWords() const;
    map::MapSource* preview() { return &m_preview; }

    Q_INVOKABLE void chooseFile(const QUrl& file);
    Q_INVOKABLE void readPath(const QString& path);
    Q_INVOKABLE void pickLayer(const QString& id);
    Q_INVOKABLE void pickKind(int index);
    /// Finds coordinate systems by code, name or place.
    Q_INVOKABLE void searchSystem(const QString& words);
    Q_INVOKABLE void pickSystem(const QString& code);
    Q_INVOKABLE void pickUnit(int index);
    Q_INVOKABLE void pickReference(int index);
    Q_INVOKABLE void typeTests();
    Q_INVOKABLE void typeBegin();

protected:
    const char* draftName() const override { return "site-file"; }
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;
    void afterSeal() override;

private:
    enum class Kind { LeaveOut, Alignment, Lot, Wall, Pipe, Structure };
    static std::vector<Kind> kindsOf(const gis::SiteLayer& layer);
    static QString word(Kind kind);
    Kind kindOf(const gis::SiteLayer& layer) const;
    QString keyOf(const gis::SiteLayer& layer) const;
    gis::SiteAnswers answers() const;
    Result<std::vector<book::Body>> bodiesOf(const gis::SiteLayer& layer) const;
    Result<gis::LotAnswers> lotAnswers() const;

    void showFile();
    void showLayers();
    void showQuestions();
    void place();
    void showDoubts();
    void showAct();
    std::shared_ptr<const map::MapScene> scene() const;

    SiteReading m_reading;
    std::vector<gis::SiteLayer> m_fileLayers;
    std::vector<gis::SiteFeature> m_placed;  ///< in the job's grid
    QString m_placedFor;                     ///< the answers that m_placed was made with
    QString m_refusal, m_layerId, m_layerName, m_systemText, m_unitNote, m_testsText, m_beginText, m_placeNote, m_doubt, m_doneText;
    QStringList m_kindWords, m_referenceWords;
    int m_kind = 0, m_unit = -1, m_reference = -1;
    bool m_asksSystem = false, m_asksUnit = false, m_asksLot = false, m_asksBegin = false, m_isPlaced = false;
    RowList m_found, m_layers, m_systems;
    map::MapSource m_preview;
};

}  // namespace groundcount::view
