#include "gis/late/late_call.h"

#include <geodesic.h>
#include <proj.h>

/// PROJ's functions that core/gis calls, for a program that loads PROJ late.
namespace {

void* found(const char* name)
{
    static void* const library = dlopen(GROUNDCOUNT_PROJ_LIBRARY, RTLD_LAZY | RTLD_LOCAL);
    return library ? dlsym(library, name) : nullptr;
}

}  // namespace

LATE(void, geod_direct, (const struct geod_geodesic* a, double b, double c, double d, double e, double* f, double* g, double* h), (a, b, c, d, e, f, g, h))
LATE(void, geod_init, (struct geod_geodesic* a, double b, double c), (a, b, c))
LATE(void, geod_inverse, (const struct geod_geodesic* a, double b, double c, double d, double e, double* f, double* g, double* h), (a, b, c, d, e, f, g, h))
LATE(const char*, proj_as_wkt, (PJ_CONTEXT* a, const PJ* b, PJ_WKT_TYPE c, const char* const* d), (a, b, c, d))
LATE(PJ*, proj_clone, (PJ_CONTEXT* a, const PJ* b), (a, b))
LATE(PJ_CONTEXT*, proj_context_create, (), ())
LATE(PJ_CONTEXT*, proj_context_destroy, (PJ_CONTEXT* a), (a))
LATE(int, proj_context_set_enable_network, (PJ_CONTEXT* a, int b), (a, b))
LATE(PJ_COORD, proj_coord, (double a, double b, double c, double d), (a, b, c, d))
LATE(PJ*, proj_create, (PJ_CONTEXT* a, const char* b), (a, b))
LATE(PJ*, proj_create_crs_to_crs_from_pj, (PJ_CONTEXT* a, const PJ* b, const PJ* c, PJ_AREA* d, const char* const* e), (a, b, c, d, e))
LATE(PJ*, proj_create_from_database, (PJ_CONTEXT* a, const char* b, const char* c, PJ_CATEGORY d, int e, const char* const* f), (a, b, c, d, e, f))
LATE(PJ_OBJ_LIST*, proj_create_from_name,
     (PJ_CONTEXT* a, const char* b, const char* c, const PJ_TYPE* d, size_t e, int f, size_t g, const char* const* h), (a, b, c, d, e, f, g, h))
LATE(PJ*, proj_create_from_wkt, (PJ_CONTEXT* a, const char* b, const char* const* c, PROJ_STRING_LIST* d, PROJ_STRING_LIST* e), (a, b, c, d, e))
LATE(PJ*, proj_crs_get_coordinate_system, (PJ_CONTEXT* a, const PJ* b), (a, b))
LATE(PJ*, proj_crs_get_geodetic_crs, (PJ_CONTEXT* a, const PJ* b), (a, b))
LATE(PJ*, proj_crs_get_sub_crs, (PJ_CONTEXT* a, const PJ* b, int c), (a, b, c))
LATE(void, proj_crs_info_list_destroy, (PROJ_CRS_INFO** a), (a))
LATE(int, proj_cs_get_axis_info,
     (PJ_CONTEXT* a, const PJ* b, int c, const char** d, const char** e, const char** f, double* g, const char** h, const char** i, const char** j), (a, b, c, d, e, f, g, h, i, j))
LATE(PJ*, proj_destroy, (PJ* a), (a))
LATE(int, proj_ellipsoid_get_parameters, (PJ_CONTEXT* a, const PJ* b, double* c, double* d, int* e, double* f), (a, b, c, d, e, f))
LATE(int, proj_errno, (const PJ* a), (a))
LATE(int, proj_errno_reset, (const PJ* a), (a))
LATE(PJ_FACTORS, proj_factors, (PJ* a, PJ_COORD b), (a, b))
LATE(PROJ_CRS_INFO**, proj_get_crs_info_list_from_database, (PJ_CONTEXT* a, const char* b, const PROJ_CRS_LIST_PARAMETERS* c, int* d), (a, b, c, d))
LATE(PROJ_CRS_LIST_PARAMETERS*, proj_get_crs_list_parameters_create, (), ())
LATE(void, proj_get_crs_list_parameters_destroy, (PROJ_CRS_LIST_PARAMETERS* a), (a))
LATE(const char*, proj_get_id_auth_name, (const PJ* a, int b), (a, b))
LATE(const char*, proj_get_id_code, (const PJ* a, int b), (a, b))
LATE(const char*, proj_get_name, (const PJ* a), (a))
LATE(PJ*, proj_get_source_crs, (PJ_CONTEXT* a, const PJ* b), (a, b))
LATE(PJ_TYPE, proj_get_type, (const PJ* a), (a))
LATE(int, proj_is_equivalent_to_with_ctx, (PJ_CONTEXT* a, const PJ* b, const PJ* c, PJ_COMPARISON_CRITERION d), (a, b, c, d))
LATE(void, proj_list_destroy, (PJ_OBJ_LIST* a), (a))
LATE(PJ*, proj_list_get, (PJ_CONTEXT* a, const PJ_OBJ_LIST* b, int c), (a, b, c))
LATE(int, proj_list_get_count, (const PJ_OBJ_LIST* a), (a))
LATE(PJ_LOG_LEVEL, proj_log_level, (PJ_CONTEXT* a, PJ_LOG_LEVEL b), (a, b))
LATE(PJ*, proj_normalize_for_visualization, (PJ_CONTEXT* a, const PJ* b), (a, b))
LATE(void, proj_string_list_destroy, (PROJ_STRING_LIST a), (a))
LATE(double, proj_todeg, (double a), (a))
LATE(double, proj_torad, (double a), (a))
LATE(PJ_COORD, proj_trans, (PJ* a, PJ_DIRECTION b, PJ_COORD c), (a, b, c))
