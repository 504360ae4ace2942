#include "runner.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <stdexcept>

namespace groundcount::tables {
namespace {

double halfUnit(const std::string& wanted)
{
    const auto exponentAt = wanted.find_first_of("eE");
    const std::string mantissa = wanted.substr(0, exponentAt);
    const double exponent = exponentAt == std::string::npos ? 0.0 : readNumber(wanted.substr(exponentAt + 1));
    const auto point = mantissa.find('.');
    const double places = point == std::string::npos ? 0.0 : static_cast<double>(mantissa.size() - point - 1);
    return 0.5 * std::pow(10.0, exponent - places);
}

std::string shown(double value)
{
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%.12g", value);
    return buffer;
}

template <class T>
std::string shown(const std::vector<T>& items)
{
    std::string all;
    for (const auto& item : items) {
        all += all.empty() ? "" : " ";
        if constexpr (std::is_same_v<T, double>)
            all += shown(item);
        else
            all += item;
    }
    return all;
}

std::string shown(const std::string& text) { return text; }

std::vector<std::string> words(const std::string& cell)
{
    std::vector<std::string> all;
    for (auto& word : split(cell, ' '))
        if (!word.empty())
            all.push_back(std::move(word));
    return all;
}

bool agrees(const Answer& answer, const std::string& wanted, double tolerance)
{
    if (const auto* number = std::get_if<double>(&answer))
        return meets(*number, wanted, tolerance);
    if (const auto* text = std::get_if<std::string>(&answer))
        return *text == wanted;
    const auto items = words(wanted);
    if (const auto* texts = std::get_if<std::vector<std::string>>(&answer))
        return *texts == items;
    const auto& numbers = std::get<std::vector<double>>(answer);
    if (numbers.size() != items.size())
        return false;
    for (std::size_t i = 0; i < items.size(); ++i)
        if (!meets(numbers[i], items[i], tolerance))
            return false;
    return true;
}

/// Everything that is wrong with one row; empty when it passes.
std::vector<std::string> faultsOf(const Row& row, TopicFn function)
{
    std::vector<std::string> faults;
    const std::string wantedResult = row.hasColumn("result") ? row.text("result") : "ok";
    const Result<Outcome> outcome = function(row);
    if (!outcome) {
        if (outcome.error().what.empty())
            faults.push_back("refused without a sentence");
        if (wantedResult != "refused")
            faults.push_back("column result: got refused (" + outcome.error().what + "), wanted " + wantedResult);
        return faults;
    }
    if (outcome->result != wantedResult)
        faults.push_back("column result: got " + outcome->result + ", wanted " + wantedResult);
    if (wantedResult == "refused")
        return faults;
    const auto tolerances = row.hasColumn("tol") ? row.pairs("tol") : std::vector<std::pair<std::string, std::string>>{};
    for (const auto& column : row.table().columns()) {
        if (!column.starts_with("want_") || row.text(column) == "-")
            continue;
        const auto answer = outcome->want.find(column);
        if (answer == outcome->want.end()) {
            faults.push_back("column " + column + ": got nothing, wanted " + row.text(column));
            continue;
        }
        double tolerance = -1;
        for (const auto& [name, value] : tolerances)
            if (name == column)
                tolerance = readNumber(value);
        if (!agrees(answer->second, row.text(column), tolerance))
            faults.push_back("column " + column + ": got " +
                             std::visit([](const auto& v) { return shown(v); }, answer->second) + ", wanted " +
                             row.text(column));
    }
    faults.insert(faults.end(), outcome->objections.begin(), outcome->objections.end());
    return faults;
}

const Topic* find(const std::vector<Topic>& topics, const std::string& name)
{
    const auto at = std::find_if(topics.begin(), topics.end(), [&](const Topic& t) { return t.name == name; });
    return at == topics.end() ? nullptr : &*at;
}

void runRow(const Row& row, const std::string& topic, const std::vector<Topic>& topics,
            const std::set<std::string>& notYet, Tally& tally)
{
    const std::string name = row.hasColumn("recompute") ? topic + "/" + row.text("recompute") : topic;
    const Topic* found = find(topics, name);
    if (!found && notYet.count(name)) {
        ++tally.notSupported;
        return;
    }
    std::vector<std::string> faults;
    try {
        faults = found ? faultsOf(row, found->function) : std::vector<std::string>{"unknown topic " + name};
    } catch (const std::exception& e) {
        faults.push_back(std::string("the row cannot be read: ") + e.what());
    }
    const std::string mark = row.hasColumn("mark") ? row.text("mark") : "none";
    auto& [passed, failed] = tally.byMark[mark];
    faults.empty() ? ++tally.passed : ++tally.failed;
    faults.empty() ? ++passed : ++failed;
    for (const auto& fault : faults)
        std::printf("    %s %s: %s\n", topic.c_str(), row.text("id").c_str(), fault.c_str());
}

}  // namespace

bool meets(double got, const std::string& wanted, double tolerance)
{
    double want = 0;
    try {
        want = readNumber(wanted);
    } catch (const std::runtime_error&) {
        return false;
    }
    const double allowed = tolerance >= 0 ? tolerance : halfUnit(wanted);
    // The last bits of got and want must not decide a tie at the edge of the tolerance.
    return std::fabs(got - want) <= allowed * (1 + 1e-9) + 1e-15 * std::fabs(want);
}

Outcome wrongBeside(const Row& row, double correct)
{
    Outcome outcome{"wrong", {{"want_correct", correct}}, {}};
    // The digits printed are a claim: strictly nearer than half a unit would make it true.
    const std::string& printed = row.text("printed");
    if (std::fabs(correct - readNumber(printed)) < halfUnit(printed) * (1 - 1e-9))
        outcome.objections.push_back("the printed " + printed + " came out, which is known to be wrong");
    return outcome;
}

int runFolder(const std::filesystem::path& folder, const std::vector<Topic>& topics, const std::set<std::string>& notYet)
{
    std::error_code error;
    std::vector<std::filesystem::path> files;
    for (auto it = std::filesystem::directory_iterator(folder, error); !error && it != std::filesystem::end(it); it.increment(error))
        if (it->path().extension() == ".tsv")
            files.push_back(it->path());
    std::sort(files.begin(), files.end());
    if (error || files.empty()) {
        std::printf("No table in %s\n0 passed, 1 failed\n", folder.c_str());
        return 1;
    }
    Tally total;
    for (const auto& name : notYet)
        if (find(topics, name)) {
            std::printf("%s is supported but still listed as missing\n", name.c_str());
            ++total.failed;
        }
    for (const auto& file : files) {
        Tally tally;
        std::string topic = file.stem().string();
        try {
            const Table table = Table::read(file);
            const auto rows = table.rows();
            if (rows.empty()) {
                std::printf("    %s: the table is empty\n", topic.c_str());
                ++tally.failed;
            }
            for (const auto& row : rows)
                runRow(row, topic, topics, notYet, tally);
        } catch (const std::exception& e) {
            std::printf("    %s\n", e.what());
            ++tally.failed;
        }
        std::printf("%-26s %4d passed %4d failed %4d not supported\n", topic.c_str(), tally.passed, tally.failed, tally.notSupported);
        total.passed += tally.passed;
        total.failed += tally.failed;
        total.notSupported += tally.notSupported;
        for (const auto& [mark, counts] : tally.byMark) {
            total.byMark[mark].first += counts.first;
            total.byMark[mark].second += counts.second;
        }
    }
    std::printf("\n%zu tables; topics listed as missing: %zu; rows not supported: %d\nby mark:", files.size(), notYet.size(), total.notSupported);
    for (const auto& [mark, counts] : total.byMark)
        std::printf(" %s %d passed %d failed;", mark.c_str(), counts.first, counts.second);
    std::printf("\n");
    if (total.passed == 0)
        std::printf("Not one row passed; a run that compares nothing is a failure too.\n");
    std::printf("%d passed, %d failed\n", total.passed, total.failed);
    return total.failed == 0 && total.passed > 0 ? 0 : 1;
}

}  // namespace groundcount::tables
