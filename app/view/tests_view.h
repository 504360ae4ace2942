#pragma once

#include "view/session.h"
#include "view/test_list.h"

#include <QObject>
#include <QStringList>

#include <array>
#include <string>
#include <vector>

namespace groundcount::view {

/// The tests of a lot, or of every lot, by state, person, gauge, material and day.
class TestsView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY sessionChanged REQUIRED)
    Q_PROPERTY(QString lot READ lot WRITE setLot NOTIFY changed)
    Q_PROPERTY(QString title MEMBER m_title NOTIFY changed)
    /// What is filtered for, in words: "fail, Gauge 07".
    Q_PROPERTY(QString filterText MEMBER m_filterText NOTIFY changed)
    Q_PROPERTY(groundcount::view::TestList* tests READ tests CONSTANT)
    Q_PROPERTY(QStringList stateWords READ stateWords NOTIFY changed)
    Q_PROPERTY(QStringList personWords READ personWords NOTIFY changed)
    Q_PROPERTY(QStringList gaugeWords READ gaugeWords NOTIFY changed)
    Q_PROPERTY(QStringList materialWords READ materialWords NOTIFY changed)
    Q_PROPERTY(QStringList dayWords READ dayWords NOTIFY changed)
    Q_PROPERTY(int state READ state NOTIFY changed)
    Q_PROPERTY(int person READ person NOTIFY changed)
    Q_PROPERTY(int gauge READ gauge NOTIFY changed)
    Q_PROPERTY(int material READ material NOTIFY changed)
    Q_PROPERTY(int day READ day NOTIFY changed)

public:
    enum By { State, Person, Gauge, Material, Day, kBys };
    Q_ENUM(By)

    explicit TestsView(QObject* parent = nullptr) : QObject(parent) {}
    Session* session() const { return m_session; }
    void setSession(Session* session);
    QString lot() const { return m_lot; }
    void setLot(const QString& id);
    TestList* tests() { return &m_tests; }
    QStringList stateWords() const { return m_by[State].words; }
    QStringList personWords() const { return m_by[Person].words; }
    QStringList gaugeWords() const { return m_by[Gauge].words; }
    QStringList materialWords() const { return m_by[Material].words; }
    QStringList dayWords() const { return m_by[Day].words; }
    int state() const { return m_by[State].chosen; }
    int person() const { return m_by[Person].chosen; }
    int gauge() const { return m_by[Gauge].chosen; }
    int material() const { return m_by[Material].chosen; }
    int day() const { return m_by[Day].chosen; }

    /// Chooses the word at `index` of a list; 0 is all.
    Q_INVOKABLE void pick(groundcount::view::TestsView::By by, int index);
    Q_INVOKABLE void pickAll();

signals:
    void sessionChanged();
    void changed();

private:
    struct Filter {
        QStringList words;              ///< the first is "All"
        std::vector<std::string> keys;  ///< the first is ""
        int chosen = 0;
        const std::string& key() const { return keys[static_cast<std::size_t>(chosen)]; }
    };
    void refresh();
    void apply();

    Session* m_session = nullptr;
    QString m_lot, m_title, m_filterText;
    std::array<Filter, kBys> m_by;
    TestList m_tests;
};

}  // namespace groundcount::view
