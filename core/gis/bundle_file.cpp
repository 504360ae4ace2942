#include "gis/bundle_file.h"

#include "gis/staged_file.h"

namespace groundcount::gis {

Result<book::BundleWritten> handOverBundle(const book::Store& store, const std::string& path, const book::KeepOn& keepOn)
{
    if (!path.ends_with(kBundleEnding))
        return refused("The name of a bundle must end in " + std::string(kBundleEnding) + "; it is \"" + path + "\".");
    auto file = StagedFile::beside(path);
    if (!file)
        return tl::unexpected(file.error());
    const auto written = book::writeBundleFile(store, file->path(), keepOn);
    if (!written)
        return written;
    if (const auto placed = file->putInPlace(); !placed)
        return tl::unexpected(placed.error());
    return written;
}

}  // namespace groundcount::gis
