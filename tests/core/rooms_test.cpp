// The order of the rooms: app, ui, core; within core shift knows journal and season, these and probe know boil, boil
// knows physics, physics knows quantity. Every #include is read, so that nothing slips in by the back door.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace {

namespace fs = std::filesystem;

struct Include {
    std::string file, name;
    bool ours;
};

// "core/boil", "ui", "app": the room that a path begins with; empty for what is no room of ours.
std::string roomOf(const std::string& path) {
    for (const auto* room :
         {"core/words/", "core/quantity/", "core/physics/", "core/boil/", "core/rehearsal/", "core/files/",
          "core/probe/", "core/journal/", "core/ledger/", "core/season/", "core/shift/", "core/lookin/", "ui/", "app/"})
        if (path.rfind(room, 0) == 0)
            return std::string{room}.substr(0, std::string{room}.size() - 1);
    return {};
}

// The name an #include line brings in, as a path from the top of the tree where it is one of ours: in quotes or angle
// brackets, with blanks anywhere, relative to its own file or not.
std::optional<Include> includeIn(const std::string& line, const fs::path& file) {
    constexpr auto blanks = " \t";
    auto at = line.find_first_not_of(blanks);
    if (at == std::string::npos || line[at] != '#')
        return std::nullopt;
    at = line.find_first_not_of(blanks, at + 1);
    constexpr std::string_view word = "include";
    if (at == std::string::npos || line.compare(at, word.size(), word) != 0)
        return std::nullopt;
    at = line.find_first_not_of(blanks, at + word.size());
    if (at == std::string::npos || (line[at] != '<' && line[at] != '"'))
        return std::nullopt;
    const bool quoted = line[at] == '"';
    const auto end = line.find(quoted ? '"' : '>', at + 1);
    std::string name = line.substr(at + 1, end == std::string::npos ? end : end - at - 1);
    if (quoted && roomOf(name).empty())
        name = (file.parent_path() / name).lexically_normal().string();
    return Include{file.string(), name, quoted || !roomOf(name).empty()};
}

