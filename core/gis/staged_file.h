#pragma once

#include "method/error.h"

#include <string>

namespace groundcount::gis {

/// A file that is written out of sight and takes its name only when it is whole. Whatever goes wrong before
/// `putInPlace`, a file that stood at the target stays as it was, and nothing is left beside it.
class StagedFile {
public:
    /// Makes a fresh folder "NAME.part-" and six letters beside the target, so that the later rename stays on one file system.
    /// @param target path of the file to be; its folder must exist
    /// @error Refused: an empty name; a "-wal" or "-journal" beside the target, which shows that another program has it
    ///   open (a rename would pair the new file with the old journal). Unavailable: the folder is missing or read-only.
    static Result<StagedFile> beside(const std::string& target);

    StagedFile(StagedFile&& other) noexcept;
    StagedFile(const StagedFile&) = delete;
    StagedFile& operator=(const StagedFile&) = delete;
    StagedFile& operator=(StagedFile&&) = delete;
    ~StagedFile();

    /// Where to write: the target's own file name inside the fresh folder.
    const std::string& path() const { return m_path; }

    /// Flushes the written file to the disk, renames it over the target and flushes the folder.
    /// @error Unavailable: the disk refuses; the target is then as it was.
    Result<void> putInPlace();

private:
    StagedFile(std::string target, std::string folder, std::string path);
    std::string m_target, m_folder, m_path;
};

}  // namespace groundcount::gis
