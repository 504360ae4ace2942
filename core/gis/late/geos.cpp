#include "gis/late/late_call.h"

#include <geos_c.h>

/// GEOS's functions that core/gis calls, for a program that loads GEOS late.
namespace {

void* found(const char* name)
{
    static void* const library = dlopen(GROUNDCOUNT_GEOS_LIBRARY, RTLD_LAZY | RTLD_LOCAL);
    return library ? dlsym(library, name) : nullptr;
}

}  // namespace

LATE(int, GEOSArea_r, (GEOSContextHandle_t a, const GEOSGeometry* b, double* c), (a, b, c))
LATE(GEOSGeometry*, GEOSBoundary_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
LATE(GEOSMessageHandler_r, GEOSContext_setErrorMessageHandler_r, (GEOSContextHandle_t a, GEOSMessageHandler_r b, void* c), (a, b, c))
LATE(GEOSCoordSequence*, GEOSCoordSeq_create_r, (GEOSContextHandle_t a, unsigned int b, unsigned int c), (a, b, c))
LATE(int, GEOSCoordSeq_getSize_r, (GEOSContextHandle_t a, const GEOSCoordSequence* b, unsigned int* c), (a, b, c))
LATE(int, GEOSCoordSeq_getXY_r, (GEOSContextHandle_t a, const GEOSCoordSequence* b, unsigned int c, double* d, double* e), (a, b, c, d, e))
LATE(int, GEOSCoordSeq_setXY_r, (GEOSContextHandle_t a, GEOSCoordSequence* b, unsigned int c, double d, double e), (a, b, c, d, e))
LATE(int, GEOSDistance_r, (GEOSContextHandle_t a, const GEOSGeometry* b, const GEOSGeometry* c, double* d), (a, b, c, d))
LATE(GEOSGeometry*, GEOSEnvelope_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
LATE(void, GEOSFree, (void* a), (a))
LATE(int, GEOSGeomTypeId_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
LATE(GEOSGeometry*, GEOSGeom_clone_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
LATE(GEOSGeometry*, GEOSGeom_createCollection_r, (GEOSContextHandle_t a, int b, GEOSGeometry** c, unsigned int d), (a, b, c, d))
LATE(GEOSGeometry*, GEOSGeom_createLinearRing_r, (GEOSContextHandle_t a, GEOSCoordSequence* b), (a, b))
LATE(GEOSGeometry*, GEOSGeom_createPointFromXY_r, (GEOSContextHandle_t a, double b, double c), (a, b, c))
LATE(GEOSGeometry*, GEOSGeom_createPolygon_r, (GEOSContextHandle_t a, GEOSGeometry* b, GEOSGeometry** c, unsigned int d), (a, b, c, d))
LATE(void, GEOSGeom_destroy_r, (GEOSContextHandle_t a, GEOSGeometry* b), (a, b))
LATE(const GEOSCoordSequence*, GEOSGeom_getCoordSeq_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
LATE(GEOSGeometry*, GEOSGetCentroid_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
LATE(const GEOSGeometry*, GEOSGetExteriorRing_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
LATE(const GEOSGeometry*, GEOSGetGeometryN_r, (GEOSContextHandle_t a, const GEOSGeometry* b, int c), (a, b, c))
LATE(const GEOSGeometry*, GEOSGetInteriorRingN_r, (GEOSContextHandle_t a, const GEOSGeometry* b, int c), (a, b, c))
LATE(int, GEOSGetNumGeometries_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
LATE(int, GEOSGetNumInteriorRings_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
LATE(GEOSGeometry*, GEOSIntersection_r, (GEOSContextHandle_t a, const GEOSGeometry* b, const GEOSGeometry* c), (a, b, c))
LATE(GEOSGeometry*, GEOSLargestEmptyCircle_r, (GEOSContextHandle_t a, const GEOSGeometry* b, const GEOSGeometry* c, double d), (a, b, c, d))
LATE(int, GEOSLength_r, (GEOSContextHandle_t a, const GEOSGeometry* b, double* c), (a, b, c))
LATE(const GEOSPreparedGeometry*, GEOSPrepare_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
LATE(char, GEOSPreparedContains_r, (GEOSContextHandle_t a, const GEOSPreparedGeometry* b, const GEOSGeometry* c), (a, b, c))
LATE(void, GEOSPreparedGeom_destroy_r, (GEOSContextHandle_t a, const GEOSPreparedGeometry* b), (a, b))
LATE(char, GEOSPreparedIntersects_r, (GEOSContextHandle_t a, const GEOSPreparedGeometry* b, const GEOSGeometry* c), (a, b, c))
LATE(GEOSSTRtree*, GEOSSTRtree_create_r, (GEOSContextHandle_t a, size_t b), (a, b))
LATE(void, GEOSSTRtree_destroy_r, (GEOSContextHandle_t a, GEOSSTRtree* b), (a, b))
LATE(void, GEOSSTRtree_insert_r, (GEOSContextHandle_t a, GEOSSTRtree* b, const GEOSGeometry* c, void* d), (a, b, c, d))
LATE(const void*, GEOSSTRtree_nearest_generic_r,
     (GEOSContextHandle_t a, GEOSSTRtree* b, const void* c, const GEOSGeometry* d, GEOSDistanceCallback e, void* f), (a, b, c, d, e, f))
LATE(GEOSGeometry*, GEOSVoronoiDiagram_r, (GEOSContextHandle_t a, const GEOSGeometry* b, const GEOSGeometry* c, double d, int e), (a, b, c, d, e))
LATE(void, GEOS_finish_r, (GEOSContextHandle_t a), (a))
LATE(GEOSContextHandle_t, GEOS_init_r, (), ())
LATE(char, GEOSisEmpty_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
LATE(char*, GEOSisValidReason_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
LATE(char, GEOSisValid_r, (GEOSContextHandle_t a, const GEOSGeometry* b), (a, b))
