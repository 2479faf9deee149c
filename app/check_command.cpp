#include "app/commands.h"
#include "core/boil/shift_log.h"
#include "core/files/text_file.h"

#include <nlohmann/json.hpp>
#include <ostream>

namespace panside {

namespace {

nlohmann::json listOf(const std::vector<Fault>& faults, const std::string& place) {
    auto list = nlohmann::json::array();
    for (const auto& fault : faults)
        list.push_back({{"line", fault.line},
                        {"column", fault.column},
                        {"field", fault.field},
                        {"given", fault.given},
                        {"says", sentence(fault, place)}});
    return list;
}

std::string count(std::size_t number, const std::string& thing) {
    return std::to_string(number) + " " + thing + (number == 1 ? "" : "s");
}

} // namespace

int checkCommand(const CheckRequest& request, std::ostream& out, std::ostream&) {
    const auto place = calledPlace(request.log);
    const auto log = readLog(readText(request.log));
    if (request.json) {
        const nlohmann::json answer{{"log", place},
                                    {"facts", log.facts.size()},
                                    {"faults", listOf(log.faults, place)},
                                    {"warnings", listOf(log.warnings, place)}};
        // What stood in the file may not be UTF-8; that is one of the faults.
        out << answer.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) << '\n';
    } else {
        for (const auto& fault : log.faults)
            out << sentence(fault, place) << '\n';
        for (const auto& warning : log.warnings)
            out << sentence(warning, place) << '\n';
        out << place << ": " << count(log.facts.size(), "good row") << ", " << count(log.faults.size(), "fault") << ", "
            << count(log.warnings.size(), "warning") << '\n';
    }
    return log.faults.empty() ? status::done : status::refused;
}

} // namespace panside
