#include "share/server_words.h"

namespace groundcount::share {

std::string firstLine(const char* words)
{
    std::string line = words ? words : "";
    if (const auto end = line.find('\n'); end != std::string::npos)
        line.resize(end);
    while (!line.empty() && (line.back() == '.' || line.back() == ' '))
        line.pop_back();
    return line.empty() ? "no reason given" : line;
}

Error said(PGconn* connection, PGresult* raw)
{
    const char* state = PQresultErrorField(raw, PG_DIAG_SQLSTATE);
    const std::string code = state ? state : "";
    const std::string why = firstLine(state ? PQresultErrorField(raw, PG_DIAG_MESSAGE_PRIMARY) : PQerrorMessage(connection));
    if (code.starts_with("42") || code.starts_with("23"))
        return {Fault::Refused, "The server refused it: " + why + " (SQLSTATE " + code + ")."};
    return {Fault::Unavailable, "The server did not answer as it should: " + why + (code.empty() ? "." : " (SQLSTATE " + code + ").")};
}

}  // namespace groundcount::share
