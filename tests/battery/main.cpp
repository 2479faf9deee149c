// The battery: each row so many times, a number told for each case, what failed kept so that it can be repeated.
//   battery [--short] [--row NAME] [--case NUMBER] [--times N] [--failed FOLDER]
#include "tests/battery/rows.h"

#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <exception>
#include <fstream>

namespace battery {

std::span<const Row> allRows() {
    static const std::array rows{
        Row{"kill", "kill -9 at any moment, with back-up, import or recount going on", 1000, 12, killed},
        Row{"fault", "an error, a short write, a full disk, a lost sync at every call of an hour", 0, 0, faultyCall},
        Row{"power", "the power cut: writes since the last sync dropped and reordered", 500, 60, powerCut},
        Row{"full", "the disk full from any write on, and freed", 20, 5, diskFull},
        Row{"folder", "the folder gone, or a loop of links in its place, and back", 20, 4, folderGone},
        Row{"stick", "the stick pulled in the midst of a back-up", 20, 5, stickPulled},
        Row{"bytes", "bits flipped, pages wiped, the end cut off", 2000, 60, spoiltBytes},
        Row{"consoles", "two consoles on one journal, killed in turn", 100, 4, twoConsoles},
    };
    return rows;
}

} // namespace battery

namespace {

using namespace battery;
namespace fs = std::filesystem;

struct Wish {
    bool brief = false;
    std::string row;
    int number = 0, times = 0;
    fs::path failed = "failed";
};

std::string tried(const Row& row, int number, const Wish& wish) {
    std::string name = (fs::temp_directory_path() / "panside-battery-XXXXXX").string();
    const fs::path folder = ::mkdtemp(name.data());
    std::mt19937_64 random{static_cast<std::uint64_t>(number) * 7919};
    std::string wrong;
    try {
        wrong = row.run({number, random, folder});
    } catch (const std::exception& error) {
        wrong = std::string{"thrown: "} + error.what();
    }
    std::error_code ignored;
    if (!wrong.empty()) {
        const fs::path kept = wish.failed / (std::string{row.name} + "-" + std::to_string(number));
        fs::create_directories(wish.failed, ignored);
        fs::remove_all(kept, ignored);
        fs::copy(folder, kept, fs::copy_options::recursive | fs::copy_options::copy_symlinks, ignored);
        std::ofstream{kept.string() + ".txt"} << wrong << "\nbattery --row " << row.name << " --case " << number
                                              << '\n';
    }
    fs::remove_all(folder, ignored);
    return wrong;
}

int timesOf(const Row& row, const Wish& wish) {
    if (wish.times > 0)
        return wish.times;
    if (row.often == 0) // at every call; in the short run at some
        return callsOfAnHour();
    return wish.brief ? row.briefly : row.often;
}

Wish wishIn(int count, char** words) {
    Wish wish;
    for (int i = 1; i < count; ++i) {
        const std::string word = words[i];
        const auto next = [&] { return i + 1 < count ? words[++i] : "0"; };
        if (word == "--short")
            wish.brief = true;
        else if (word == "--row")
            wish.row = next();
        else if (word == "--case")
            wish.number = std::atoi(next());
        else if (word == "--times")
            wish.times = std::atoi(next());
        else if (word == "--failed")
            wish.failed = next();
    }
    return wish;
}

} // namespace

int main(int count, char** words) {
    const Wish wish = wishIn(count, words);
    int passed = 0, failed = 0;
    for (const Row& row : allRows()) {
        if (!wish.row.empty() && wish.row != row.name)
            continue;
        const auto began = std::chrono::steady_clock::now();
        const int all = wish.number > 0 ? wish.number : timesOf(row, wish);
        const int step = row.often == 0 && wish.brief && wish.number == 0 ? std::max(1, all / 24) : 1;
        int good = 0, bad = 0;
        for (int number = wish.number > 0 ? wish.number : 1; number <= all; number += step) {
            const std::string wrong = tried(row, number, wish);
            (wrong.empty() ? good : bad) += 1;
            if (!wrong.empty())
                std::printf("%s, case %d: %s\n", row.name, number, wrong.c_str());
        }
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - began;
        std::printf("%-9s %s: %d passed, %d failed (cases 1 to %d, %.0f s)\n", row.name, row.what, good, bad, all,
                    took.count());
        std::fflush(stdout);
        passed += good;
        failed += bad;
    }
    std::printf("%d passed, %d failed\n", passed, failed);
    return failed == 0 && passed > 0 ? 0 : 1;
}
