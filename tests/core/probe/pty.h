#pragma once
// A pair of pseudo-terminals stands for the serial cable, and an event loop for the console's.
#include <QCoreApplication>
#include <QElapsedTimer>
#include <QTimer>
#include <fcntl.h>
#include <filesystem>
#include <functional>
#include <pty.h>
#include <string>
#include <string_view>
#include <termios.h>
#include <unistd.h>

namespace panside {

inline void needEventLoop() {
    static int argc = 1;
    static char name[] = "probe_test";
    static char* argv[] = {name, nullptr};
    static QCoreApplication application{argc, argv};
}

// Runs the event loop until it holds. The patience only ends what does not hold: how soon it does is judged by the
// battery (tests/battery, the rows of the ports), on a machine that does nothing else.
inline bool waitFor(const std::function<bool()>& holds, int milliseconds = 60000) {
    QElapsedTimer timer;
    timer.start();
    QTimer wake; // what holds may come from without: another program, a file
    wake.start(5);
    while (!holds()) {
        if (timer.elapsed() > milliseconds)
            return false;
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    return true;
}

// One end of the cable is ours, the other has a path. Gone with this object, as when the plug is pulled.
class Pty {
public:
    Pty() {
        termios raw{};
        cfmakeraw(&raw);
        char name[128] = {};
        int other = -1;
        if (openpty(&ours_, &other, name, &raw, nullptr) == 0) {
            path_ = name;
            ::close(other);
            fcntl(ours_, F_SETFL, O_NONBLOCK);
        }
    }
    ~Pty() { ::close(ours_); }
    Pty(const Pty&) = delete;
    Pty& operator=(const Pty&) = delete;

    const std::string& path() const { return path_; }
    int ours() const { return ours_; }
    bool send(std::string_view bytes) const {
        return ::write(ours_, bytes.data(), bytes.size()) == ssize_t(bytes.size());
    }
    std::string received() const {
        char buffer[512];
        const auto n = ::read(ours_, buffer, sizeof buffer);
        return n > 0 ? std::string(buffer, size_t(n)) : std::string{};
    }

private:
    int ours_ = -1;
    std::string path_;
};

// A folder of our own, gone at the end.
class Folder {
public:
    Folder() {
        char name[] = "/tmp/panside-probe-XXXXXX";
        path_ = mkdtemp(name);
    }
    ~Folder() { std::filesystem::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    std::string operator/(std::string_view name) const { return (path_ / name).string(); }
    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

} // namespace panside
