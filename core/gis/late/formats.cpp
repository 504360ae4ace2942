#include "gis/file_formats.h"

#include <dlfcn.h>

namespace groundcount::gis {
namespace {

Result<const FileFormats*> load()
{
    // Kept to the end. Found beside the program, where its run path points; never in the folder of a user's file.
    static void* const library = dlopen(GROUNDCOUNT_FORMATS_LIBRARY, RTLD_NOW | RTLD_LOCAL);
    if (!library)
        return unavailable(std::string("The library of file formats that belongs to this program cannot be loaded: ") + dlerror() + ".");
    using Ask = const FileFormats* (*)(const char*);
    const auto ask = reinterpret_cast<Ask>(dlsym(library, "groundcount_file_formats"));
    const FileFormats* formats = ask ? ask(GROUNDCOUNT_VERSION) : nullptr;
    if (!formats)
        return unavailable("The library of file formats must be of version " GROUNDCOUNT_VERSION ", as this program; install both together.");
    return formats;
}

}  // namespace

Result<const FileFormats*> fileFormats()
{
    static const Result<const FileFormats*> formats = load();
    return formats;
}

}  // namespace groundcount::gis
