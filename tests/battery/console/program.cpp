#include "tests/battery/console/program.h"

#include "core/files/text_file.h"
#include "tests/battery/child.h"

#include <QLocale>
#include <chrono>
#include <ctime>
#include <fstream>

namespace battery {
namespace {

namespace fs = std::filesystem;

constexpr unsigned nobody = 65534;

// Milliseconds for which threads of this process could have run, and others had the core (proc(5), schedstat).
double waitedForACore() {
    double waited = 0;
    std::error_code error;
    for (const auto& thread : fs::directory_iterator{"/proc/self/task", error}) {
        double atWork = 0, queued = 0;
        std::ifstream{thread.path() / "schedstat"} >> atWork >> queued;
        waited += queued / 1e6;
    }
    return waited;
}
double now() {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

void settleIn(const fs::path& folder) {
    for (const char* name : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_RUNTIME_DIR", "TMPDIR"})
        ::setenv(name, folder.c_str(), 1);
    ::setenv("QT_QPA_PLATFORM", "offscreen", 1);
    ::setenv("TZ", "UTC", 1);
    if (::chdir(folder.c_str()) != 0)
        throw std::runtime_error{"no folder"};
    if (::geteuid() == 0) {
        for (const auto& entry : fs::recursive_directory_iterator{folder})
            [[maybe_unused]] const int done = ::lchown(entry.path().c_str(), nobody, nobody);
        if (::chown(folder.c_str(), nobody, nobody) != 0 || ::setgid(nobody) != 0 || ::setuid(nobody) != 0)
            throw std::runtime_error{"its rights could not be laid down"};
    }
}

double worked() {
    timespec time{};
    ::clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

} // namespace

Turn::Turn() : began_{now()}, waited_{waitedForACore()}, worked_{worked()} {}
double Turn::atWork() const { return worked() - worked_; }
double Turn::milliseconds() const { return now() - began_ - (waitedForACore() - waited_); }

std::string inAProcessOfItsOwn(const Case& c, const std::function<std::string(panside::Program&)>& work) {
    Child child{[&](int tell) {
        settleIn(c.folder);
        int argc = 1;
        char name[] = "console_battery";
        char* argv[] = {name, nullptr};
        panside::Program application{argc, argv};
        panside::keepLabelsPlain(application);
        QLocale::setDefault(QLocale::c());
        const std::string wrong = work(application);
        [[maybe_unused]] const auto said = ::write(tell, wrong.data(), wrong.size());
    }};
    const std::string said = child.rest();
    const int status = child.wait();
    if (WIFSIGNALED(status))
        return said + " ended by signal " + std::to_string(WTERMSIG(status));
    if (WEXITSTATUS(status) != 0)
        return said + " ended with " + std::to_string(WEXITSTATUS(status));
    return said;
}

} // namespace battery
