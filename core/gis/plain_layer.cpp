#include "gis/plain_layer.h"

#include "gis/file_formats.h"

#include <algorithm>

namespace groundcount::gis {
namespace {

constexpr std::size_t kDbfName = 10;  // bytes of a dBASE column's name

}  // namespace

std::vector<std::string> shapefileNames(const std::vector<LayerField>& fields)
{
    std::vector<std::string> names;
    for (const auto& field : fields) {
        const std::string whole = field.name.substr(0, kDbfName);
        std::string name = whole;
        for (int n = 2; std::find(names.begin(), names.end(), name) != names.end(); ++n) {
            const std::string digits = std::to_string(n);
            name = whole.substr(0, std::min(whole.size(), kDbfName - digits.size())) + digits;
        }
        names.push_back(name);
    }
    return names;
}

Result<PlainWritten> writePlainLayer(const std::string& path, PlainFormat format, const Layer& layer, const Crs& crs, const ExportOptions& options)
{
    return fileFormats().and_then([&](const FileFormats* formats) { return formats->writePlain(path, format, layer, crs, options); });
}

}  // namespace groundcount::gis
