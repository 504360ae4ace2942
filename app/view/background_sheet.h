#pragma once

#include "gis/background.h"
#include "view/beside_work.h"
#include "view/kit_form.h"
#include "view/row_list.h"

#include <QUrl>
#include <optional>

namespace groundcount::view {

/// The picture of the ground under the map: a file of others is taken over by a child process into the job's grid and laid beside
/// the book. It belongs to this device and is never sealed.
class BackgroundSheet : public groundcount::view::KitForm {  // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool reading READ isReading NOTIFY changed)
    Q_PROPERTY(bool there MEMBER m_isThere NOTIFY changed)
    Q_PROPERTY(QString refusal MEMBER m_refusal NOTIFY changed)
    Q_PROPERTY(QString doneText MEMBER m_doneText NOTIFY changed)
    Q_PROPERTY(QString typedPath MEMBER m_path NOTIFY changed)
    Q_PROPERTY(QStringList shownWords READ shownWords NOTIFY changed)
    Q_PROPERTY(int shown MEMBER m_shown NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* facts READ facts CONSTANT)

public:
    explicit BackgroundSheet(QObject* parent = nullptr);
    bool isReading() const { return m_work.isRunning(); }
    RowList* facts() { return &m_facts; }
    QStringList shownWords() const { return {tr("Shown"), tr("Hidden")}; }

    Q_INVOKABLE void chooseFile(const QUrl& file);
    Q_INVOKABLE void readPath(const QString& path);
    /// Shown or hidden on the map.
    Q_INVOKABLE void pickShown(int index);
    /// Takes the background off this device; the file it came from stays.
    Q_INVOKABLE void takeAway();

protected:
    const char* draftName() const override { return "background"; }
    std::string defaultSubject() const override { return "map"; }
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;

private:
    void take();

    QString m_path, m_refusal, m_doneText;
    bool m_isThere = false;
    int m_shown = 0;
    RowList m_facts;
    std::optional<Result<gis::BackgroundFacts>> m_outcome;
    BesideWork m_work;  ///< last: ends before what it writes to
};

}  // namespace groundcount::view
