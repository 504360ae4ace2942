#include "view/sealed_words.h"

#include <QCoreApplication>

namespace groundcount::view {
namespace {

// Never read: lupdate finds the words here.
[[maybe_unused]] const char* const kWords[] = {
    QT_TRANSLATE_NOOP("RecordWords", "signed out"), QT_TRANSLATE_NOOP("RecordWords", "in transit"), QT_TRANSLATE_NOOP("RecordWords", "at site"),
    QT_TRANSLATE_NOOP("RecordWords", "signed in"), QT_TRANSLATE_NOOP("RecordWords", "trench"), QT_TRANSLATE_NOOP("RecordWords", "moisture"),
    QT_TRANSLATE_NOOP("RecordWords", "density"), QT_TRANSLATE_NOOP("RecordWords", "counts"), QT_TRANSLATE_NOOP("RecordWords", "technician"),
    QT_TRANSLATE_NOOP("RecordWords", "engineer"), QT_TRANSLATE_NOOP("RecordWords", "no leak"), QT_TRANSLATE_NOOP("RecordWords", "leak"),
    QT_TRANSLATE_NOOP("RecordWords", "sample"), QT_TRANSLATE_NOOP("RecordWords", "oven"), QT_TRANSLATE_NOOP("RecordWords", "density low"),
    QT_TRANSLATE_NOOP("RecordWords", "density high"), QT_TRANSLATE_NOOP("RecordWords", "too dry"), QT_TRANSLATE_NOOP("RecordWords", "too wet"),
    QT_TRANSLATE_NOOP("RecordWords", "waits for the check sample"), QT_TRANSLATE_NOOP("RecordWords", "waits for the oven"),
    QT_TRANSLATE_NOOP("RecordWords", "a check was overridden"), QT_TRANSLATE_NOOP("RecordWords", "wet density outside the calibrated range"),
    QT_TRANSLATE_NOOP("RecordWords", "water density outside the calibrated range"), QT_TRANSLATE_NOOP("RecordWords", "trench offset is large"),
    QT_TRANSLATE_NOOP("RecordWords", "single"), QT_TRANSLATE_NOOP("RecordWords", "differential"), QT_TRANSLATE_NOOP("RecordWords", "precise positioning"),
    QT_TRANSLATE_NOOP("RecordWords", "RTK fixed"), QT_TRANSLATE_NOOP("RecordWords", "RTK float"), QT_TRANSLATE_NOOP("RecordWords", "phone")};

}  // namespace

QString sealedWord(const std::string& word)
{
    return QCoreApplication::translate("RecordWords", word.c_str());
}

QString sealedTitle(const std::string& word)
{
    QString title = sealedWord(word);
    if (!title.isEmpty())
        title[0] = title[0].toUpper();
    return title;
}

}  // namespace groundcount::view
