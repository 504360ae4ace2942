// Contrast by the definition of WCAG 2.2 (relative luminance, contrast ratio), against its enhanced level 7:1 for text (SC 1.4.6).
#include "qml/gallery_walk.h"

#include <cmath>

namespace {

double linear(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour)
{
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b)
{
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

} // namespace

class ThemeTest : public QObject {
    Q_OBJECT

private slots:
    void init()
    {
        m_engine = std::make_unique<QQmlEngine>();
        m_engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_theme = gallery::theme(m_engine.get());
        QVERIFY(m_theme != nullptr);
    }

    void measuresBlackOnWhiteAsTwentyOne()
    {
        QCOMPARE(contrast(Qt::black, Qt::white), 21.0);
    }

    void textReachesSevenToOne_data()
    {
        QTest::addColumn<QString>("theme");
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("ground");
        for (const char* theme : {"day", "sun", "dusk"}) {
            for (const auto& [text, ground] : {std::pair("ink", "paper"), std::pair("ink2", "paper"), std::pair("ink", "well"), std::pair("ink2", "well"),
                                               std::pair("ink", "field"), std::pair("pass", "paper"), std::pair("fail", "paper"),
                                               std::pair("actInk", "act"), std::pair("paper", "ink")}) {
                QTest::addRow("%s: %s on %s", theme, text, ground) << QString::fromLatin1(theme) << QString::fromLatin1(text) << QString::fromLatin1(ground);
            }
        }
    }

    void textReachesSevenToOne()
    {
        QFETCH(QString, theme);
        QFETCH(QString, text);
        QFETCH(QString, ground);
        m_theme->setProperty("name", theme);
        const double ratio = contrast(token(text), token(ground));
        QVERIFY2(ratio >= 7.0, qPrintable(QStringLiteral("%1 on %2 is %3:1").arg(text, ground).arg(ratio)));
    }

    void agreesWithTheDesignSheet_data()
    {
        QTest::addColumn<QString>("theme");
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("ground");
        QTest::addColumn<double>("ratio");
        QTest::newRow("day ink") << "day" << "ink" << "paper" << 16.7;
        QTest::newRow("day second ink") << "day" << "ink2" << "paper" << 8.9;
        QTest::newRow("day second ink on the well") << "day" << "ink2" << "well" << 8.0;
        QTest::newRow("day pass") << "day" << "pass" << "paper" << 9.1;
        QTest::newRow("day fail") << "day" << "fail" << "paper" << 7.6;
        QTest::newRow("day act") << "day" << "actInk" << "act" << 10.0;
        QTest::newRow("sun pass") << "sun" << "pass" << "paper" << 11.3;
        QTest::newRow("sun fail") << "sun" << "fail" << "paper" << 9.2;
        QTest::newRow("sun act") << "sun" << "actInk" << "act" << 16.1;
        QTest::newRow("dusk ink") << "dusk" << "ink" << "paper" << 13.5;
        QTest::newRow("dusk pass") << "dusk" << "pass" << "paper" << 9.1;
        QTest::newRow("dusk fail") << "dusk" << "fail" << "paper" << 8.5;
    }

    void agreesWithTheDesignSheet()
    {
        QFETCH(QString, theme);
        QFETCH(QString, text);
        QFETCH(QString, ground);
        QFETCH(double, ratio);
        m_theme->setProperty("name", theme);
        // The sheet gives one decimal.
        QVERIFY2(std::abs(contrast(token(text), token(ground)) - ratio) <= 0.0501,
                 qPrintable(QString::number(contrast(token(text), token(ground)))));
    }

    void writesHeavierInTheSunAndLighterAtDusk()
    {
        m_theme->setProperty("name", "sun");
        QCOMPARE(m_theme->property("body").toInt(), 700);
        QCOMPARE(m_theme->property("deciding").toInt(), 900);
        m_theme->setProperty("name", "dusk");
        QCOMPARE(m_theme->property("body").toInt(), 500);
        QCOMPARE(m_theme->property("deciding").toInt(), 700);
    }

    void doesNotMoveWhenMotionIsReduced()
    {
        QVERIFY(m_theme->property("unfoldTime").toInt() > 0);
        m_theme->setProperty("reducedMotion", true);
        QCOMPARE(m_theme->property("unfoldTime").toInt(), 0);
    }

private:
    QColor token(const QString& name) const
    {
        const QColor colour = m_theme->property(name.toLatin1().constData()).value<QColor>();
        return colour.isValid() ? colour : QColor(Qt::gray);
    }

    std::unique_ptr<QQmlEngine> m_engine;
    QObject* m_theme = nullptr;
};

QTEST_MAIN(ThemeTest)
#include "theme_test.moc"
