#pragma once

#include "view/session.h"
#include "view/test_sheet.h"

#include <QObject>

class QJSEngine;
class QQmlEngine;

namespace groundcount::view {

/// Where the person is: which of the four places, and whether a test's sheet lies open over it.
class Desk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString place READ place WRITE setPlace NOTIFY placeChanged)
    Q_PROPERTY(bool testOpen READ isTestOpen NOTIFY testOpenChanged)
    Q_PROPERTY(groundcount::view::TestSheet* sheet READ sheet CONSTANT)

public:
    explicit Desk(Session* session, QObject* parent = nullptr);
    static Desk* create(QQmlEngine* engine, QJSEngine* scriptEngine);

    /// "day", "map", "lots" or "kit"; another word changes nothing.
    QString place() const { return m_place; }
    void setPlace(const QString& place);
    bool isTestOpen() const { return m_testOpen; }
    TestSheet* sheet() { return &m_sheet; }

    /// A new test here, at a drawn site, as a retest; or a test that is in the book.
    Q_INVOKABLE void start();
    Q_INVOKABLE void startAt(const QString& siteId);
    Q_INVOKABLE void retest(const QString& testId);
    Q_INVOKABLE void openTest(const QString& testId);
    /// What is typed stays as a draft; what is sealed is in the book.
    Q_INVOKABLE void closeTest();

signals:
    void placeChanged();
    void testOpenChanged();

private:
    void setTestOpen(bool open);

    TestSheet m_sheet;
    QString m_place = QStringLiteral("day");
    bool m_testOpen = false;
};

}  // namespace groundcount::view
