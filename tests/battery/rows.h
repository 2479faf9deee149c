#pragma once
// What the battery tries, row by row. A case is a number and a random source that follows from it and the seed: the
// same number and seed, the same case. It returns what did not hold; nothing, where all did.
#include <filesystem>
#include <random>
#include <span>
#include <string>

namespace battery {

struct Case {
    int number; // from 1
    std::mt19937_64& random;
    std::filesystem::path folder; // empty, of its own
    bool brief = false;           // of the short run: on a machine that may be busy, so no time is judged
    int upTo(int most) const { return static_cast<int>(random() % static_cast<std::uint64_t>(most)); }
    template <class Values>
    const auto& oneOf(const Values& values) const {
        return values[static_cast<std::size_t>(upTo(static_cast<int>(std::size(values))))];
    }
};

struct Row {
    const char* name;
    const char* what;
    int often, briefly; // cases in the hours' run and in the short one
    std::string (*run)(const Case&);
    int (*all)() = nullptr; // where each of so many is a case of its own; the short run tries some two dozen of them
};
std::span<const Row> allRows(); // of this program

// Of disk and journal.
std::string killed(const Case&);
std::string killedAtTenHertz(const Case&);
std::string killedInMigration(const Case&);
std::string faultyCall(const Case&);
std::string powerCut(const Case&);
std::string diskFull(const Case&);
std::string readOnly(const Case&);
std::string folderGone(const Case&);
std::string stickPulled(const Case&);
std::string spoiltBytes(const Case&);
std::string twoConsoles(const Case&);
int callsOfAnHour();

// Of the clock.
std::string clockMoved(const Case&);
std::string clockLost(const Case&);

// Of the ports.
std::string unplugged(const Case&);
std::string otherNumber(const Case&);
std::string wrongSpeed(const Case&);
std::string flooded(const Case&);
std::string silent(const Case&);
std::string endlessLine(const Case&);
std::string droppedColumn(const Case&);
std::string slowSlave(const Case&);
std::string wrongSlave(const Case&);
std::string exceptingSlave(const Case&);

} // namespace battery
