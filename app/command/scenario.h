#pragma once

#include "book/record.h"
#include "method/error.h"

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <vector>

namespace groundcount::command {

/// What was typed on a job, in order: demo/README.md, "The form of a scenario".
struct Scenario {
    std::string folder;     ///< files named in the scenario lie here
    int offsetMinutes = 0;  ///< local time minus UTC
    std::string alignment;  ///< name of its alignment's subject, "@L"
    std::string crs;        ///< name of its coordinate system's subject
    std::vector<nlohmann::json> entries;
};

/// Reads a scenario. @error Unavailable for the file; Refused naming the entry and the key.
Result<Scenario> scenarioFrom(const std::string& path);

/// The subject that stands for "@name": UUID version 8 from the BLAKE2b-256 of "groundcount-scenario:name".
/// @source RFC 9562, section 5.8
std::string subjectOf(std::string_view name);

/// UTC of a local time "YYYY-MM-DD HH:MM" as records write it.
/// @error Refused for another form or a day that does not exist.
Result<std::string> utcOf(const std::string& local, int offsetMinutes);

/// "entry 12 (reading of @test26)": names an entry in a sentence.
std::string nameOf(const nlohmann::json& entry, std::size_t index);

}  // namespace groundcount::command
