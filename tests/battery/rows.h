#pragma once
// What the battery tries, row by row. A case is a number and a random source that follows from it: the same number, the
// same case. It returns what did not hold; nothing, where all did.
#include <filesystem>
#include <random>
#include <span>
#include <string>

namespace battery {

struct Case {
    int number; // from 1
    std::mt19937_64& random;
    std::filesystem::path folder; // empty, of its own
    int upTo(int most) const { return static_cast<int>(random() % static_cast<std::uint64_t>(most)); }
};

struct Row {
    const char* name;
    const char* what;
    int often, briefly; // cases in the hours' run and in the short one
    std::string (*run)(const Case&);
};
std::span<const Row> allRows();

std::string killed(const Case&);
std::string faultyCall(const Case&);
std::string powerCut(const Case&);
std::string diskFull(const Case&);
std::string folderGone(const Case&);
std::string stickPulled(const Case&);
std::string spoiltBytes(const Case&);
std::string twoConsoles(const Case&);

// How many calls the scripted hour makes: a fault is tried at each.
int callsOfAnHour();

} // namespace battery
