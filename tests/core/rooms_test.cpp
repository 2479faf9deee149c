// The order of the rooms: app, ui, core; within core shift knows journal and season, these and probe know boil, boil
// knows physics, physics knows quantity. Every #include is read, so that nothing slips in by the back door.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

struct Include {
    std::string file, name;
    bool quoted;
};

// "core/boil", "ui", "app": the room that a path begins with; empty for what is no room of ours.
std::string roomOf(const std::string& path) {
    for (const auto* room : {"core/quantity/", "core/physics/", "core/boil/", "core/rehearsal/", "core/files/",
                             "core/probe/", "core/journal/", "core/season/", "core/shift/", "ui/", "app/"})
        if (path.rfind(room, 0) == 0)
            return std::string{room}.substr(0, std::string{room}.size() - 1);
    return {};
}

std::vector<Include> includesUnder(const std::string& top) {
    std::vector<Include> found;
    const fs::path root = PANSIDE_SOURCE;
    for (const auto& entry : fs::recursive_directory_iterator(root / top)) {
        const auto extension = entry.path().extension();
        if (extension != ".h" && extension != ".cpp")
            continue;
        std::ifstream file{entry.path()};
        for (std::string line; std::getline(file, line);) {
            if (line.rfind("#include", 0) != 0)
                continue;
            const auto begin = line.find_first_of("<\"");
            const auto end = line.find_first_of(">\"", begin + 1);
            found.push_back({fs::relative(entry.path(), root).string(), line.substr(begin + 1, end - begin - 1),
                             line[begin] == '"'});
        }
    }
    return found;
}

std::vector<Include> allIncludes() {
    std::vector<Include> all;
    for (const auto* top : {"core", "ui", "app"})
        for (auto& include : includesUnder(top))
            all.push_back(std::move(include));
    return all;
}

TEST(Rooms, EachKnowsOnlyThoseBelowIt) {
    const std::set<std::string> pure{"core/quantity", "core/physics", "core/boil"};
    const auto also = [&pure](std::set<std::string> more) {
        more.insert(pure.begin(), pure.end());
        return more;
    };
    const auto core = also({"core/rehearsal", "core/files", "core/probe", "core/journal", "core/season", "core/shift"});
    auto all = core;
    all.insert("ui");
    const std::map<std::string, std::set<std::string>> mayKnow{
        {"core/quantity", {}},
        {"core/physics", {"core/quantity"}},
        {"core/boil", {"core/quantity", "core/physics"}},
        {"core/files", {}},
        {"core/rehearsal", pure},
        {"core/probe", also({"core/files"})},
        {"core/journal", also({"core/files"})},
        {"core/season", pure},
        {"core/shift", also({"core/files", "core/journal", "core/season", "core/probe", "core/rehearsal"})},
        {"ui", core},
        {"app", all}};
    std::size_t judged = 0;
    for (const auto& [file, name, quoted] : allIncludes()) {
        const auto from = roomOf(file), to = roomOf(name);
        if (!quoted || to.empty() || from == to)
            continue;
        ++judged;
        EXPECT_TRUE(mayKnow.at(from).contains(to)) << file << " includes " << name;
    }
    EXPECT_GT(judged, 20u);
}

TEST(Rooms, CoreKnowsNoWidgetsAndOnlyTheProbeRoomKnowsQt) {
    for (const auto& [file, name, quoted] : includesUnder("core")) {
        if (quoted || name.size() < 2 || name[0] != 'Q' || name[1] < 'A' || name[1] > 'Z')
            continue;
        EXPECT_TRUE(roomOf(file) == "core/probe" || file == "core/shift/session.cpp") << file << " includes " << name;
        for (const auto* heavy :
             {"QWidget", "QApplication", "QtWidgets", "QtGui", "QGuiApplication", "QMainWindow", "QtCharts"})
            EXPECT_EQ(name.find(heavy), std::string::npos) << file << " includes " << name;
    }
}

TEST(Rooms, OnlyTheChartFolderKnowsQtCharts) {
    for (const auto& [file, name, quoted] : allIncludes())
        if (name.find("QtCharts") != std::string::npos || name == "QChart" || name == "QChartView" ||
            name == "QLineSeries") {
            EXPECT_EQ(file.rfind("ui/chart/", 0), 0u) << file << " includes " << name;
        }
}

TEST(Rooms, OnlyTheJournalKnowsTheDatabase) {
    for (const auto& [file, name, quoted] : allIncludes())
        if (name.find("SQLiteCpp") != std::string::npos || name.find("sqlite3") != std::string::npos ||
            name.find("QSql") == 0) {
            EXPECT_EQ(roomOf(file), "core/journal") << file << " includes " << name;
        }
}

} // namespace
