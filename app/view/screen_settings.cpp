#include "view/screen_settings.h"

#include <QCoreApplication>
#include <QLocale>
#include <QSettings>

namespace groundcount::view {
namespace {

const QStringList kThemes{QStringLiteral("day"), QStringLiteral("sun"), QStringLiteral("dusk")};
const QStringList kTexts{QStringLiteral("100"), QStringLiteral("125"), QStringLiteral("150")};
const QStringList kEnds{QStringLiteral("signal"), QStringLiteral("silent")};
const QStringList kLanguages{QStringLiteral("en"), QStringLiteral("es")};

int indexIn(const QStringList& words, const QString& word, int fallback)
{
    const auto at = words.indexOf(word);
    return at < 0 ? fallback : static_cast<int>(at);
}

}  // namespace

ScreenSettings::~ScreenSettings()
{
    if (QCoreApplication::instance())
        QCoreApplication::removeTranslator(&m_translator);
}

void ScreenSettings::keepIn(const QString& path)
{
    m_path = path;
    const QSettings kept(path, QSettings::IniFormat);
    m_theme = indexIn(kThemes, kept.value(QStringLiteral("theme")).toString(), 0);
    m_text = indexIn(kTexts, kept.value(QStringLiteral("text")).toString(), 0);
    m_end = indexIn(kEnds, kept.value(QStringLiteral("end")).toString(), 0);
    // Before anybody has chosen, the device's own language, where we speak it.
    m_language = indexIn(kLanguages, kept.value(QStringLiteral("language")).toString(), indexIn(kLanguages, QLocale::system().name().left(2), 0));
    speak();
    emit changed();
}

QString ScreenSettings::theme() const
{
    return kThemes[m_theme];
}

double ScreenSettings::textScale() const
{
    return kTexts[m_text].toDouble() / 100;
}

QString ScreenSettings::language() const
{
    return kLanguages[m_language];
}

void ScreenSettings::pickTheme(int index)
{
    if (index == m_theme || index < 0 || index >= kThemes.size())
        return;
    m_theme = index;
    keep();
    emit changed();
}

void ScreenSettings::pickText(int index)
{
    if (index == m_text || index < 0 || index >= kTexts.size())
        return;
    m_text = index;
    keep();
    emit changed();
}

void ScreenSettings::pickLanguage(int index)
{
    if (index == m_language || index < 0 || index >= kLanguages.size())
        return;
    m_language = index;
    keep();
    speak();
    emit languageChanged();
    emit changed();
}

void ScreenSettings::pickEnd(int index)
{
    if (index == m_end || index < 0 || index >= kEnds.size())
        return;
    m_end = index;
    keep();
    emit changed();
}

void ScreenSettings::showTheme(const QString& name)
{
    m_theme = indexIn(kThemes, name, m_theme);
    emit changed();
}

void ScreenSettings::showText(const QString& percent)
{
    m_text = indexIn(kTexts, percent, m_text);
    emit changed();
}

void ScreenSettings::showLanguage(const QString& code)
{
    m_language = indexIn(kLanguages, code, m_language);
    speak();
    emit languageChanged();
    emit changed();
}

void ScreenSettings::keep()
{
    if (m_path.isEmpty())
        return;
    QSettings kept(m_path, QSettings::IniFormat);
    kept.setValue(QStringLiteral("theme"), theme());
    kept.setValue(QStringLiteral("text"), kTexts[m_text]);
    kept.setValue(QStringLiteral("language"), language());
    kept.setValue(QStringLiteral("end"), kEnds[m_end]);
    kept.sync();
    m_trouble = kept.status() == QSettings::NoError ? QString() : tr("The choice could not be kept in %1.").arg(m_path);
}

void ScreenSettings::speak()
{
    QCoreApplication::removeTranslator(&m_translator);
    QLocale::setDefault(QLocale(m_language == 0 ? QStringLiteral("en_US") : QStringLiteral("es_US")));
    if (m_translator.load(QStringLiteral(":/i18n/groundcount_%1.qm").arg(language())))
        QCoreApplication::installTranslator(&m_translator);
}

}  // namespace groundcount::view
