// The journal against its peers, each pair measured in turn in the same run: a 12 h night of six series at 1 Hz. Every
// line gives our best time, the peer's best time and their ratio. The peers: one integer row a reading in a plain
// SQLite table, the sqlite3 shell's own .import and CSV output, an append and fdatasync of the same bytes, and a plain
// file copy.
#include "core/journal/backup.h"
#include "core/journal/log_import.h"
#include "core/journal/shift_summary.h"
#include "tests/bench/night.h"
#include "tests/core/journal/derived.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <functional>
#include <limits>
#include <sstream>
#include <unistd.h>

namespace panside::bench {
namespace {

namespace fs = std::filesystem;

class Ground {
public:
    Ground() {
        // On the disk that holds the build, not in memory: what is measured is commits.
        std::string name = (fs::current_path() / "journal-bench-XXXXXX").string();
        folder = ::mkdtemp(name.data());
        text = night(12);
        std::ofstream{folder / "night.csv"} << text;
    }
    ~Ground() {
        std::error_code ignored;
        fs::remove_all(folder, ignored);
    }
    fs::path folder;
    std::string text;
};

const Ground& ground() {
    static const Ground one;
    return one;
}

void drop(const fs::path& place) {
    for (const char* ending : {"", "-wal", "-shm", ".lock", "-journal"})
        fs::remove(place.string() + ending);
}

class Best {
public:
    template <class Work>
    void time(Work&& work) {
        const auto begun = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begun;
        seconds = std::min(seconds, took.count());
    }
    double seconds = std::numeric_limits<double>::max();
};

void report(benchmark::State& state, const Best& ours, const Best& peers, double goal) {
    state.counters["ours_ms"] = ours.seconds * 1e3;
    state.counters["peer_ms"] = peers.seconds * 1e3;
    state.counters["ratio"] = ours.seconds / peers.seconds;
    state.counters["goal"] = goal;
}

ShiftId importNight(Journal& journal) {
    std::ifstream log{ground().folder / "night.csv", std::ios::binary};
    return importLog(journal, log).shift;
}

// One integer row a reading: the second, the series, the number times a thousand.
void makeIntegerRows(const fs::path& place) {
    drop(place);
    SQLite::Database db{place.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    db.exec("CREATE TABLE reading(at INTEGER NOT NULL, series INTEGER NOT NULL, value INTEGER NOT NULL)");
    SQLite::Transaction transaction{db};
    SQLite::Statement insert{db, "INSERT INTO reading VALUES(?,?,?)"};
    for (const Fact& fact : readLog(ground().text).facts) {
        const auto* reading = std::get_if<Reading>(&fact.what);
        if (!reading)
            continue;
        insert.bind(1, static_cast<std::int64_t>(fact.at.time_since_epoch().count() / 1'000'000));
        insert.bind(2, static_cast<int>(reading->series));
        insert.bind(3, static_cast<std::int64_t>(std::llround(fromSi(reading->si, reading->unit) * 1000)));
        insert.exec();
        insert.reset();
    }
    transaction.commit();
}

void bytes(benchmark::State& state) {
    const fs::path ours = ground().folder / "ours", peers = ground().folder / "peers";
    for ([[maybe_unused]] auto _ : state) {
        drop(ours);
        {
            Journal journal = Journal::open(ours);
            importNight(journal);
        }
        makeIntegerRows(peers);
    }
    const double readings = 12 * 3600 * 6;
    state.counters["ours_bytes"] = static_cast<double>(fs::file_size(ours)) / readings;
    state.counters["peer_bytes"] = static_cast<double>(fs::file_size(peers)) / readings;
    state.counters["ratio"] = static_cast<double>(fs::file_size(ours)) / static_cast<double>(fs::file_size(peers));
    state.counters["goal"] = 1.0 / 6;
}
BENCHMARK(bytes)->Iterations(1)->Unit(benchmark::kMillisecond);

// A shift's readings by time, as an export or an account goes through them.
std::size_t readIntegerRows(SQLite::Database& db) {
    std::size_t read = 0;
    Fact fact{{}, Reading{}};
    SQLite::Statement query{db, "SELECT at, series, value FROM reading ORDER BY at"};
    while (query.executeStep()) {
        fact.at = Instant{std::chrono::seconds{query.getColumn(0).getInt64()}};
        auto& reading = std::get<Reading>(fact.what);
        reading.series = static_cast<Series>(query.getColumn(1).getInt());
        reading.si = static_cast<double>(query.getColumn(2).getInt64()) / 1000;
        benchmark::DoNotOptimize(fact);
        ++read;
    }
    return read;
}

void readShift(benchmark::State& state) {
    const fs::path ours = ground().folder / "ours", peers = ground().folder / "peers";
    drop(ours);
    Journal journal = Journal::open(ours);
    const ShiftId shift = importNight(journal);
    makeIntegerRows(peers);
    SQLite::Database db{peers.string()};
    Best our, their;
    for ([[maybe_unused]] auto _ : state) {
        our.time([&] {
            std::size_t read = 0;
            journal.visit(shift, [&](FactId, const Fact& fact) {
                benchmark::DoNotOptimize(fact);
                return ++read > 0;
            });
            benchmark::DoNotOptimize(read);
        });
        their.time([&] { benchmark::DoNotOptimize(readIntegerRows(db)); });
    }
    report(state, our, their, 1.0);
}
BENCHMARK(readShift)->Iterations(15)->Unit(benchmark::kMillisecond);

void shell(const std::string& command) {
    if (std::system(command.c_str()) != 0)
        throw std::runtime_error{"the sqlite3 shell is not there: " + command};
}

std::string shellImport() {
    const std::string folder = ground().folder.string();
    return "sqlite3 " + folder + "/plain '.import --csv " + folder + "/night.csv log'";
}

void importNightAgainstTheShell(benchmark::State& state) {
    const fs::path ours = ground().folder / "ours", plain = ground().folder / "plain";
    Best our, their;
    for ([[maybe_unused]] auto _ : state) {
        drop(ours);
        drop(plain);
        our.time([&] {
            Journal journal = Journal::open(ours);
            importNight(journal);
        });
        their.time([&] { shell(shellImport()); });
    }
    report(state, our, their, 0.5);
}
BENCHMARK(importNightAgainstTheShell)->Iterations(5)->Unit(benchmark::kMillisecond);

void exportNightAgainstTheShell(benchmark::State& state) {
    const fs::path ours = ground().folder / "ours", plain = ground().folder / "plain";
    drop(ours);
    drop(plain);
    Journal journal = Journal::open(ours);
    const ShiftId shift = importNight(journal);
    shell(shellImport());
    const std::string command =
        "sqlite3 -header -csv " + plain.string() + " 'SELECT * FROM log' > " + ground().folder.string() + "/out2";
    Best our, their;
    for ([[maybe_unused]] auto _ : state) {
        our.time([&] {
            std::ofstream out{ground().folder / "out1", std::ios::binary};
            exportLog(journal, shift, [&](std::string_view piece) {
                out.write(piece.data(), static_cast<std::streamsize>(piece.size()));
            });
        });
        their.time([&] { shell(command); });
    }
    report(state, our, their, 0.6);
}
BENCHMARK(exportNightAgainstTheShell)->Iterations(7)->Unit(benchmark::kMillisecond);

// Each second of a live shift: six readings. The peer appends the same rows as text and syncs. Mean times, since a disk
// has no best one worth the name; in turn, so that both see the same disk.
void commitASecond(benchmark::State& state) {
    const fs::path ours = ground().folder / "ours";
    drop(ours);
    Journal journal = Journal::open(ours);
    Scribe scribe{journal.standing()};
    const int raw = ::open((ground().folder / "raw").c_str(), O_WRONLY | O_CREAT | O_APPEND, 0644);
    std::chrono::duration<double> our{}, their{};
    const auto clock = [] { return std::chrono::steady_clock::now(); };
    int second = 0;
    for ([[maybe_unused]] auto _ : state) {
        std::string text;
        std::vector<Change> changes;
        const Instant at = instantIn("2025-03-14T18:00:00Z").value() + std::chrono::seconds{second++};
        for (const Series series : {Series::syrup_pan, Series::flue_pan, Series::stack, Series::feed, Series::air}) {
            Fact fact{at, Reading{series, toSi(100 + second % 50 / 10.0, Unit::degC), Unit::degC, ""}};
            text += rowOf(fact) + "\n";
            scribe.keep(std::move(fact), changes);
        }
        const auto begun = clock();
        journal.commit(changes);
        const auto between = clock();
        if (::write(raw, text.data(), text.size()) < 0 || ::fdatasync(raw) != 0)
            state.SkipWithError("the disk refuses");
        our += between - begun;
        their += clock() - between;
    }
    ::close(raw);
    const double count = static_cast<double>(state.iterations());
    state.counters["ours_ms"] = our.count() / count * 1e3;
    state.counters["peer_ms"] = their.count() / count * 1e3;
    state.counters["ratio"] = our.count() / their.count();
    state.counters["goal"] = 1.5;
}
BENCHMARK(commitASecond)->Iterations(1000)->Unit(benchmark::kMillisecond);

// Nights of a season, each the same night on another day.
Journal& season(std::size_t nights) {
    static Journal journal = [nights] {
        Journal fresh = Journal::open(ground().folder / "season");
        for (std::size_t day = 0; day < nights; ++day) {
            std::string text = ground().text;
            const std::string begins =
                textOf(instantIn("2025-01-01T18:00:00Z").value() + std::chrono::days{day}).substr(0, 10);
            const std::string next =
                textOf(instantIn("2025-01-02T18:00:00Z").value() + std::chrono::days{day}).substr(0, 10);
            for (std::size_t i = text.find("\n2025"); i != std::string::npos; i = text.find("\n2025", i + 10))
                text.replace(i + 1, 10, text.compare(i + 1, 10, "2025-03-14") == 0 ? begins : next);
            std::istringstream log{text};
            importLog(fresh, log);
        }
        return fresh;
    }();
    return journal;
}
constexpr std::size_t seasonNights = 40;

void backUpASeason(benchmark::State& state) {
    Journal& journal = season(seasonNights);
    dropDerived(journal);
    summaries(journal);
    SQLite::Database{(ground().folder / "season").string(), SQLite::OPEN_READWRITE}.exec(
        "PRAGMA wal_checkpoint(TRUNCATE)");
    Best our, their, looked;
    // Both write a new file each time, as back-ups do; what was there is taken away and gone from the disk before.
    const auto cleared = [](const fs::path& place) {
        fs::remove_all(place);
        ::sync();
    };
    for ([[maybe_unused]] auto _ : state) {
        cleared(ground().folder / "stick");
        our.time([&] { backUp(journal, ground().folder / "stick", instantIn("2025-04-20T12:00:00Z").value()); });
        cleared(ground().folder / "copied");
        their.time([&] {
            fs::copy_file(ground().folder / "season", ground().folder / "copied");
            const int copied = ::open((ground().folder / "copied").c_str(), O_RDONLY);
            ::fsync(copied);
            ::close(copied);
        });
        looked.time([&] { fullCheck(journal); }); // goes on beside the writing: with no core free it comes on top
    }
    report(state, our, their, 2);
    state.counters["check_ms"] = looked.seconds * 1e3;
}
BENCHMARK(backUpASeason)->Iterations(15)->Unit(benchmark::kMillisecond);

// The peer of both: stepping through a season's seconds of one series as integer rows.
void besideSeconds(benchmark::State& state, const std::function<void()>& ours, double goal) {
    makeIntegerRows(ground().folder / "peers");
    SQLite::Database db{(ground().folder / "peers").string()};
    Best our, rows;
    for ([[maybe_unused]] auto _ : state) {
        our.time(ours);
        rows.time([&] { // a row a second: a sixth of one night's rows, for each night
            SQLite::Statement query{db, "SELECT at, value FROM reading WHERE series=0"};
            double sum = 0;
            while (query.executeStep())
                sum += query.getColumn(1).getDouble();
            benchmark::DoNotOptimize(sum);
        });
    }
    rows.seconds *= seasonNights;
    report(state, our, rows, goal);
}

// As the list of nights reads them each time.
void summariesOfASeason(benchmark::State& state) {
    Journal& journal = season(seasonNights);
    summaries(journal);
    besideSeconds(
        state, [&] { benchmark::DoNotOptimize(summaries(journal)); }, 0.1);
}
BENCHMARK(summariesOfASeason)->Iterations(5)->Unit(benchmark::kMillisecond);

// As they are counted once, and again when the counting changes: all six series are unpacked, since a load that nobody
// keyed is noticed at the stack.
void countASeasonAgain(benchmark::State& state) {
    Journal& journal = season(seasonNights);
    besideSeconds(
        state,
        [&] {
            dropDerived(journal);
            summaries(journal);
        },
        2);
}
BENCHMARK(countASeasonAgain)->Iterations(5)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace panside::bench

BENCHMARK_MAIN();
