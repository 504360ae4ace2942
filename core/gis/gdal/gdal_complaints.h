#pragma once

#include <string>

namespace groundcount::gis {

/// Collects what GDAL complains about on this thread while it lives, instead of printing it: some of GDAL's calls (the
/// close of a dataset above all) report a failed write in no other way. Must be destroyed in the reverse order of making.
class GdalComplaints {
public:
    GdalComplaints();
    ~GdalComplaints();
    GdalComplaints(const GdalComplaints&) = delete;
    GdalComplaints& operator=(const GdalComplaints&) = delete;

    /// The first failure, "" while there was none. Warnings are not failures.
    const std::string& firstFailure() const { return m_firstFailure; }
    bool failed() const { return !m_firstFailure.empty(); }
    /// Keeps `what` as the failure unless there is an earlier one.
    void add(const std::string& what);

private:
    std::string m_firstFailure;
};

}  // namespace groundcount::gis
