#include "fuzz/hold.h"
#include "gis/alignment_reader.h"
#include "gis/landxml.h"

#include <cstdint>

using namespace groundcount::gis;

namespace {

/// What is taken from a file must come through the pipe between child and parent as it went in.
void sameThroughPipe(const SiteFile& file)
{
    const auto back = siteFileFrom(siteFileText(file));
    HOLD(back && back->format == file.format && back->unit == file.unit);
    HOLD(back->alignments.size() == file.alignments.size() && back->features.size() == file.features.size());
}

}  // namespace

/// Any bytes as a LandXML text, and as the answer of a reader in the hands of its file.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string text(reinterpret_cast<const char*>(data), size);
    const auto file = parseLandXml(text);
    HOLD(file || !file.error().what.empty());
    if (file) {
        HOLD(!file->alignments.empty());
        for (const std::string& body : file->alignments)
            HOLD(alignmentFrom(body));
        sameThroughPipe(*file);
    }
    const auto answer = siteFileFrom(text);
    HOLD(answer || !answer.error().what.empty());
    if (answer)
        sameThroughPipe(*answer);
    const auto line = alignmentFrom(text);
    HOLD(line || !line.error().what.empty());
    return 0;
}
