#include "view/place_step.h"

#include "method/site/station.h"
#include "position/position_source.h"
#include "view/figure_text.h"
#include "view/sealed_words.h"
#include "view/sheet_book.h"
#include "view/test_rows.h"
#include "view/whereabouts.h"

#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

// Held still: a receiver that wanders further than this from its mean has been carried (common practice, no source).
constexpr double kStillRadiusM = 2.0;
constexpr const char* kPurposes[] = {"random", "directed", "retest"};

double textNumber(const QString& text)
{
    bool ok = false;
    const double value = text.toDouble(&ok);
    return ok ? value : std::nan("");
}

}  // namespace

PlaceStep::PlaceStep(SheetFacts& facts, QObject* parent) : SheetStep(facts, parent), m_averager(kStillRadiusM) {}

QStringList PlaceStep::purposeWords() const
{
    return {tr("Random"), tr("Directed"), tr("Retest of…")};
}

int PlaceStep::purposeIndex() const
{
    const auto word = typed("purpose").toStdString();
    const auto at = std::find(std::begin(kPurposes), std::end(kPurposes), word);
    return at == std::end(kPurposes) ? -1 : static_cast<int>(at - std::begin(kPurposes));
}

void PlaceStep::useReceiver()
{
    type("by", {});
}

void PlaceStep::keepPosition()
{
    if (!byTape() && has("north"))
        type("keep", QStringLiteral("yes"));
}

void PlaceStep::averageAgain()
{
    m_averager.restart();
    type("keep", {});
    derive();
}

void PlaceStep::pickPurpose(int index)
{
    if (index >= 0 && index < 3)
        typeAll({{QStringLiteral("purpose"), QString::fromLatin1(kPurposes[index])}, {QStringLiteral("retest_of"), QString()}});
}

void PlaceStep::pickLift(int index)
{
    if (!m_lot)
        return;
    const auto lifts = m_facts.book->lifts(m_lot->id);
    if (index >= 0 && index < static_cast<int>(lifts.size()))
        type("lift", QString::fromStdString(lifts[static_cast<std::size_t>(index)].id));
}

void PlaceStep::pickFailure(const QString& testId)
{
    const auto parent = m_facts.book->test(testId.toStdString());
    if (!parent)
        return;
    QJsonObject texts{{QStringLiteral("purpose"), QStringLiteral("retest")}, {QStringLiteral("retest_of"), testId}, {QStringLiteral("lift"), QString::fromStdString(parent->lift)}};
    const auto lot = m_facts.book->lot(parent->lot);
    if (parent->stationFt && parent->offsetFt && !has("station") && lot && isByStations(*lot)) {
        texts.insert(QStringLiteral("line"), QString::fromStdString(lot->alignment));
        texts.insert(QStringLiteral("station"), QString::number(*parent->stationFt, 'f', 1));
        texts.insert(QStringLiteral("offset"), QString::number(std::fabs(*parent->offsetFt), 'f', 1));
        texts.insert(QStringLiteral("side"), *parent->offsetFt < 0 ? QStringLiteral("Lt") : QStringLiteral("Rt"));
    }
    typeAll(texts);
}

void PlaceStep::giveGaugeReason(const QString& reason)
{
    type("gauge_reason", reason.trimmed());
}

void PlaceStep::listen(bool on)
{
    disconnect(m_fixes);
    disconnect(m_receivers);
    if (!on || !m_facts.session)
        return;
    const auto* source = m_facts.session->positionSource();
    m_receivers = connect(m_facts.session, &Session::placeChanged, this, [this, source] {
        if (m_facts.session->positionSource() != source)
            listen(true);  // another receiver was chosen
    });
    if (!source)
        return;
    m_averager.restart();
    m_fixes = connect(source, &position::PositionSource::fixed, this, &PlaceStep::takeFix);
    if (const auto last = source->lastFix())
        takeFix(*last);
}

void PlaceStep::takeFix(const position::Fix& fix)
{
    if (isSealed() || keepsPosition())
        return;
    const auto taken = m_averager.add(fix);
    m_positionTrouble = taken ? QString() : QString::fromStdString(taken.error().what);
    if (!byHand())
        derive();
}

void PlaceStep::refresh()
{
    m_placeTrouble.clear();
    m_north = m_east = m_latitude = m_longitude = m_stationFt = m_offsetFt = std::nullopt;
    m_line = nullptr;
    showReceiver();
    findPlace();
    findSite();
    showPurpose();
    setNotYet(isSealed() ? QString() : whyNotYet());
}

