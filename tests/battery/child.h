#pragma once
// A process of its own for a piece of work, to be killed or to fall.
#include <csignal>
#include <cstdlib>
#include <exception>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

namespace battery {

class Child {
public:
    template <class Work>
    explicit Child(Work&& work) {
        if (::pipe(ends_) != 0)
            std::abort();
        pid_ = ::fork();
        if (pid_ == 0) {
            ::close(ends_[0]);
            try {
                work(ends_[1]);
                ::_exit(0);
            } catch (const std::exception& error) {
                const std::string what = error.what();
                [[maybe_unused]] const auto said = ::write(ends_[1], what.data(), what.size());
                ::_exit(9);
            }
        }
        ::close(ends_[1]);
    }
    ~Child() {
        kill();
        ::close(ends_[0]);
    }
    void kill() {
        if (pid_ > 0) {
            ::kill(pid_, SIGKILL);
            ::waitpid(pid_, nullptr, 0);
        }
        pid_ = 0;
    }
    int wait() {
        int status = 0;
        ::waitpid(pid_, &status, 0);
        pid_ = 0;
        return status;
    }
    bool first() const { // waits for a first byte
        char byte = 0;
        return ::read(ends_[0], &byte, 1) == 1;
    }
    std::string rest() const {
        std::string all;
        char buffer[4096];
        for (ssize_t got = 0; (got = ::read(ends_[0], buffer, sizeof buffer)) > 0;)
            all.append(buffer, static_cast<std::size_t>(got));
        return all;
    }

private:
    int ends_[2]{};
    pid_t pid_ = 0;
};

inline void say(int to, char what) { [[maybe_unused]] const auto said = ::write(to, &what, 1); }

} // namespace battery
