#include "gis/gdal/gdal_complaints.h"

#include <cpl_error.h>

namespace groundcount::gis {
namespace {

void keep(CPLErr kind, CPLErrorNum, const char* text)
{
    if (kind >= CE_Failure)
        static_cast<GdalComplaints*>(CPLGetErrorHandlerUserData())->add(text);
}

}  // namespace

GdalComplaints::GdalComplaints()
{
    CPLPushErrorHandlerEx(keep, this);
}

GdalComplaints::~GdalComplaints()
{
    CPLPopErrorHandler();
}

void GdalComplaints::add(const std::string& what)
{
    if (m_firstFailure.empty())
        m_firstFailure = what.empty() ? "no reason given" : what;
}

}  // namespace groundcount::gis
