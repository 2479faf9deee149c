#include "tests/battery/faulty_disk.h"

#include <algorithm>
#include <cstring>
#include <fstream>
#include <new>
#include <sqlite3.h>
#include <sstream>

namespace battery {
namespace {

namespace fs = std::filesystem;
using Fault = FaultyDisk::Fault;

sqlite3_vfs* below = nullptr; // the system's own

struct LayerFile {
    sqlite3_file base;
    const char* path; // SQLite keeps it as long as the file is open; null: a temporary file
    sqlite3_file* under() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};
LayerFile* layerOf(sqlite3_file* file) { return reinterpret_cast<LayerFile*>(file); }
sqlite3_file* under(sqlite3_file* file) { return layerOf(file)->under(); }
FaultyDisk& disk() { return FaultyDisk::installed(); }

int closeFile(sqlite3_file* file) {
    return under(file)->pMethods ? under(file)->pMethods->xClose(under(file)) : SQLITE_OK;
}
int readFile(sqlite3_file* file, void* into, int count, sqlite3_int64 at) {
    return under(file)->pMethods->xRead(under(file), into, count, at);
}
int writeFile(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 at) {
    const char* path = layerOf(file)->path;
    if (!path)
        return under(file)->pMethods->xWrite(under(file), bytes, count, at);
    const Fault fault = disk().next();
    if (disk().dead() || fault == Fault::error)
        return SQLITE_IOERR_WRITE;
    if (fault == Fault::full)
        return SQLITE_FULL;
    const int whole = fault == Fault::shortWrite ? count / 2 : count;
    const int result = under(file)->pMethods->xWrite(under(file), bytes, whole, at);
    disk().wrote(path, {at, std::string{static_cast<const char*>(bytes), static_cast<std::size_t>(whole)}, 0});
    return whole < count ? SQLITE_FULL : result;
}
int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
    const char* path = layerOf(file)->path;
    if (path) {
        const Fault fault = disk().next();
        if (disk().dead() || (fault != Fault::none && fault != Fault::lostSync))
            return SQLITE_IOERR_TRUNCATE;
        disk().wrote(path, {-1, {}, size});
    }
    return under(file)->pMethods->xTruncate(under(file), size);
}
int syncFile(sqlite3_file* file, int flags) {
    const char* path = layerOf(file)->path;
    if (!path)
        return under(file)->pMethods->xSync(under(file), flags);
    const Fault fault = disk().next();
    if (disk().dead() || fault == Fault::error || fault == Fault::full || fault == Fault::shortWrite)
        return SQLITE_IOERR_FSYNC;
    if (fault != Fault::lostSync)
        disk().synced(path);
    return SQLITE_OK; // the battery cuts the power itself: the real disk need not be waited for
}
int sizeOfFile(sqlite3_file* file, sqlite3_int64* size) { return under(file)->pMethods->xFileSize(under(file), size); }
int lockFile(sqlite3_file* file, int level) { return under(file)->pMethods->xLock(under(file), level); }
int unlockFile(sqlite3_file* file, int level) { return under(file)->pMethods->xUnlock(under(file), level); }
int checkReserved(sqlite3_file* file, int* held) {
    return under(file)->pMethods->xCheckReservedLock(under(file), held);
}
int control(sqlite3_file* file, int what, void* with) {
    return under(file)->pMethods->xFileControl(under(file), what, with);
}
int sectorSize(sqlite3_file* file) { return under(file)->pMethods->xSectorSize(under(file)); }
int traits(sqlite3_file* file) { return under(file)->pMethods->xDeviceCharacteristics(under(file)); }
int shmMap(sqlite3_file* file, int page, int size, int extend, void volatile** memory) {
    return under(file)->pMethods->xShmMap(under(file), page, size, extend, memory);
}
int shmLock(sqlite3_file* file, int offset, int count, int flags) {
    return under(file)->pMethods->xShmLock(under(file), offset, count, flags);
}
void shmBarrier(sqlite3_file* file) { under(file)->pMethods->xShmBarrier(under(file)); }
int shmUnmap(sqlite3_file* file, int remove) { return under(file)->pMethods->xShmUnmap(under(file), remove); }

const sqlite3_io_methods methods{2,        closeFile,  readFile,      writeFile, truncateFile, syncFile, sizeOfFile,
                                 lockFile, unlockFile, checkReserved, control,   sectorSize,   traits,   shmMap,
                                 shmLock,  shmBarrier, shmUnmap,      nullptr,   nullptr};

int openFile(sqlite3_vfs*, const char* path, sqlite3_file* file, int flags, int* outFlags) {
    LayerFile* layer = layerOf(file);
    layer->base.pMethods = nullptr;
    const bool kept = (flags & (SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_WAL | SQLITE_OPEN_MAIN_JOURNAL)) != 0;
    layer->path = kept ? path : nullptr;
    if (kept && disk().dead())
        return SQLITE_IOERR;
    const int result = below->xOpen(below, path, layer->under(), flags, outFlags);
    if (result != SQLITE_OK)
        return result;
    layer->base.pMethods = &methods;
    if (layer->path)
        disk().opened(path);
    return SQLITE_OK;
}
int removeFile(sqlite3_vfs*, const char* path, int sync) {
    if (disk().dead())
        return SQLITE_IOERR_DELETE;
    disk().removed(path);
    return below->xDelete(below, path, sync);
}

std::string bytesOf(const fs::path& path) {
    std::ifstream file{path, std::ios::binary};
    std::stringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

void put(std::string& file, const FaultyDisk::Write& write) {
    if (write.at < 0) {
        file.resize(static_cast<std::size_t>(write.size));
        return;
    }
    const auto at = static_cast<std::size_t>(write.at);
    if (file.size() < at + write.bytes.size())
        file.resize(at + write.bytes.size());
    std::copy(write.bytes.begin(), write.bytes.end(), file.begin() + static_cast<std::ptrdiff_t>(at));
}

} // namespace

FaultyDisk& FaultyDisk::installed() {
    static FaultyDisk one;
    static sqlite3_vfs layer = [] {
        below = sqlite3_vfs_find(nullptr);
        sqlite3_vfs vfs = *below;
        vfs.zName = "faulty";
        vfs.pNext = nullptr;
        vfs.szOsFile = static_cast<int>(sizeof(LayerFile)) + below->szOsFile;
        vfs.xOpen = openFile;
        vfs.xDelete = removeFile;
        return vfs;
    }();
    static const int registered = sqlite3_vfs_register(&layer, 1);
    static_cast<void>(registered);
    return one;
}

void FaultyDisk::failAt(Fault fault, int call) {
    const std::scoped_lock lock{mutex_};
    fault_ = fault, at_ = calls_ + call, onAndOn_ = false;
}
void FaultyDisk::failFrom(Fault fault, int call) {
    const std::scoped_lock lock{mutex_};
    fault_ = fault, at_ = calls_ + call, onAndOn_ = true;
}
void FaultyDisk::dieAt(int call) {
    const std::scoped_lock lock{mutex_};
    at_ = calls_ + call, dies_ = true;
}
void FaultyDisk::well() {
    const std::scoped_lock lock{mutex_};
    fault_ = Fault::none;
    calls_ = at_ = 0;
    onAndOn_ = dies_ = dead_ = false;
}
int FaultyDisk::calls() const {
    const std::scoped_lock lock{mutex_};
    return calls_;
}
bool FaultyDisk::dead() const {
    const std::scoped_lock lock{mutex_};
    return dead_;
}

Fault FaultyDisk::next() {
    const std::scoped_lock lock{mutex_};
    ++calls_;
    if (dies_ && calls_ >= at_)
        dead_ = true;
    const bool now = !dies_ && at_ > 0 && (calls_ == at_ || (onAndOn_ && calls_ > at_));
    return now ? fault_ : Fault::none;
}

void FaultyDisk::opened(const std::string& path) {
    const std::scoped_lock lock{mutex_};
    if (!files_.contains(path))
        files_[path].synced = bytesOf(path);
}
void FaultyDisk::wrote(const std::string& path, Write write) {
    const std::scoped_lock lock{mutex_};
    files_[path].since.push_back(std::move(write));
}
void FaultyDisk::synced(const std::string& path) {
    const std::scoped_lock lock{mutex_};
    File& file = files_[path];
    for (const Write& write : file.since)
        put(file.synced, write);
    file.since.clear();
}
void FaultyDisk::removed(const std::string& path) {
    const std::scoped_lock lock{mutex_};
    files_.erase(path);
}

// What a disk does with sectors of 512 bytes that it was not told to sync: some are there, some are not, in any order.
void FaultyDisk::leaveAfterPowerCut(const fs::path& from, const fs::path& into, std::mt19937_64& random) const {
    const std::scoped_lock lock{mutex_};
    constexpr std::size_t sector = 512;
    for (const auto& [path, file] : files_) {
        if (fs::path{path}.parent_path() != from)
            continue;
        std::string left = file.synced;
        std::vector<Write> pieces;
        for (const Write& write : file.since) {
            for (std::size_t at = 0; at < write.bytes.size(); at += sector)
                pieces.push_back({write.at + static_cast<std::int64_t>(at), write.bytes.substr(at, sector), 0});
            if (write.at < 0)
                pieces.push_back(write);
        }
        std::shuffle(pieces.begin(), pieces.end(), random);
        const auto share = random() % 101; // of them that came through
        for (const Write& piece : pieces)
            if (random() % 100 < share)
                put(left, piece);
        std::ofstream{into / fs::path{path}.filename(), std::ios::binary} << left;
    }
}

} // namespace battery
