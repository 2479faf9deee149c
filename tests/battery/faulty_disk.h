#pragma once
// A disk that fails on demand: a layer of SQLite's own documented interface (sqlite.org/vfs.html) between SQLite and
// the system. At the n-th write, sync or truncation it says what it is told to; and it knows what a power cut would
// leave: what was synced, and of all written since any part, in any order.
#include <cstdint>
#include <filesystem>
#include <map>
#include <mutex>
#include <random>
#include <string>
#include <vector>

struct sqlite3_vfs;

namespace battery {

class FaultyDisk {
public:
    enum class Fault : std::uint8_t { none, error, shortWrite, full, lostSync };

    // The one of this process: every file that SQLite opens from here on goes through it.
    static FaultyDisk& installed();

    void failAt(Fault fault, int call);   // once, at the call of that number from now, from 1
    void failFrom(Fault fault, int call); // at that call and all after it, until well()
    void dieAt(int call);                 // the power goes: nothing more is written
    void well();                          // no more faults; calls are counted anew
    int calls() const;                    // since well()
    void leaveAfterPowerCut(const std::filesystem::path& from, const std::filesystem::path& into,
                            std::mt19937_64& random) const;

    // Of the layer.
    struct Write {
        std::int64_t at; // -1: cut to `size`
        std::string bytes;
        std::int64_t size;
    };
    struct File {
        std::string synced;
        std::vector<Write> since;
    };
    Fault next();
    bool dead() const;
    void opened(const std::string& path);
    void wrote(const std::string& path, Write write);
    void synced(const std::string& path);
    void removed(const std::string& path);

private:
    mutable std::mutex mutex_;
    Fault fault_ = Fault::none;
    int calls_ = 0, at_ = 0;
    bool onAndOn_ = false, dies_ = false, dead_ = false;
    std::map<std::string, File> files_;
};

} // namespace battery
