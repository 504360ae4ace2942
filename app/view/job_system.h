#pragma once

#include <QObject>

#include <future>
#include <memory>
#include <string>

namespace groundcount::gis {
class Crs;
}

namespace groundcount::view {

/// The job's coordinate system, made when it is first asked for: the first frame needs neither it nor PROJ (docs/decisions/0013).
class JobSystem : public QObject {
    Q_OBJECT
public:
    explicit JobSystem(QObject* parent = nullptr);
    ~JobSystem() override;

    /// @param epsg 0 = by its text @param wkt "" and 0 = the job has none
    void set(int epsg, const std::string& wkt);
    /// nullptr when the job has none or it cannot be made; then `trouble` says why.
    const gis::Crs* crs();
    const std::string& trouble() const { return m_trouble; }
    /// Makes it on a thread of its own, and looks whether PROJ's database answers.
    void makeBeside();

signals:
    /// What makeBeside() found wrong.
    void failed();
    /// From a thread of its own: makeBeside() is done.
    void madeBeside();

private:
    struct Made;
    static std::shared_ptr<Made> make(int epsg, const std::string& wkt);
    void take();

    int m_epsg = 0;
    std::string m_wkt, m_trouble;
    std::unique_ptr<gis::Crs> m_crs;
    bool m_isMade = false;
    std::future<std::shared_ptr<Made>> m_making;
};

}  // namespace groundcount::view
