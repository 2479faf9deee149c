#include "app/commands.h"
#include "app/journal_status.h"
#include "app/text_file.h"
#include "core/journal/log_import.h"

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>

namespace panside {

namespace {

std::string_view nameOf(ImportOutcome outcome) {
    switch (outcome) {
    case ImportOutcome::added:
        return "added";
    case ImportOutcome::alreadyThere:
        return "alreadyThere";
    case ImportOutcome::faulty:
        return "faulty";
    case ImportOutcome::differs:
        return "differs";
    case ImportOutcome::twoShifts:
        return "twoShifts";
    case ImportOutcome::cancelled:
        return "cancelled";
    case ImportOutcome::unreadable:
        return "unreadable";
    }
    return {};
}

bool isGood(const Imported& imported) {
    return imported.outcome == ImportOutcome::added || imported.outcome == ImportOutcome::alreadyThere;
}

Imported importFrom(Journal& journal, const std::string& place) {
    if (place == "-")
        return importLog(journal, std::cin);
    if (std::error_code none; std::filesystem::is_directory(place, none))
        throw FileFault{status::refused, place + ": is a folder. Name the log in it."};
    std::ifstream log{place, std::ios::binary};
    if (!log && errno == ENOENT)
        throw FileFault{status::refused, place + ": there is no such file. Look at the name and the folder."};
    if (!log)
        throw FileFault{status::machineFailed, place + ": cannot be read: " + std::strerror(errno) + "."};
    return importLog(journal, log);
}

void say(const Imported& imported, const std::string& place, std::ostream& out, std::ostream& err) {
    for (const auto& fault : imported.faults)
        err << sentence(fault, place) << '\n';
    if (imported.faultCount > imported.faults.size())
        err << place << ": and " << imported.faultCount - imported.faults.size() << " faults more.\n";
    for (const auto& warning : imported.warnings)
        err << sentence(warning, place) << '\n';
    (isGood(imported) ? out : err) << sentence(imported, place) << '\n';
}

nlohmann::json answerFor(const Imported& imported, const std::string& place) {
    nlohmann::json answer{{"log", place},
                          {"outcome", nameOf(imported.outcome)},
                          {"facts", imported.facts},
                          {"faults", imported.faultCount},
                          {"warnings", imported.warningCount}};
    answer["shift"] = isGood(imported) ? nlohmann::json(Shift{imported.shift, false, true}.name()) : nlohmann::json();
    return answer;
}

} // namespace

// Each log stands for itself: a faulty one does not keep the others out.
int importCommand(const ImportRequest& request, std::ostream& out, std::ostream& err) {
    int result = status::done;
    auto answers = nlohmann::json::array();
    try {
        auto journal = journalToWrite(request.journal);
        for (const auto& log : request.logs) {
            const auto place = calledPlace(log);
            try {
                const auto imported = importFrom(journal, log);
                if (!isGood(imported))
                    result = std::max(result, status::refused);
                if (request.json)
                    answers.push_back(answerFor(imported, place));
                std::ostream silent{nullptr};
                say(imported, place, request.json ? silent : out, err);
            } catch (const FileFault& fault) {
                err << fault.what() << '\n';
                result = std::max(result, fault.exitStatus());
            }
        }
    } catch (const JournalError& trouble) {
        err << trouble.what() << '\n';
        result = statusOf(trouble.trouble());
    }
    if (request.json)
        out << nlohmann::json{{"logs", answers}}.dump(2) << '\n';
    return result;
}

} // namespace panside