std::vector<Include> includesUnder(const std::string& top) {
    std::vector<Include> found;
    const fs::path root = PANSIDE_SOURCE;
    for (const auto& entry : fs::recursive_directory_iterator(root / top)) {
        const auto extension = entry.path().extension();
        if (extension != ".h" && extension != ".cpp")
            continue;
        std::ifstream file{entry.path()};
        for (std::string line; std::getline(file, line);)
            if (auto include = includeIn(line, fs::relative(entry.path(), root)))
                found.push_back(std::move(*include));
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

TEST(Rooms, AreSeenBehindEveryFormOfInclude) {
    const auto brings = [](const char* line) {
        const auto include = includeIn(line, "core/physics/air.cpp");
        return include ? include->name + (include->ours ? "" : " (theirs)") : "nothing";
    };
    EXPECT_EQ(brings("#include \"core/boil/fact.h\""), "core/boil/fact.h");
    EXPECT_EQ(brings("  #  include   \"../boil/fact.h\" // what"), "core/boil/fact.h");
    EXPECT_EQ(brings("#include <core/boil/fact.h>"), "core/boil/fact.h");
    EXPECT_EQ(brings("#include <QtWidgets/QWidget>"), "QtWidgets/QWidget (theirs)");
    EXPECT_EQ(brings("// #include \"core/boil/fact.h\""), "nothing");
}

TEST(Rooms, EachKnowsOnlyThoseBelowIt) {
    const std::set<std::string> pure{"core/words", "core/quantity", "core/physics", "core/boil"};
    const auto also = [&pure](std::set<std::string> more) {
        more.insert(pure.begin(), pure.end());
        return more;
    };
    const auto core = also({"core/rehearsal", "core/files", "core/probe", "core/journal", "core/ledger", "core/season",
                            "core/shift", "core/lookin"});
    auto all = core;
    all.insert("ui");
    const std::map<std::string, std::set<std::string>> mayKnow{
        {"core/words", {}},
        {"core/quantity", {}},
        {"core/physics", {"core/quantity", "core/words"}},
        {"core/boil", {"core/quantity", "core/physics", "core/words"}},
        {"core/files", {}},
        {"core/rehearsal", pure},
        {"core/probe", also({"core/files"})},
        {"core/journal", also({"core/files"})},
        {"core/ledger", pure},
        {"core/season", pure},
        {"core/lookin", {}},
        {"core/shift",
         also({"core/files", "core/journal", "core/ledger", "core/season", "core/probe", "core/rehearsal"})},
        {"ui", core},
        {"app", all}};
    std::size_t judged = 0;
    for (const auto& [file, name, ours] : allIncludes()) {
        const auto from = roomOf(file), to = roomOf(name);
        if (!ours || to.empty() || from == to)
            continue;
        ++judged;
        EXPECT_TRUE(mayKnow.at(from).contains(to)) << file << " includes " << name;
    }
    EXPECT_GT(judged, 20u);
}

TEST(Rooms, NoFoldersOfTheConsoleKnowEachOtherInACircle) {
    std::map<std::string, std::set<std::string>> knows;
    const auto folderOf = [](const std::string& path) { return path.substr(0, path.find('/', 3)); };
    for (const auto& [file, name, ours] : includesUnder("ui"))
        if (ours && roomOf(name) == "ui" && folderOf(file) != folderOf(name))
            knows[folderOf(file)].insert(folderOf(name));
    EXPECT_GT(knows.size(), 10u);
    std::set<std::string> done;
    std::vector<std::string> way;
    const std::function<void(const std::string&)> walk = [&](const std::string& folder) {
        const auto met = std::find(way.begin(), way.end(), folder);
        if (met != way.end()) {
            std::string circle;
            for (auto each = met; each != way.end(); ++each)
                circle += *each + " -> ";
            ADD_FAILURE() << circle << folder;
            return;
        }
        if (done.contains(folder))
            return;
        way.push_back(folder);
        for (const std::string& below : knows[folder])
            walk(below);
        way.pop_back();
        done.insert(folder);
    };
    for (const auto& [folder, below] : std::map{knows})
        walk(folder);
}

TEST(Rooms, CoreKnowsNoWidgetsAndOnlyProbeAndLookInKnowQt) {
    for (const auto& [file, name, ours] : includesUnder("core")) {
        const auto header = name.substr(name.rfind('/') + 1);
        const bool qt =
            name.rfind("Qt", 0) == 0 || (header.size() > 1 && header[0] == 'Q' && header[1] >= 'A' && header[1] <= 'Z');
        if (ours || !qt)
            continue;
        EXPECT_TRUE(roomOf(file) == "core/probe" || roomOf(file) == "core/lookin") << file << " includes " << name;
        for (const auto* heavy :
             {"QWidget", "QApplication", "QtWidgets", "QtGui", "QGuiApplication", "QMainWindow", "QtCharts"})
            EXPECT_EQ(name.find(heavy), std::string::npos) << file << " includes " << name;
    }
}

TEST(Rooms, NobodyDrawsWithQtCharts) { // tests/bench/board_bench says why, in figures
    for (const auto& [file, name, ours] : allIncludes())
        EXPECT_FALSE(name.find("QtCharts") != std::string::npos || name == "QChart" || name == "QChartView" ||
                     name == "QLineSeries")
            << file << " includes " << name;
}

TEST(Rooms, OnlyTheJournalKnowsTheDatabase) {
    for (const auto& [file, name, ours] : allIncludes())
        if (name.find("SQLiteCpp") != std::string::npos || name.find("sqlite3") != std::string::npos ||
            name.find("QSql") == 0) {
            EXPECT_EQ(roomOf(file), "core/journal") << file << " includes " << name;
        }
}

} // namespace
