#include "gis/late/late_call.h"

#include <cstdlib>
#include <cstring>
#include <libpq-fe.h>

/// libpq's functions that core/share calls, for a program that loads libpq late.
namespace {

void* found(const char* name)
{
    static void* const library = dlopen(GROUNDCOUNT_LIBPQ_LIBRARY, RTLD_LAZY | RTLD_LOCAL);
    return library ? dlsym(library, name) : nullptr;
}

template <class F>
F* real(const char* name)
{
    return reinterpret_cast<F*>(found(name));
}

}  // namespace

// The three by which libpq says why something failed say it here when it is missing.
extern "C" char* PQerrorMessage(const PGconn* a)
{
    static char missing[] = "the library " GROUNDCOUNT_LIBPQ_LIBRARY " cannot be loaded";
    static auto* const known = real<decltype(PQerrorMessage)>("PQerrorMessage");
    return known ? known(a) : missing;
}

extern "C" PQconninfoOption* PQconninfoParse(const char* a, char** b)
{
    static auto* const known = real<decltype(PQconninfoParse)>("PQconninfoParse");
    if (known)
        return known(a, b);
    *b = strdup(PQerrorMessage(nullptr));
    return nullptr;
}

extern "C" void PQfreemem(void* a)
{
    static auto* const known = real<decltype(PQfreemem)>("PQfreemem");
    known ? known(a) : std::free(a);
}

LATE(void, PQclear, (PGresult* a), (a))
LATE(char*, PQcmdTuples, (PGresult* a), (a))
LATE(PQconninfoOption*, PQconndefaults, (), ())
LATE(PostgresPollingStatusType, PQconnectPoll, (PGconn* a), (a))
LATE(PGconn*, PQconnectStartParams, (const char* const* a, const char* const* b, int c), (a, b, c))
LATE(void, PQconninfoFree, (PQconninfoOption* a), (a))
LATE(int, PQconsumeInput, (PGconn* a), (a))
LATE(int, PQenterPipelineMode, (PGconn* a), (a))
LATE(char*, PQescapeIdentifier, (PGconn* a, const char* b, size_t c), (a, b, c))
LATE(char*, PQescapeLiteral, (PGconn* a, const char* b, size_t c), (a, b, c))
LATE(int, PQexitPipelineMode, (PGconn* a), (a))
LATE(void, PQfinish, (PGconn* a), (a))
LATE(int, PQflush, (PGconn* a), (a))
LATE(PGresult*, PQgetResult, (PGconn* a), (a))
LATE(int, PQgetlength, (const PGresult* a, int b, int c), (a, b, c))
LATE(char*, PQgetvalue, (const PGresult* a, int b, int c), (a, b, c))
LATE(int, PQisBusy, (PGconn* a), (a))
LATE(int, PQntuples, (const PGresult* a), (a))
LATE(int, PQpipelineSync, (PGconn* a), (a))
LATE(int, PQputCopyData, (PGconn* a, const char* b, int c), (a, b, c))
LATE(int, PQputCopyEnd, (PGconn* a, const char* b), (a, b))
LATE(char*, PQresultErrorField, (const PGresult* a, int b), (a, b))
LATE(ExecStatusType, PQresultStatus, (const PGresult* a), (a))
LATE(int, PQsendQuery, (PGconn* a, const char* b), (a, b))
LATE(int, PQsendQueryParams, (PGconn* a, const char* b, int c, const Oid* d, const char* const* e, const int* f, const int* g, int h), (a, b, c, d, e, f, g, h))
LATE(PQnoticeProcessor, PQsetNoticeProcessor, (PGconn* a, PQnoticeProcessor b, void* c), (a, b, c))
LATE(int, PQsetnonblocking, (PGconn* a, int b), (a, b))
LATE(int, PQsocket, (const PGconn* a), (a))
LATE(ConnStatusType, PQstatus, (const PGconn* a), (a))
