// The battery: each row so many times, a number told for each case, what failed kept so that it can be repeated.
//   battery [ROW...] [--short] [--count N] [--seed N] [--case NUMBER] [--failed FOLDER]
#include "tests/battery/rows.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <exception>
#include <fstream>
#include <vector>

namespace {

using namespace battery;
namespace fs = std::filesystem;

struct Wish {
    bool brief = false;
    std::vector<std::string> rows; // none: all
    int number = 0, count = 0;
    unsigned seed = 1;
    fs::path failed = "failed";
    bool includes(const Row& row) const {
        return rows.empty() || std::find(rows.begin(), rows.end(), row.name) != rows.end();
    }
};

// What failed is kept with the words that repeat it, and the files it left.
void keepFailure(const Row& row, int number, const Wish& wish, const fs::path& folder, const std::string& wrong) {
    std::error_code ignored;
    const fs::path kept =
        wish.failed / (std::string{row.name} + "-" + std::to_string(wish.seed) + "-" + std::to_string(number));
    fs::create_directories(wish.failed, ignored);
    fs::remove_all(kept, ignored);
    fs::copy(folder, kept, fs::copy_options::recursive | fs::copy_options::copy_symlinks, ignored);
    std::ofstream{kept.string() + ".txt"} << wrong << "\ntests/battery/run " << row.name << " --seed " << wish.seed
                                          << " --case " << number << '\n';
}

std::string tried(const Row& row, int number, const Wish& wish) {
    std::string name = (fs::temp_directory_path() / "panside-battery-XXXXXX").string();
    const fs::path folder = ::mkdtemp(name.data());
    std::seed_seq sequence{wish.seed, static_cast<unsigned>(number)};
    std::mt19937_64 random{sequence};
    std::string wrong;
    try {
        wrong = row.run({number, random, folder, wish.brief});
    } catch (const std::exception& error) {
        wrong = std::string{"thrown: "} + error.what();
    }
    if (!wrong.empty())
        keepFailure(row, number, wish, folder, wrong);
    std::error_code ignored;
    fs::remove_all(folder, ignored);
    return wrong;
}

Wish wishIn(int count, char** words) {
    Wish wish;
    for (int i = 1; i < count; ++i) {
        const std::string word = words[i];
        const auto next = [&] { return i + 1 < count ? words[++i] : "0"; };
        if (word == "--short")
            wish.brief = true;
        else if (word == "--count")
            wish.count = std::atoi(next());
        else if (word == "--seed")
            wish.seed = static_cast<unsigned>(std::strtoul(next(), nullptr, 10));
        else if (word == "--case")
            wish.number = std::atoi(next());
        else if (word == "--failed")
            wish.failed = next();
        else
            wish.rows.push_back(word);
    }
    return wish;
}

struct Counts {
    int passed = 0, failed = 0;
};

Counts runRow(const Row& row, const Wish& wish) {
    const auto began = std::chrono::steady_clock::now();
    int last = wish.brief ? row.briefly : row.often, step = 1, first = 1;
    if (row.all) {
        last = row.all();
        step = wish.brief ? std::max(1, last / 24) : 1;
    }
    if (wish.count > 0)
        last = wish.count;
    if (wish.number > 0)
        first = last = wish.number;
    Counts counts;
    for (int number = first; number <= last; number += step) {
        const std::string wrong = tried(row, number, wish);
        (wrong.empty() ? counts.passed : counts.failed) += 1;
        if (!wrong.empty())
            std::printf("%s, case %d, seed %u: %s\n", row.name, number, wish.seed, wrong.c_str());
    }
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - began;
    std::printf("%-9s %s: %d passed, %d failed (seed %u, cases %d to %d, %.0f s)\n", row.name, row.what, counts.passed,
                counts.failed, wish.seed, first, last, took.count());
    std::fflush(stdout);
    return counts;
}

} // namespace

int main(int count, char** words) {
    const Wish wish = wishIn(count, words);
    for (const std::string& name : wish.rows)
        if (std::none_of(allRows().begin(), allRows().end(), [&](const Row& row) { return row.name == name; })) {
            std::fprintf(stderr, "There is no row %s. There are:\n", name.c_str());
            for (const Row& row : allRows())
                std::fprintf(stderr, "  %-9s %s\n", row.name, row.what);
            return 2;
        }
    Counts all;
    for (const Row& row : allRows())
        if (wish.includes(row)) {
            const Counts counts = runRow(row, wish);
            all.passed += counts.passed;
            all.failed += counts.failed;
        }
    std::printf("%d passed, %d failed\n", all.passed, all.failed);
    return all.failed == 0 && all.passed > 0 ? 0 : 1;
}
