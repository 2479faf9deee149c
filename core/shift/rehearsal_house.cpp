#include "core/shift/rehearsal_house.h"

#include "core/boil/shift_log.h"
#include "core/journal/day_books.h"
#include "core/journal/log_import.h"
#include "core/rehearsal/rehearse.h"
#include "core/rehearsal/season.h"

#include <cerrno>
#include <cstdlib>
#include <sstream>

namespace panside {
namespace {

namespace fs = std::filesystem;

// Nobody else's, wherever temporary files lie.
fs::path folderOfItsOwn() {
    std::string name = (fs::temp_directory_path() / "panside-rehearsal-XXXXXX").string();
    if (!mkdtemp(name.data()))
        throw fs::filesystem_error{"no folder for the rehearsal", name, {errno, std::generic_category()}};
    return name;
}

void fill(const fs::path& place, std::uint64_t seed, Instant now) {
    using namespace std::chrono_literals;
    auto journal = Journal::open(place);
    const MadeSeason house = smallHouse(seed, std::chrono::floor<std::chrono::days>(now) - std::chrono::days{19});
    for (const std::string& shift : house.shifts) {
        std::istringstream log{shift};
        importLog(journal, log);
    }
    importBook(journal, readLog(house.dayBook).facts);
    // Last night, whose chart can be looked at.
    std::istringstream night{rehearsedLog(4h, seed, 10s, now - 27h)};
    importLog(journal, night);
}

} // namespace

RehearsalHouse::RehearsalHouse(std::uint64_t seed, std::chrono::system_clock::time_point now)
    : folder_{folderOfItsOwn()} {
    fill(past(), seed, std::chrono::floor<Instant::duration>(now));
    asItWas();
}

RehearsalHouse::~RehearsalHouse() {
    std::error_code ignored; // what is left lies among the temporary files
    fs::remove_all(folder_, ignored);
}

void RehearsalHouse::asItWas() const {
    for (const char* beside : {"", "-wal", "-shm", ".lock"})
        fs::remove(journal().string() + beside);
    fs::copy_file(past(), journal());
}

} // namespace panside
