#include "app/commands.h"
#include "app/exit_status.h"
#include "core/boil/shift_log.h"
#include "core/files/text_file.h"
#include "core/journal/log_import.h"
#include "core/shift/book_marks.h"

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
    auto log = readLog(readText(request.log));
    std::vector<LineMark> marks;
    std::optional<Journal> journal;
    if (!request.journal.empty())
        journal = Journal::open(request.journal, Journal::Access::read);
    if (log.isDayBook()) {
        auto judged = judgedBook(log, journal ? &*journal : nullptr);
        log.faults = std::move(judged.faults);
        marks = std::move(judged.marks);
    } else if (log.dayRows > 0) {
        for (Fault& fault : bookFaults(log, bookKnown(journal ? &*journal : nullptr)))
            log.faults.push_back(std::move(fault));
    }
    if (!log.isDayBook() && log.faults.empty())
        marks = shiftMarks(log, journal ? &*journal : nullptr);
    const auto two = log.isDayBook() ? std::nullopt : twoShiftsIn(log.facts);
    if (request.json) {
        nlohmann::json answer{{"log", place},
                              {"facts", log.facts.size()},
                              {"faults", listOf(log.faults, place)},
                              {"warnings", listOf(log.warnings, place)}};
        if (two)
            answer["faults"].push_back(
                {{"line", 0}, {"column", 0}, {"field", ""}, {"given", ""}, {"says", sentence(*two, place)}});
        answer["marks"] = nlohmann::json::array();
        for (const LineMark& mark : marks)
            answer["marks"].push_back({{"line", mark.line}, {"says", mark.says}});
        // What stood in the file may not be UTF-8; that is one of the faults.
        out << answer.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) << '\n';
    } else {
        tell(log.faults, place, out);
        tell(log.warnings, place, out);
        if (two)
            out << sentence(*two, place) << '\n';
        for (const LineMark& mark : marks)
            out << place << ':' << mark.line << ": " << mark.says << '\n';
        out << place << ": " << count(log.facts.size(), "good row") << ", "
            << count(log.faults.size() + (two ? 1 : 0), "fault") << ", " << count(log.warnings.size(), "warning");
        if (log.isDayBook() || !marks.empty())
            out << ", " << count(marks.size(), "mark");
        if (log.dayRows > 0 && request.journal.empty())
            out << " (by itself; --journal judges it together with "
                << (log.isDayBook() ? "its shifts)" : "its day book)");
        out << '\n';
    }
    return log.faults.empty() && !two ? status::done : status::refused;
}

} // namespace panside
