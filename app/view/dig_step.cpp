#include "view/dig_step.h"

#include "book/kinds.h"
#include "view/figure_text.h"
#include "view/sheet_book.h"

namespace groundcount::view {
namespace {

const char* const kSamples[] = {"none", "weighed", "later"};
const char* const kMoistures[] = {"gauge", "now", "later"};
const char* const kMethods[] = {"oven", "carbide", "microwave"};

int indexOf(const char* const (&words)[3], const QString& word)
{
    for (int i = 0; i < 3; ++i)
        if (word == QLatin1String(words[i]))
            return i;
    return -1;
}

}  // namespace

int DigStep::sampleIndex() const
{
    return indexOf(kSamples, typed("sample"));
}

int DigStep::moistureIndex() const
{
    return has("moisture") ? indexOf(kMoistures, typed("moisture")) : 0;
}

int DigStep::methodIndex() const
{
    return has("method") ? indexOf(kMethods, typed("method")) : 0;
}

void DigStep::pickSample(int index)
{
    if (index >= 0 && index < 3)
        type("sample", QLatin1String(kSamples[index]));
}

void DigStep::pickSieve(int index)
{
    type("sieve", index == 0 ? QStringLiteral("No. 4") : QStringLiteral("3/4 in."));
}

void DigStep::pickMoisture(int index)
{
    if (index >= 0 && index < 3)
        type("moisture", QLatin1String(kMoistures[index]));
}

void DigStep::pickMethod(int index)
{
    if (index >= 0 && index < 3)
        type("method", QLatin1String(kMethods[index]));
}

void DigStep::typeMasses()
{
    auto* entry = new NumberEntry(tr("Sample"), sieveIndex() >= 0 ? sieveWords()[sieveIndex()] : QString(), tr("Use the masses"), this);
    entry->add(tr("All of it"), QStringLiteral("g"), typed("total"));
    entry->add(tr("Retained"), QStringLiteral("g"), typed("retained"));
    entry->add(tr("Over 3 in."), QStringLiteral("g"), typed("over"));
    open(entry, {"total", "retained", "over"});
}

void DigStep::typeContent()
{
    auto* entry = new NumberEntry(tr("Moisture"), methodWords()[std::max(0, methodIndex())], tr("Use this value"), this);
    entry->add(tr("Moisture"), QStringLiteral("%"), typed("other"));
    open(entry, {"other"});
}

void DigStep::judgeEntry(NumberEntry& entry)
{
    if (entry.fields().size() == 1) {
        entry.setNotYet(entry.typedAt(0).isEmpty() ? tr("Type the moisture") : QString());
        return;
    }
    entry.field(0)->setDoubt(m_sampleDoubt);
    entry.field(1)->setDoubt(m_sampleTrouble);
    entry.setNotYet(entry.typedAt(0).isEmpty() || entry.typedAt(1).isEmpty() ? tr("Type both masses") : QString());
}

std::string DigStep::waiting() const
{
    return typed("sample") == "later" ? "sample" : typed("moisture") == "later" ? "oven" : "";
}

bool DigStep::isWaiting() const
{
    return !waiting().empty();
}

void DigStep::refresh()
{
    m_sampleTrouble.clear();
    m_sampleDoubt.clear();
    const auto least = m_facts.book->number("sample.mass");
    m_rule = tr("Check sample of at least %1 g").arg(figureText(least, 0));
    m_masses = has("total") ? tr("%1 g, retained %2 g").arg(typed("total"), has("retained") ? typed("retained") : QStringLiteral("–")) : tr("Not weighed yet");
    if (has("over") && typed("over").toDouble() > 0)
        m_masses += tr(", over 3 in. %1 g").arg(typed("over"));
    const double total = typed("total").toDouble();
    if (isWeighed() && has("total") && total < least)
        m_sampleDoubt = tr("%1 g is less than the %2 g that the rules ask for.").arg(typed("total"), figureText(least, 0));
    if (isWeighed() && has("total") && has("retained") && typed("retained").toDouble() > total)
        m_sampleTrouble = tr("Retained %1 g is more than the whole sample of %2 g. Are the two the wrong way round?").arg(typed("retained"), typed("total"));
    if (isWeighed() && has("total") && !(total > 0))
        m_sampleTrouble = tr("The sample's mass must be above 0 g; it is %1 g.").arg(typed("total"));
    m_waitingText = waiting() == "sample" ? tr("Waits for the sample: the verdict is provisional.") : waiting() == "oven" ? tr("Waits for the moisture: the verdict is provisional.") : QString();
    setNotYet(isSealed() ? QString() : whyNotYet());
}

QString DigStep::whyNotYet() const
{
    if (sampleIndex() < 0)
        return tr("Seal: say what the sample shows");
    if (sampleIndex() == 0 && m_facts.book->choice("coarse.sample") == "always")
        return tr("Seal: the rules ask for a weighed sample");
    if (isWeighed() && sieveIndex() < 0)
        return tr("Seal: choose the sieve");
    if (isWeighed() && (!has("total") || !has("retained")))
        return tr("Seal: type the masses");
    if (!m_sampleTrouble.isEmpty())
        return tr("Seal: the masses do not fit");
    if (moistureIndex() == 1 && !has("other"))
        return tr("Seal: type the moisture");
    return {};
}

Result<std::vector<book::Entry>> DigStep::entries() const
{
    if (const QString why = whyNotYet(); !why.isEmpty())
        return refused((m_sampleTrouble.isEmpty() ? why : m_sampleTrouble).toStdString());
    book::Body body{{"waiting", waiting()}};
    if (isWeighed()) {
        body["total_mass_g"] = typed("total").toStdString();
        body["retained_mass_g"] = typed("retained").toStdString();
        if (has("over"))
            body["over_3in_mass_g"] = typed("over").toStdString();
        body["sieve"] = typed("sieve").toStdString();
    }
    if (moistureIndex() == 1) {
        body["other_water_content_pct"] = typed("other").toStdString();
        body["other_method"] = kMethods[std::max(0, methodIndex())];
    }
    return std::vector{entry("sample", std::move(body))};
}

QJsonObject DigStep::textOf(const book::Body& sample)
{
    const auto text = [&](const char* key) { return QString::fromStdString(book::textAt(sample, key)); };
    const QString total = QString::fromStdString(book::withUnit(sample, "total_mass", book::Unit::Mass).text);
    const QString wait = text("waiting");
    return {{QStringLiteral("sample"), wait == "sample" ? QStringLiteral("later") : total.isEmpty() ? QStringLiteral("none") : QStringLiteral("weighed")},
            {QStringLiteral("total"), total},
            {QStringLiteral("retained"), QString::fromStdString(book::withUnit(sample, "retained_mass", book::Unit::Mass).text)},
            {QStringLiteral("over"), QString::fromStdString(book::withUnit(sample, "over_3in_mass", book::Unit::Mass).text)},
            {QStringLiteral("sieve"), text("sieve")},
            {QStringLiteral("moisture"), !text("other_water_content_pct").isEmpty() ? QStringLiteral("now") : wait == "oven" ? QStringLiteral("later") : QStringLiteral("gauge")},
            {QStringLiteral("other"), text("other_water_content_pct")},
            {QStringLiteral("method"), text("other_method")}};
}

}  // namespace groundcount::view
