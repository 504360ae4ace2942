#include "faults/crash_vfs.h"

#include <algorithm>

namespace faults {

namespace {

void put(std::string& content, std::int64_t at, const char* bytes, std::size_t size)
{
    const auto begin = static_cast<std::size_t>(at);
    if (content.size() < begin + size)
        content.resize(begin + size, '\0');
    std::copy(bytes, bytes + size, content.begin() + static_cast<std::ptrdiff_t>(begin));
}

void apply(Medium& medium, const Step& step)
{
    switch (step.what) {
    case Step::What::Write: put(medium.contents[step.file], step.at, step.bytes.data(), step.bytes.size()); break;
    case Step::What::Truncate: medium.contents[step.file].resize(static_cast<std::size_t>(step.at), '\0'); break;
    case Step::What::Create: medium.names[step.name] = step.file; break;
    case Step::What::Remove: medium.names.erase(step.name); break;
    case Step::What::Sync:
    case Step::What::Mark: break;
    }
}

bool isEntry(const Step& step)
{
    return step.what == Step::What::Create || step.what == Step::What::Remove;
}

/// Each sector that the write touches is written, lost or garbage.
void tear(Medium& medium, const Step& write, bool spoils, std::mt19937_64& random)
{
    std::string& content = medium.contents[write.file];
    const std::int64_t end = write.at + static_cast<std::int64_t>(write.bytes.size());
    for (std::int64_t sector = write.at / kSector * kSector; sector < end; sector += kSector) {
        const std::int64_t from = std::max(sector, write.at), to = std::min(sector + kSector, end);
        const auto fate = random() % 3;
        if (fate == 0)
            continue;
        if (fate == 1) {
            put(content, from, write.bytes.data() + (from - write.at), static_cast<std::size_t>(to - from));
            continue;
        }
        const std::int64_t first = spoils ? sector : from, last = spoils ? sector + kSector : to;
        std::string garbage(static_cast<std::size_t>(last - first), '\0');
        for (char& c : garbage)
            c = static_cast<char>(random());
        put(content, first, garbage.data(), garbage.size());
    }
}

}  // namespace

void PowerCut::settle(const Step& sync)
{
    if (m_device.flush == Device::Flush::Ignored)
        return;
    std::vector<const Step*> left;
    for (const Step* step : m_pending) {
        const bool now = isEntry(*step) ? sync.andFolder : sync.what == Step::What::Sync && step->file == sync.file;
        if (now)
            apply(m_durable, *step);
        else
            left.push_back(step);
    }
    m_pending = std::move(left);
}

bool PowerCut::advance()
{
    if (m_next == m_run.size())
        return false;
    const Step& step = m_run[m_next++];
    const bool log = step.name.ends_with("-wal");
    switch (step.what) {
    case Step::What::Mark: m_mark = static_cast<int>(step.at); break;
    case Step::What::Sync:
        if (!(log && m_device.flush == Device::Flush::IgnoredForLog))
            settle(step);
        break;
    case Step::What::Remove:
        m_pending.push_back(&step);
        if (step.andFolder)
            settle(step);
        break;
    default: m_pending.push_back(&step); break;
    }
    return true;
}

Medium PowerCut::outcome(std::uint64_t number) const
{
    Medium medium = m_durable;
    std::mt19937_64 random(number * 0x9E3779B97F4A7C15ULL + m_next);
    // one trial mostly keeps, another mostly loses: the rare combinations are at both ends
    const auto keep = random() % 100, lose = random() % 100;
    for (const Step* step : m_pending) {
        if (number == 0)
            continue;
        if (number == 1 || random() % 100 < keep)
            apply(medium, *step);
        else if (random() % 100 >= lose && step->what == Step::What::Write)
            tear(medium, *step, m_device.spoilsSectors, random);
    }
    return medium;
}

}  // namespace faults
