#include "method/rules/rule_set.h"

#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <QTest>

using namespace groundcount::method;

namespace {

QString page(const char* name)
{
    QFile file(QString(GROUNDCOUNT_SOURCE_DIR) + "/docs/" + name);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

QString text(std::string_view s) { return QString::fromUtf8(s.data(), static_cast<qsizetype>(s.size())); }

QString word(Mark mark)
{
    switch (mark) {
    case Mark::Seen: return "seen";
    case Mark::SecondHand: return "second-hand";
    case Mark::Memory: return "memory";
    case Mark::Own: break;
    }
    return "own";
}

QString row(const RuleKey& key, const QString& neutral, const std::string& source, Mark mark)
{
    return QString("| `%1` | %2 | %3 | %4 | [%5] | %6 |")
        .arg(text(key.key), text(key.meaning), text(key.allowed).replace("|", ", "), neutral, QString::fromStdString(source), word(mark));
}

}  // namespace

/// docs/method.md against the code: the tables of the rule set line by line, and every key that it cites.
class MethodPageTest : public QObject {
    Q_OBJECT
private slots:
    void everyLimitStandsOnThePageAsTheCodeHasIt()
    {
        const QStringList lines = page("method.md").split('\n');
        for (const auto& key : limitKeys()) {
            const Limit& limit = neutralRules().limits.find(key.key)->second;
            const QString expected = row(key, QString::fromStdString(limit.value.text() + " " + limit.unit), limit.source, limit.mark);
            QVERIFY2(lines.contains(expected), qPrintable("docs/method.md lacks: " + expected));
        }
    }

    void everyChoiceStandsOnThePageAsTheCodeHasIt()
    {
        const QStringList lines = page("method.md").split('\n');
        for (const auto& key : choiceKeys()) {
            const Choice& choice = neutralRules().choices.find(key.key)->second;
            const QString expected = row(key, QString::fromStdString(choice.word), choice.source, choice.mark);
            QVERIFY2(lines.contains(expected), qPrintable("docs/method.md lacks: " + expected));
        }
    }

    void thePageHasNoKeyThatTheCodeDoesNotRead()
    {
        QSet<QString> known;
        for (const auto* keys : {&limitKeys(), &choiceKeys()})
            for (const auto& key : *keys)
                known.insert(text(key.key));
        const QString method = page("method.md");
        auto rows = QRegularExpression("^\\| `([^`]+)` \\|", QRegularExpression::MultilineOption).globalMatch(method);
        int count = 0;
        for (; rows.hasNext(); ++count) {
            const QString key = rows.next().captured(1);
            QVERIFY2(known.contains(key), qPrintable(key));
        }
        QCOMPARE(count, static_cast<int>(known.size()));
    }

    void everyCitedKeyIsARowOfTheSources()
    {
        const QString sources = page("sources.md");
        const QString method = page("method.md");
        auto cited = QRegularExpression("\\[([A-Z][A-Z0-9]*(?:-[A-Z0-9]+)*)\\]").globalMatch(method);
        int count = 0;
        for (; cited.hasNext(); ++count) {
            const QString key = cited.next().captured(1);
            QVERIFY2(key == "KEY" || sources.contains("\n| `" + key + "` |"), qPrintable(key + " has no row in docs/sources.md"));
        }
        QVERIFY2(count > 100, qPrintable(QString::number(count)));
    }
};

QTEST_GUILESS_MAIN(MethodPageTest)
#include "method_page_test.moc"
