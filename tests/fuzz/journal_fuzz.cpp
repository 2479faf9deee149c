// Bytes altered anywhere in a journal, or any bytes as a block of readings: no crash, no endless work; what the check
// calls sound is read as it was, and a salvage is sound.
#include "core/journal/backup.h"
#include "core/journal/log_import.h"
#include "core/journal/salvage.h"
#include "tests/core/journal/hand_journal.h"
#include "tests/fuzz/demand.h"

#include <fstream>
#include <sstream>
#include <unistd.h>

namespace {

using namespace panside;
namespace fs = std::filesystem;

const fs::path& folder() {
    static const fs::path one = [] {
        std::string name = (fs::exists("/dev/shm") ? "/dev/shm" : "/tmp") + std::string{"/panside-fuzz-XXXXXX"};
        const fs::path made = ::mkdtemp(name.data());
        static const struct Gone {
            fs::path path;
            pid_t mine = ::getpid();
            ~Gone() {
                std::error_code ignored;
                if (::getpid() == mine)
                    fs::remove_all(path, ignored);
            }
        } gone{made};
        return made;
    }();
    return one;
}

std::string exported(const Journal& journal) {
    std::string all;
    for (const auto& shift : journal.shifts())
        exportLog(journal, shift.id, [&](std::string_view piece) { all += piece; });
    return all;
}

struct Base {
    std::string bytes, exported;
};
const Base& base() {
    static const Base one = [] {
        const fs::path place = folder() / "base";
        Base made;
        {
            HandJournal journal = Journal::open(place);
            const auto keep = [&](const std::string& row) { journal.append(std::get<Fact>(factOfLine(row))); };
            keep("2025-03-14T18:00:00Z,lit,,,by=Odile");
            for (int i = 10; i < 40; ++i)
                keep("2025-03-14T18:00:" + std::to_string(i) + "Z,syrup_pan,101." + std::to_string(i) + ",degC,");
            keep("2025-03-14T18:07:00Z,fired,40,lb,wood=maple");
            keep("2025-03-14T19:00:00Z,shift_end,,,");
            keep("2025-03-15T18:00:00Z,lit,,,");
            journal.withdrawFrom(journal.shifts().front().id, 32, *instantIn("2025-03-14T20:00:00Z"), "Odile");
            std::istringstream log{"time,what,value,unit,detail\n2024-03-01T18:00:00Z,lit,,,\n"
                                   "2024-03-01T18:00:01Z,stack,300,degC,\n"};
            importLog(journal, log);
            made.exported = ::exported(journal);
            made.bytes.clear();
        }
        std::ifstream file{place, std::ios::binary};
        std::stringstream bytes;
        bytes << file.rdbuf();
        made.bytes = bytes.str();
        return made;
    }();
    return one;
}

void readAltered(const std::string& bytes) {
    const fs::path place = folder() / "j", saved = folder() / "saved";
    for (const char* name : {"j", "j-wal", "j-shm", "saved", "saved-wal", "saved-shm", "saved.lock", "j.lock"})
        fs::remove(folder() / name);
    std::ofstream{place, std::ios::binary} << bytes;
    try {
        const Journal journal = Journal::open(place, Journal::Access::read);
        if (fullCheck(journal).sound())
            demand(exported(journal) == base().exported);
    } catch (const JournalError& error) {
        demand(std::string{error.what()}.size() >= 10);
    }
    try {
        salvage(place, saved);
    } catch (const JournalError&) {
        return;
    }
    demand(fullCheck(Journal::open(saved, Journal::Access::read)).sound());
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size < 1)
        return 0;
    const std::string_view rest{reinterpret_cast<const char*>(data) + 1, size - 1};
    // Blocks are many times as fast as whole journals, and are what is read most.
    if (data[0] % 2 == 0) {
        Unpacked whole;
        const bool one = unpack(rest, whole);
        demand(one || whole.samples.empty());
        if (one && !whole.samples.empty()) { // packed again and unpacked, it is the same
            Unpacked again;
            demand(unpack(packed(whole.channels, whole.samples), again));
            demand(again.samples.size() == whole.samples.size());
        }
        return 0;
    }
    // Four bytes a change: where, and what it becomes.
    std::string bytes = base().bytes;
    for (std::size_t i = 0; i + 4 <= rest.size(); i += 4) {
        const auto at = [&](std::size_t k) {
            return static_cast<std::size_t>(static_cast<unsigned char>(rest[i + k]));
        };
        bytes[(at(0) << 16 | at(1) << 8 | at(2)) % bytes.size()] = rest[i + 3];
    }
    readAltered(bytes);
    return 0;
}