void PlaceStep::showReceiver()
{
    const int needed = static_cast<int>(m_facts.book->number("place.fixes"));
    m_fixesLabel = tr("Averaged, %1 needed").arg(needed);
    m_accuracyLabel = tr("Accuracy, 2DRMS");
    m_scatter.clear();
    m_circleRadius = 0;
    m_scatterNote = tr("Hold still.");
    if (isSealed() || byHand() || keepsPosition()) {
        m_accuracy = !byHand() && has("accuracy") ? QStringLiteral("±") + typed("accuracy") : QString();
        m_fixKind = byHand() ? placeWord() : sealedWord(typed("fix_kind").toStdString());
        m_fixesText = has("fixes") ? tr("%1 fixes").arg(typed("fixes")) : QString();
        return;
    }
    m_accuracy = m_fixKind = QString();
    m_fixesText = tr("%1 fixes").arg(m_averager.count());
    const auto average = m_averager.average();
    if (average)
        showAverage(*average);
    else
        m_fixKind = m_facts.session->positionSource() ? tr("No fix yet") : tr("No receiver");
}

void PlaceStep::showAverage(const position::Average& average)
{
    m_fixKind = sealedWord(average.qualityWord.toStdString());
    m_fixesText = average.count == 1 ? tr("1 fix") : tr("%1 fixes").arg(average.count);
    double radiusFt = 0;
    if (average.radiusM) {
        radiusFt = Length::metres(*average.radiusM).feet();
        m_accuracy = QStringLiteral("±") + figureText(radiusFt, 1);
    }
    // Squares of 1, 2, 5, 10 ... ft, so that the circle and every fix fit in about three of them.
    double reach = radiusFt;
    for (const auto& fix : average.scatter)
        reach = std::max(reach, Length::metres(std::hypot(fix.northM, fix.eastM)).feet());
    double square = 0.1;
    for (int step = 0; 2.2 * reach > 3.5 * square; ++step)
        square *= step % 3 == 1 ? 2.5 : 2.0;
    m_squaresAcross = 3.5;
    m_circleRadius = radiusFt / square;
    for (const auto& fix : average.scatter)
        m_scatter.append(QPointF(Length::metres(fix.eastM).feet() / square, Length::metres(fix.northM).feet() / square));
    m_scatterNote = tr("Squares of %1 ft. Hold still.").arg(figureText(square, square < 1 ? 1 : 0));
    m_hasScatterSite = false;
    if (m_site && m_north) {
        const double east = m_facts.book->gridLength(m_site->east - *m_east).feet() / square;
        const double north = m_facts.book->gridLength(m_site->north - *m_north).feet() / square;
        m_hasScatterSite = std::max(std::fabs(east), std::fabs(north)) < m_squaresAcross / 2;
        m_scatterSite = QPointF(east, north);
    }
}

void PlaceStep::findPlace()
{
    Result<SheetBook::Spot> spot = refused("");
    if (isSealed() || keepsPosition()) {
        if (has("north")) {
            m_north = textNumber(typed("north"));
            m_east = textNumber(typed("east"));
        }
        if (has("station_number"))
            m_stationFt = textNumber(typed("station_number"));
        if (has("offset_number"))
            m_offsetFt = textNumber(typed("offset_number"));
    } else if (byTape()) {
        const double station = textNumber(typed("station"));
        const double offset = textNumber(typed("offset")) * (typed("side") == "Lt" ? -1 : 1);
        m_line = tapedLine();
        if (!m_line)
            spot = refused("No alignment is in the book, so that a station cannot be found.");
        if (m_line && !std::isnan(station) && !std::isnan(offset)) {
            spot = m_facts.book->spotAt(*m_line, station, offset);
            m_stationFt = station;
            m_offsetFt = offset;
        }
    } else if (byHand()) {
        spot = m_facts.book->spotAtGrid(textNumber(typed("map_north")), textNumber(typed("map_east")));
    } else if (const auto average = m_averager.average()) {
        spot = m_facts.book->spotAtPosition(average->latitude, average->longitude);
    }
    if (spot) {
        m_north = spot->north;
        m_east = spot->east;
        m_latitude = spot->latitudeDeg;
        m_longitude = spot->longitudeDeg;
    } else {
        m_placeTrouble = QString::fromStdString(spot.error().what);
    }
    findLot();
    m_station = m_stationFt ? QString::fromStdString(method::stationText(*m_stationFt, 100.0, 1)) : QStringLiteral("–");
    m_offset = m_offsetFt ? figureText(std::fabs(*m_offsetFt), 1) : QStringLiteral("–");
    m_offsetUnit = !m_offsetFt ? QString() : *m_offsetFt < 0 ? tr("ft Lt") : tr("ft Rt");
    m_gridLabel = tr("Grid, %1").arg(m_facts.session->job().gridUnit == "m" ? QStringLiteral("m") : QStringLiteral("ft"));
    m_grid = m_north ? tr("N %1   E %2").arg(figureText(*m_north, 1), figureText(*m_east, 1)) : QStringLiteral("–");
}

}  // namespace groundcount::view
