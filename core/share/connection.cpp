#include "share/connection.h"

#include "share/address.h"
#include "share/server_words.h"

#include <cstdlib>
#include <utility>

namespace groundcount::share {

namespace {

// object ids of PostgreSQL's built-in types, fixed in its catalogue (pg_type.dat)
constexpr Oid kUuid = 2950, kBigint = 20, kText = 25, kByteaList = 1001, kBytea = 17;

// The server, too, gives up on a device that left the network, and so frees the row that its transaction locked. A device that sleeps inside
// one answers the network still: ten minutes, since a photo of 64 MiB on a slow line is minutes under way.
constexpr const char* kLetGo = "SELECT set_config('tcp_keepalives_idle', '10', false), set_config('tcp_keepalives_interval', '5', false),"
                               " set_config('tcp_keepalives_count', '4', false), set_config('tcp_user_timeout', '30000', false),"
                               " set_config('idle_in_transaction_session_timeout', '600000', false)";

void putBig(std::string& into, std::uint64_t value, int bytes)
{
    for (int shift = (bytes - 1) * 8; shift >= 0; shift -= 8)
        into += static_cast<char>((value >> static_cast<unsigned>(shift)) & 0xFFU);
}

}  // namespace

Parameter uuidOf(const std::string& text)
{
    std::string bytes;
    int half = -1;
    for (const char c : text) {
        if (c == '-')
            continue;
        const int digit = c <= '9' ? c - '0' : c - 'a' + 10;
        if (half < 0) {
            half = digit;
        } else {
            bytes += static_cast<char>(half * 16 + digit);
            half = -1;
        }
    }
    return {kUuid, bytes};
}

Parameter wholeOf(std::int64_t number)
{
    Parameter parameter{kBigint, {}};
    putBig(parameter.bytes, static_cast<std::uint64_t>(number), 8);
    return parameter;
}

Parameter textOf(std::string text)
{
    return {kText, std::move(text)};
}

Parameter bytesListOf(const std::vector<std::string>& values)
{
    Parameter list{kByteaList, {}};
    // the binary form of an array: dimensions, has-nulls, element type, then length and lower bound, then the elements
    putBig(list.bytes, values.empty() ? 0 : 1, 4);
    putBig(list.bytes, 0, 4);
    putBig(list.bytes, kBytea, 4);
    if (values.empty())
        return list;
    putBig(list.bytes, values.size(), 4);
    putBig(list.bytes, 1, 4);
    for (const std::string& value : values) {
        putBig(list.bytes, value.size(), 4);
        list.bytes += value;
    }
    return list;
}

std::string Answer::bytes(int row, int column) const
{
    return std::string(view(row, column));
}

std::string_view Answer::view(int row, int column) const
{
    return {PQgetvalue(m_raw.get(), row, column), static_cast<std::size_t>(PQgetlength(m_raw.get(), row, column))};
}

std::int64_t Answer::whole(int row, int column) const
{
    std::uint64_t value = 0;
    const std::string all = bytes(row, column);
    for (const char c : all)
        value = value << 8U | static_cast<unsigned char>(c);
    return static_cast<std::int64_t>(value);
}

std::int64_t Answer::changed() const
{
    return std::atoll(PQcmdTuples(m_raw.get()));
}

Result<Connection> Connection::open(const std::string& address, Patience patience)
{
    if (auto sound = checkAddress(address); !sound)
        return tl::unexpected(sound.error());
    Connection connection;
    connection.m_patience = std::move(patience);
    if (auto connected = connection.connect(address); !connected)
        return tl::unexpected(connected.error());
    PQsetNoticeProcessor(connection.m_raw.get(), [](void*, const char*) {}, nullptr);
    if (auto known = connection.run(kLetGo); !known)
        return tl::unexpected(known.error());
    return connection;
}

Result<std::string> Connection::literal(const std::string& text) const
{
    char* quotedText = PQescapeLiteral(m_raw.get(), text.c_str(), text.size());
    if (!quotedText)
        return unavailable("The text \"" + text + "\" cannot be quoted: " + firstLine(PQerrorMessage(m_raw.get())) + ".");
    std::string literal = quotedText;
    PQfreemem(quotedText);
    return literal;
}

Result<std::string> Connection::quoted(const std::string& name) const
{
    char* text = PQescapeIdentifier(m_raw.get(), name.c_str(), name.size());
    if (!text)
        return unavailable("The name \"" + name + "\" cannot be quoted: " + firstLine(PQerrorMessage(m_raw.get())) + ".");
    std::string quotedName = text;
    PQfreemem(text);
    return quotedName;
}

Result<Work> Work::begin(Connection& connection)
{
    if (auto begun = connection.run("BEGIN"); !begun)
        return tl::unexpected(begun.error());
    return Work(connection);
}

Work::~Work()
{
    if (m_connection)
        std::ignore = m_connection->run("ROLLBACK");
}

Result<void> Work::commit()
{
    auto done = m_connection->run("COMMIT");
    if (!done)
        return tl::unexpected(done.error());
    m_connection = nullptr;
    return {};
}

}  // namespace groundcount::share
