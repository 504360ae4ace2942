// What a word of the command line opens.
#include "book/store.h"
#include "view/desk.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

namespace groundcount::view {
namespace {

/// Id of the gauge, reference test or person of this name; empty for no name. @error Refused for a name that the book does not have
Result<QString> kitSubjectNamed(const Session& session, const QString& name)
{
    if (name.isEmpty())
        return QString();
    const auto& all = session.snapshot();
    const std::string wanted = name.toStdString();
    const auto found = [&](const auto& rows) {
        const auto at = std::find_if(rows.begin(), rows.end(), [&](const auto& row) { return row.name == wanted; });
        return at == rows.end() ? QString() : QString::fromStdString(at->id);
    };
    for (const QString& id : {found(all.gauges), found(all.proctors), found(all.people), found(all.lots)})
        if (!id.isEmpty())
            return id;
    return refused("The book has no gauge, reference test, person or lot called " + wanted + ".");
}

}  // namespace

Result<void> Desk::openNamed(const QString& what)
{
    const QString name = what.section(':', 1);
    if (const QString kind = what.section(':', 0, 0); m_session->isReading() && (kind == QStringLiteral("test") || kind == QStringLiteral("record") || kind == QStringLiteral("paper"))) {
        whenRead([this, what] {
            if (const auto opened = openNamed(what); !opened)
                m_session->setTrouble(QString::fromStdString(opened.error().what));
        });
        return {};
    }
    if (what == QStringLiteral("new")) {
        start();
        return {};
    }
    if (what == QStringLiteral("screen")) {
        setScreenOpen(true);
        return {};
    }
    if (leadsOff(what)) {
        setPlace(QStringLiteral("lots"));
        setLot(what);
        return {};
    }
    if (what.startsWith(QStringLiteral("site-file:"))) {
        const QJsonObject draft{{QStringLiteral("path"), what.mid(what.indexOf(':') + 1)}};
        const auto saved = m_session->store().saveDraft(m_session->person().id, "site-file", QJsonDocument(draft).toJson(QJsonDocument::Compact).toStdString());
        setKit(QStringLiteral("site-file"));
        return saved;
    }
    if (what == QStringLiteral("coverage")) {
        setPlace(QStringLiteral("map"));
        m_coverageShown = true;
        emit coverageShownChanged();
        return {};
    }
    if (what.startsWith(QStringLiteral("record:"))) {
        const auto opened = openNamed(QStringLiteral("test:") + name);
        m_sheet.setProperty("recordShown", opened.has_value());
        return opened;
    }
    if (what.startsWith(QStringLiteral("test:"))) {
        const QString number = name.section('/', 0, 0);
        const QString step = name.section('/', 1);
        const auto& tests = m_session->snapshot().tests;
        const auto test = std::find_if(tests.begin(), tests.end(), [&](const auto& t) { return QString::fromStdString(t.number) == number; });
        if (test == tests.end())
            return refused("The book has no test " + number.toStdString() + ".");
        openTest(QString::fromStdString(test->id));
        bool isNumber = false;
        const int index = step.toInt(&isNumber) - 1;
        if (!step.isEmpty() && (!isNumber || index < 0 || index >= TestSheet::kSteps))
            return refused("The step of a test is 1 to 6; it is " + step.toStdString() + ".");
        if (isNumber)
            m_sheet.pickStep(index);
        return {};
    }
    if (what.startsWith(QStringLiteral("paper:lot:")) || what.startsWith(QStringLiteral("paper:review:"))) {
        const auto& lots = m_session->snapshot().lots;
        const auto lot = std::find_if(lots.begin(), lots.end(), [&](const auto& l) { return QString::fromStdString(l.name) == name.section(':', 1); });
        if (lot == lots.end())
            return refused("The book has no lot " + name.section(':', 1).toStdString() + ".");
        setPlace(QStringLiteral("lots"));
        setLot(QString::fromStdString(lot->id));
        setPaper(name.section(':', 0, 0) + ':' + m_lot);
        return {};
    }
    if (what.startsWith(QStringLiteral("paper:"))) {
        const auto& tests = m_session->snapshot().tests;
        const auto test = std::find_if(tests.begin(), tests.end(), [&](const auto& t) { return QString::fromStdString(t.number) == name; });
        if (test == tests.end() && name != QStringLiteral("day"))
            return refused("The book has no test " + name.toStdString() + ".");
        setPaper(test == tests.end() ? name : QStringLiteral("test:") + QString::fromStdString(test->id));
        return {};
    }
    if (what.startsWith(QStringLiteral("lot:"))) {
        for (const auto& lot : m_session->snapshot().lots) {
            const QString lotName = QString::fromStdString(lot.name);
            if (name == lotName || name.startsWith(lotName + '/')) {
                setPlace(QStringLiteral("lots"));
                setLot(QString::fromStdString(lot.id));
                const QString sheet = name.mid(lotName.size() + 1);
                setLotSheet(sheet);
                return m_lotSheet == sheet ? Result<void>() : refused("A lot has the sheets review, figures, draw, profile and tests; none is called " + sheet.toStdString() + ".");
            }
        }
        return refused("The book has no lot " + name.toStdString() + ".");
    }
    if (what.startsWith(QStringLiteral("kit:"))) {
        static const QStringList sheets{QStringLiteral("counts"), QStringLiteral("stability"), QStringLiteral("custody"), QStringLiteral("gauge"), QStringLiteral("material"),
                                        QStringLiteral("person"), QStringLiteral("rules"), QStringLiteral("offset"), QStringLiteral("site-file"), QStringLiteral("background"),
                                        QStringLiteral("receiver"), QStringLiteral("job"), QStringLiteral("line"), QStringLiteral("lot"), QStringLiteral("lift"),
                                        QStringLiteral("books")};
        if (!sheets.contains(name.section(':', 0, 0)))
            return refused("Kit has the sheets " + sheets.join(QStringLiteral(", ")).toStdString() + "; none is called " + name.toStdString() + ".");
        const auto id = kitSubjectNamed(*m_session, name.section(':', 1));
        if (!id)
            return tl::unexpected(id.error());
        setKit(id->isEmpty() ? name.section(':', 0, 0) : name.section(':', 0, 0) + ':' + *id);
        return {};
    }
    return refused("--open must be new, screen, coverage, hand-over, server, publish, test:NUMBER, record:NUMBER, paper:day, paper:NUMBER, paper:lot:NAME, paper:review:NAME, site-file:PATH, lot:NAME or kit:SHEET; it is " + what.toStdString() + ".");
}

}  // namespace groundcount::view
