#include "app/command_line.h"
#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"

namespace panside {
namespace {

std::string refusal(const std::string& text, const std::string& what) { return "--set " + text + ": " + what; }

std::string names() {
    std::string all;
    for (const auto& row : allSettings())
        all += (all.empty() ? "" : ", ") + std::string{row.name};
    return all;
}

// Where the number ends and the unit begins: the longest beginning that is a number.
std::size_t numberLength(std::string_view text) {
    for (auto length = text.size(); length > 0; --length)
        if (numberIn(text.substr(0, length)))
            return length;
    return 0;
}

} // namespace

std::variant<Set, std::string> settingIn(const std::string& text) {
    const auto equals = text.find('=');
    if (equals == std::string::npos)
        return refusal(text, "write KEY=VALUE with its unit, as in target_density=66.9brix.");
    const auto key = text.substr(0, equals);
    const auto value = std::string_view{text}.substr(equals + 1);
    const auto setting = settingNamed(key);
    if (!setting)
        return refusal(text, "there is no setting \"" + key + "\". There are " + names() + ".");
    const auto length = isWords(*setting) ? value.size() : numberLength(value);
    if (length == 0)
        return refusal(text, "\"" + std::string{value} + "\" does not begin with a number. Write it as in 66.9brix.");
    // The same reader as for a row of a log, so that limits and units are the same.
    const auto fact = factOf("", "set", value.substr(0, length), value.substr(length), "key=" + key, Instant{});
    if (const auto* fault = std::get_if<Fault>(&fact))
        return sentence(*fault, "--set " + text);
    return std::get<Set>(std::get<Fact>(fact).what);
}

} // namespace panside
