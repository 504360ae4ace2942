#include "gis/background.h"

#include "gis/file_formats.h"
#include "gis/foreign_child.h"
#include "gis/staged_file.h"

#include "book/record.h"
#include "method/rules/json_object.h"

#include <filesystem>
#include <fstream>

namespace groundcount::gis {

SiteLimits backgroundLimits()
{
    SiteLimits limits;
    limits.fileBytes = std::size_t{4096} << 20;
    limits.writeBytes = std::size_t{2048} << 20;
    limits.memoryBytes = std::size_t{4096} << 20;
    limits.time = std::chrono::seconds(300);
    return limits;
}

Result<BackgroundFacts> makeBackground(const std::string& path, const std::string& targetWkt, const std::string& outPath)
{
    return fileFormats().and_then([&](const FileFormats* formats) { return formats->makeBackground(path, targetWkt, outPath); });
}

Result<Background> Background::open(const std::string& path)
{
    std::error_code none;
    if (!std::filesystem::is_regular_file(path, none))
        return refused("There is no background at \"" + path + "\".");
    return fileFormats().and_then([&](const FileFormats* formats) { return formats->openBackground(path); }).map([](auto pixels) { return Background(std::move(pixels)); });
}

std::string backgroundPath(const std::string& bookPath)
{
    return bookPath + "-ground.tif";
}

std::string backgroundText(const BackgroundFacts& facts)
{
    const nlohmann::json out{{"format", facts.format}, {"crs_name", facts.crsName}, {"width", facts.width}, {"height", facts.height},
                             {"metres_per_pixel", facts.metresPerPixel}, {"coarser", facts.isCoarser ? 1 : 0}};
    return out.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

namespace {

Result<BackgroundFacts> factsFrom(const std::string& text)
{
    const auto json = nlohmann::json::parse(text, nullptr, false);
    std::optional<Error> error;
    method::JsonObject body(json, "The reader's answer", error);
    BackgroundFacts facts;
    facts.format = body.text("format");
    facts.crsName = body.textOr("crs_name", "");
    facts.width = static_cast<int>(body.numberOr("width", 0));
    facts.height = static_cast<int>(body.numberOr("height", 0));
    facts.metresPerPixel = body.numberOr("metres_per_pixel", 0);
    facts.isCoarser = body.numberOr("coarser", 0) > 0;
    return error ? Result<BackgroundFacts>(tl::unexpected(*error)) : facts;
}

}  // namespace

Result<BackgroundFacts> takeBackground(const std::vector<std::string>& reader, const std::string& path, const Crs& job, const std::string& target,
                                       const SiteLimits& limits)
{
    const PrivateFolder folder;
    if (folder.path().empty())
        return unavailable("No private folder can be made to read the file in.");
    const std::filesystem::path source(path);
    const std::string copy = folder.path() + "/picture" + source.extension().string(), system = folder.path() + "/system.wkt", made = folder.path() + "/ground.tif";
    if (const auto copied = copyPlain(path, copy, limits.fileBytes, "background"); !copied)
        return tl::unexpected(copied.error());
    std::ofstream(system) << job.wkt2();
    std::vector<std::string> command = reader;
    command.insert(command.end(), {copy, system, made});
    const auto answer = runChild(command, limits);
    if (!answer)
        return tl::unexpected(answer.error());
    const auto text = answerOf(*answer, source.filename().string(), limits);
    const auto facts = text ? factsFrom(*text) : tl::unexpected(text.error());
    if (!facts)
        return facts;
    if (const auto whole = Background::open(made); !whole)
        return tl::unexpected(whole.error());
    auto staged = StagedFile::beside(target);
    if (!staged)
        return tl::unexpected(staged.error());
    if (const auto copied = copyPlain(made, staged->path(), limits.writeBytes, "background"); !copied)
        return tl::unexpected(copied.error());
    if (const auto put = staged->putInPlace(); !put)
        return tl::unexpected(put.error());
    return facts;
}

}  // namespace groundcount::gis
