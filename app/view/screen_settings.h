#pragma once

#include "view/text_translator.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace groundcount::view {

/// How this device shows the pages: theme, size of the text, language. Kept on the device, never in a book.
class ScreenSettings : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(ScreenSettings)
    QML_UNCREATABLE("belongs to the desk")
    Q_PROPERTY(QString theme READ theme NOTIFY changed)
    Q_PROPERTY(double textScale READ textScale NOTIFY changed)
    Q_PROPERTY(QStringList themeWords READ themeWords NOTIFY changed)
    Q_PROPERTY(int themeIndex READ themeIndex NOTIFY changed)
    Q_PROPERTY(QStringList textWords READ textWords CONSTANT)
    Q_PROPERTY(int textIndex READ textIndex NOTIFY changed)
    Q_PROPERTY(QStringList languageWords READ languageWords CONSTANT)
    Q_PROPERTY(int languageIndex READ languageIndex NOTIFY changed)
    Q_PROPERTY(QString trouble MEMBER m_trouble NOTIFY changed)

public:
    explicit ScreenSettings(QObject* parent = nullptr) : QObject(parent) {}
    ~ScreenSettings() override;

    /// Reads what was chosen before and keeps what is chosen from now on in `path`; without a path nothing is kept.
    void keepIn(const QString& path);

    QString theme() const;
    double textScale() const;
    /// "en" or "es".
    QString language() const;
    QStringList themeWords() const { return {tr("Day"), tr("Sun"), tr("Dusk")}; }
    QStringList textWords() const { return {QStringLiteral("100 %"), QStringLiteral("125 %"), QStringLiteral("150 %")}; }
    QStringList languageWords() const { return {QStringLiteral("English"), QStringLiteral("Español")}; }
    int themeIndex() const { return m_theme; }
    int textIndex() const { return m_text; }
    int languageIndex() const { return m_language; }

    Q_INVOKABLE void pickTheme(int index);
    Q_INVOKABLE void pickText(int index);
    Q_INVOKABLE void pickLanguage(int index);
    /// For this run only, by name: "sun", "150", "es". Other words change nothing.
    void showTheme(const QString& name);
    void showText(const QString& percent);
    void showLanguage(const QString& code);

signals:
    void changed();
    /// Every text is to be made again.
    void languageChanged();

private:
    void keep();
    void speak();

    QString m_path, m_trouble;
    TextTranslator m_translator;
    int m_theme = 0, m_text = 0, m_language = 0;
};

}  // namespace groundcount::view
