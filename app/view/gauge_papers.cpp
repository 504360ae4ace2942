#include "view/gauge_papers.h"

#include "book/kinds.h"
#include "book/store.h"
#include "view/calibration_csv.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>

namespace groundcount::view {
namespace {

const QStringList kGaugeKeys{QStringLiteral("name"), QStringLiteral("serial"), QStringLiteral("sources"), QStringLiteral("prescale")};
const QStringList kCalibrationKeys{QStringLiteral("cal."), QStringLiteral("n"), QStringLiteral("c"), QStringLiteral("w.")};
const QStringList kLeakKeys{QStringLiteral("leak.")};
const QChar kMinus(0x2212);
constexpr qint64 kLargestCsv = 1 << 20;  // a calibration is a page, not a book

}  // namespace

std::string GaugePapers::densityKey() const
{
    return m_session->job().densityUnit == "kg/m3" ? "kg_m3" : "lb_ft3";
}

QString GaugePapers::densityUnit() const
{
    return m_session->job().densityUnit == "kg/m3" ? QStringLiteral("kg/m³") : QStringLiteral("lb/ft³");
}

std::string GaugePapers::signedText(const QString& key) const
{
    return (typed(key + ".sign") == "1" ? "-" : "") + typed(key).toStdString();
}

bool GaugePapers::differs(const QStringList& keyStarts) const
{
    const QJsonObject sealed = fromBook();
    const auto ours = [&](const QString& key) {
        // "c" stands for the curves c1., c2. … and must not take "cal.".
        return std::any_of(keyStarts.begin(), keyStarts.end(), [&](const QString& start) {
            return start.endsWith('.') ? key.startsWith(start) : start == "c" ? key.size() > 1 && key[0] == 'c' && key[1].isDigit() : key == start;
        });
    };
    QStringList keys = sealed.keys() + draft().keys();
    keys.removeDuplicates();
    return std::any_of(keys.begin(), keys.end(), [&](const QString& key) { return ours(key) && sealed.value(key) != draft().value(key); });
}

void GaugePapers::typePrescale()
{
    auto* entry = new NumberEntry(tr("Prescale"), {}, tr("Use it"), this);
    entry->add(tr("Prescale"), {}, typed("prescale"));
    open(entry, {QStringLiteral("prescale")});
}

void GaugePapers::typeDate(const QString& which)
{
    const QString name = which == "cal.on" ? tr("Calibrated on") : which == "cal.expires" ? tr("Calibration ends") : which == "leak.on" ? tr("Leak tested on") : tr("Leak test ends");
    openDate(which, name);
}

void GaugePapers::typeCurve(const QString& number)
{
    const QString stem = 'c' + number + '.';
    auto* entry = new NumberEntry(tr("Density curve"), {}, tr("Use this curve"), this);
    entry->add(tr("Depth"), tr("in."), typed(stem + "depth"));
    entry->add(tr("A"), {}, typed(stem + "a"));
    entry->add(tr("B"), tr("per %1").arg(densityUnit()), typed(stem + "b"));
    entry->add(tr("C"), {}, typed(stem + "c"));
    entry->add(tr("Lowest"), densityUnit(), typed(stem + "low"));
    entry->add(tr("Highest"), densityUnit(), typed(stem + "high"));
    entry->setChoice({tr("C is +"), tr("C is %1").arg(kMinus)}, typed(stem + "c.sign") == "1" ? 1 : 0);
    open(entry, {stem + "depth", stem + "a", stem + "b", stem + "c", stem + "low", stem + "high"}, stem + "c.sign");
}

void GaugePapers::addCurve()
{
    const QString number = QString::number(curveCount() + 1);
    type(QStringLiteral("n"), number);
    typeCurve(number);
}

void GaugePapers::typeWater()
{
    auto* entry = new NumberEntry(tr("Water curve"), {}, tr("Use this curve"), this);
    entry->add(tr("E"), {}, typed("w.e"));
    entry->add(tr("Slope"), tr("per %1").arg(densityUnit()), typed("w.slope"));
    entry->add(tr("Lowest"), densityUnit(), typed("w.low"));
    entry->add(tr("Highest"), densityUnit(), typed("w.high"));
    entry->setChoice({tr("E is +"), tr("E is %1").arg(kMinus)}, typed("w.e.sign") == "1" ? 1 : 0);
    open(entry, {QStringLiteral("w.e"), QStringLiteral("w.slope"), QStringLiteral("w.low"), QStringLiteral("w.high")}, QStringLiteral("w.e.sign"));
}

void GaugePapers::typeCalibrationCounts()
{
    auto* entry = new NumberEntry(tr("Standard counts"), {}, tr("Use these counts"), this);
    entry->add(tr("Density"), tr("counts"), typed("cal.d"));
    entry->add(tr("Moisture"), tr("counts"), typed("cal.m"));
    open(entry, {QStringLiteral("cal.d"), QStringLiteral("cal.m")});
}

void GaugePapers::judgeEntry(NumberEntry& entry)
{
    if (entry.title() == tr("Prescale"))
        entry.setNote(tr("True counts per count that the gauge shows"), {}, Mark::Nothing);
    if (entry.title() == tr("Water curve"))
        entry.setNote(tr("Count ratio = E + slope × water density"), {}, Mark::Nothing);
    if (entry.fields().size() != 6)
        return;
    entry.setNote(tr("Count ratio = A exp(−B × wet density) − C"), {}, Mark::Nothing);
    const bool whole = !entry.typedAt(0).isEmpty() && !entry.typedAt(1).isEmpty() && !entry.typedAt(2).isEmpty() && !entry.typedAt(3).isEmpty();
    entry.setNotYet(whole ? QString() : tr("Type depth, A, B and C"));
}

void GaugePapers::lookForFiles()
{
    m_filesShown = !m_filesShown;
    std::vector<Row> rows;
    for (const auto& path : csvFilesAround(QFileInfo(QString::fromStdString(m_session->store().path())).absolutePath())) {
        Row row = Row::ofWords(QFileInfo(path).fileName(), QFileInfo(path).absolutePath(), {});
        row.id = path;
        rows.push_back(std::move(row));
    }
    m_importText = rows.empty() ? tr("No CSV file in Documents, Downloads or beside the book. Type where it is.") : QString();
    m_files.setRows(std::move(rows));
    emit changed();
}

void GaugePapers::importFile(const QString& path)
{
    QFile file(path.trimmed());
    if (!file.open(QIODevice::ReadOnly) || file.size() > kLargestCsv) {
        m_importText = tr("%1 cannot be read.").arg(path);
        emit changed();
        return;
    }
    const auto read = calibrationFromCsv(file.readAll().toStdString(), densityKey());
    if (!read) {
        m_importText = QString::fromStdString(read.error().what);
        emit changed();
        return;
    }
    QJsonObject texts = *read;
    // Curves of before that the file does not have give way.
    for (const auto& key : draft().keys())
        if (key.size() > 1 && key[0] == 'c' && key[1].isDigit() && !texts.contains(key))
            texts.insert(key, QString());
    m_importText = tr("%1 depths and the water curve read from %2. Check each against the certificate.").arg(texts.value(QStringLiteral("n")).toString(), QFileInfo(path).fileName());
    m_filesShown = false;
    typeAll(texts);
    emit changed();
}

void GaugePapers::refresh()
{
    m_title = isOld() ? (has("name") ? typed("name") : tr("Gauge")) : tr("New gauge");
    m_context = has("serial") ? tr("serial %1").arg(typed("serial")) : QString();
    m_calibratedOn = dateText(typed("cal.on"));
    m_calibrationExpires = dateText(typed("cal.expires"));
    m_leakTestedOn = dateText(typed("leak.on"));
    m_leakExpires = dateText(typed("leak.expires"));
    m_water = has("w.slope") ? tr("E %1, slope %2").arg(QString::fromStdString(signedText(QStringLiteral("w.e"))).replace('-', kMinus), typed("w.slope")) : QString();
    m_calibrationCounts = has("cal.d") || has("cal.m") ? typed("cal.d") + " / " + typed("cal.m") : QString();
    std::vector<Row> rows;
    QString missing;
    for (int i = 1; i <= curveCount(); ++i) {
        const QString stem = 'c' + QString::number(i) + '.';
        Row row;
        row.id = QString::number(i);
        row.chevron = true;
        row.title = typed(stem + "depth").isEmpty() ? tr("Depth not typed") : tr("%1 in.").arg(typed(stem + "depth"));
        row.second = tr("A %1, B %2, C %3").arg(typed(stem + "a"), typed(stem + "b"), QString::fromStdString(signedText(stem + "c")).replace('-', kMinus));
        row.word = typed(stem + "low").isEmpty() ? QString() : tr("%1 to %2").arg(typed(stem + "low"), typed(stem + "high"));
        if (typed(stem + "depth").isEmpty() || typed(stem + "a").isEmpty() || typed(stem + "b").isEmpty() || typed(stem + "c").isEmpty())
            missing = tr("Seal: curve %1 is not whole").arg(i);
        rows.push_back(std::move(row));
    }
    m_curves.setRows(std::move(rows));
    const bool gauge = differs(kGaugeKeys), calibration = differs(kCalibrationKeys), leak = differs(kLeakKeys);
    m_asksWhy = isOld() && gauge;
    QStringList late;
    if (isPast(text("cal.expires"), *m_session))
        late << tr("the calibration ended %1").arg(m_calibrationExpires);
    if (isPast(text("leak.expires"), *m_session))
        late << tr("the leak test ended %1").arg(m_leakExpires);
    if (leakIndex() == 1)
        late << tr("the leak test found a leak: the gauge stays out of service, call the radiation safety officer");
    m_expiryCaution = late.isEmpty() ? QString() : tr("Not to be used: %1.").arg(late.join(QStringLiteral("; ")));
    m_sealText = isOld() ? tr("Seal what changed") : tr("Seal the gauge");
    m_sealNotYet = name().trimmed().isEmpty() || serial().trimmed().isEmpty() ? tr("Seal: type name and serial")
                   : !gauge && !calibration && !leak                          ? tr("Nothing has changed")
                   : m_asksWhy && why().trimmed().isEmpty()                   ? tr("Seal: say why the gauge's record changes")
                   : calibration && !has("cal.on")                            ? tr("Seal: the calibration needs its date")
                   : calibration && curveCount() == 0                         ? tr("Seal: the calibration needs a curve")
                   : calibration && !missing.isEmpty()                        ? missing
                   : calibration && (!has("w.e") || !has("w.slope"))          ? tr("Seal: the calibration needs its water curve")
                   : leak && (!has("leak.on") || leakIndex() < 0)             ? tr("Seal: the leak test needs date and result")
                                                                              : QString();
}

Result<std::vector<book::Entry>> GaugePapers::entries() const
{
    std::vector<book::Entry> made;
    m_newId = isOld() ? m_subject : Session::newId();
    if (differs(kGaugeKeys))
        made.push_back(gaugeEntry(m_newId));
    if (differs(kCalibrationKeys))
        made.push_back(calibrationEntry(m_newId));
    if (differs(kLeakKeys))
        made.push_back(leakEntry(m_newId));
    if (made.empty())
        return refused("Nothing differs from what is sealed.");
    return made;
}

void GaugePapers::afterSeal()
{
    setSubjectQuietly(m_newId);
}

}  // namespace groundcount::view
