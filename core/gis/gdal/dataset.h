#pragma once

#include <memory>
#include <ogrsf_frmts.h>

namespace groundcount::gis {

struct CloseDataset {
    void operator()(GDALDataset* dataset) const { GDALClose(dataset); }
};

/// A GDAL dataset that is closed at its end. A failed write may show only then: see GdalComplaints.
using Dataset = std::unique_ptr<GDALDataset, CloseDataset>;

}  // namespace groundcount::gis
