#include "command/verb.h"

#include <fstream>
#include <iostream>
#include <iterator>

namespace groundcount::command {

int refuse(const Error& error)
{
    std::cerr << error.what << '\n';
    return kRefused;
}

void print(std::string_view text)
{
    std::cout << text << '\n';
}

Result<std::string> readText(const std::string& path)
{
    if (path == "-")
        return std::string(std::istreambuf_iterator<char>(std::cin), {});
    std::ifstream file(path, std::ios::binary);
    std::string text(std::istreambuf_iterator<char>(file), {});
    if (!file || file.bad())
        return unavailable("The file \"" + path + "\" cannot be read.");
    return text;
}

Result<method::RuleSet> rulesFrom(const std::string& path)
{
    if (path.empty())
        return method::neutralRules();
    auto text = readText(path);
    if (!text)
        return tl::unexpected(text.error());
    auto rules = method::ruleSetFromJson(*text);
    if (!rules)
        return refused("Rule set \"" + path + "\": " + rules.error().what);
    return rules;
}

}  // namespace groundcount::command
