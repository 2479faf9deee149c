#include "app/commands.h"
#include "app/exit_status.h"
#include "core/files/text_file.h"
#include "core/rehearsal/rehearse.h"
#include "core/rehearsal/season.h"

#include <filesystem>
#include <fmt/format.h>
#include <ostream>

namespace panside {
namespace {

void writeSeason(const MadeSeason& season, const std::string& folder) {
    const std::string inside = folder + "/" + season.house;
    std::error_code error;
    std::filesystem::create_directories(inside, error);
    if (error)
        throw FileFault{FileTrouble::machine, inside + ": cannot be made. Choose a folder that may be written."};
    writeText(inside + "/day_book.csv", season.dayBook);
    for (std::size_t i = 0; i < season.shifts.size(); ++i)
        writeText(fmt::format("{}/shift_{:02}.csv", inside, i + 1), season.shifts[i]);
    writeText(inside + "/truth.json", season.truth());
}

} // namespace

int rehearseCommand(const RehearseRequest& request, std::ostream& out, std::ostream&) {
    if (request.season) {
        writeSeason(smallHouse(request.seed), request.out);
        writeSeason(largeHouse(request.seed), request.out);
        return status::done;
    }
    const auto log = rehearsedLog(Duration{request.hours * 3600}, request.seed, Duration{request.every});
    writeOut(request.out, log, out);
    return status::done;
}

} // namespace panside
