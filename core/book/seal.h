#pragma once

#include "book/keys.h"
#include "book/record.h"
#include "method/error.h"

/// Sealing and checking of one record. See docs/record-format.md, "A record".
namespace groundcount::book {

/// The members that are hashed, in the canonical form of RFC 8785: eleven, and `book` when it is not empty.
/// @error Refused when the body cannot be written canonically.
Result<std::string> canonicalRecord(const Record& record);
/// The same from the canonical text of the body, which `record` need not hold. @error Refused for texts that are not UTF-8.
Result<std::string> canonicalRecord(const Record& record, const std::string& body);

/// Checks the form of everything but the body's content: kind, subject, amends and reason, person, time and offset.
/// @error Refused with the part, its value and the allowed form.
Result<void> checkEnvelope(const Entry& entry);

/// Gives an entry its place in the device's chain, its hash and its signature.
/// @param seq 1 and up; @param prev hash of the device's record seq - 1, empty for seq 1
/// @param book id of the book, a UUID; empty for a book of format 1
/// @return the record; its body is equal to the entry's
/// @error Refused when the envelope or the link breaks the form.
Result<Record> sealEntry(const Entry& entry, const DeviceKey& key, std::int64_t seq, const std::string& prev, const std::string& book = {});

/// The id of a book that begins with `entry` sealed by `device`: the first 16 bytes of the BLAKE2b-256 of device, subject and
/// time, written as a UUID of version 8. Subjects are random, so that two books never share it unless one is the other's copy.
/// @source RFC 9562, section 5.8
std::string bookIdOf(const Entry& entry, const std::string& device);

/// Checks envelope, link form, hash and signature of a record.
/// @error Refused, saying which of them does not hold and naming the record.
Result<void> verifyRecord(const Record& record);

/// A record as one JSON object with the members of docs/record-format.md, and back. Members that the format
/// does not know are refused: they would not be covered by the hash.
nlohmann::json recordJson(const Record& record);
Result<Record> recordFromJson(const nlohmann::json& json);

/// "reading of 3f0c…, device 91ab…, number 12 (hash 77de…)": names a record in a sentence.
std::string nameOf(const Record& record);

/// Forms used all over the book.
bool isSubject(std::string_view text);  ///< UUID, lower case, 8-4-4-4-12
bool isHash(std::string_view text);     ///< 64 lower-case hexadecimal digits
bool isUtcTime(std::string_view text);  ///< YYYY-MM-DDTHH:MM:SS.mmmZ of a day that exists
bool isDate(std::string_view text);     ///< YYYY-MM-DD of a day that exists

}  // namespace groundcount::book
