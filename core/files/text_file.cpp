#include "core/files/text_file.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <sys/stat.h>
#include <unistd.h>

namespace panside {

namespace {

[[noreturn]] void fail(FileTrouble trouble, const std::string& place, const std::string& what,
                       const std::string& remedy) {
    throw FileFault{trouble, calledPlace(place) + ": " + what + ". " + remedy};
}

class Descriptor {
public:
    explicit Descriptor(int number) : number_{number} {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() {
        if (number_ > STDERR_FILENO)
            close(number_);
    }
    int number() const { return number_; }

private:
    int number_;
};

int opened(const std::string& place) {
    if (place == "-")
        return STDIN_FILENO;
    const int number = ::open(place.c_str(), O_RDONLY | O_CLOEXEC);
    if (number >= 0)
        return number;
    if (errno == ENOENT || errno == ENOTDIR)
        fail(FileTrouble::named, place, "there is no such file", "Look at the name and the folder.");
    fail(FileTrouble::machine, place, std::string{"cannot be read: "} + std::strerror(errno),
         "Look at its permissions.");
}

void writeAll(int number, const std::string& text, const std::string& place) {
    for (std::size_t done = 0; done < text.size();) {
        const auto count = write(number, text.data() + done, text.size() - done);
        if (count < 0 && errno != EINTR)
            fail(FileTrouble::machine, place, std::string{"cannot be written: "} + std::strerror(errno),
                 "What was there before is unchanged.");
        done += count > 0 ? static_cast<std::size_t>(count) : 0;
    }
}

} // namespace

std::string calledPlace(const std::string& place) { return place == "-" ? "standard input" : place; }

std::string readText(const std::string& place) {
    const Descriptor file{opened(place)};
    std::string text;
    for (;;) {
        constexpr std::size_t step = 1 << 18;
        const auto before = text.size();
        text.resize(before + step);
        const auto count = read(file.number(), text.data() + before, step);
        text.resize(before + (count > 0 ? static_cast<std::size_t>(count) : 0));
        if (count == 0)
            return text;
        if (count < 0 && errno == EISDIR)
            fail(FileTrouble::named, place, "is a folder", "Name a file in it.");
        if (count < 0 && errno != EINTR)
            fail(FileTrouble::machine, place, std::string{"cannot be read: "} + std::strerror(errno), "Try again.");
    }
}

void writeText(const std::string& place, const std::string& text) {
    // A device or a pipe (/dev/stdout) has no beside.
    if (std::error_code none; std::filesystem::exists(place, none) && !std::filesystem::is_regular_file(place, none)) {
        const Descriptor file{::open(place.c_str(), O_WRONLY | O_CLOEXEC)};
        if (file.number() < 0)
            fail(FileTrouble::machine, place, std::string{"cannot be written: "} + std::strerror(errno),
                 "Name a file.");
        writeAll(file.number(), text, place);
        return;
    }
    auto beside = place + ".XXXXXX";
    {
        const Descriptor file{mkostemp(beside.data(), O_CLOEXEC)};
        if (file.number() < 0)
            fail(FileTrouble::machine, place, std::string{"cannot be written: "} + std::strerror(errno),
                 "Choose a folder that is there and may be written.");
        try {
            writeAll(file.number(), text, place);
            fchmod(file.number(), 0644);
            if (fsync(file.number()) != 0)
                fail(FileTrouble::machine, place, std::string{"cannot be written: "} + std::strerror(errno),
                     "What was there before is unchanged.");
        } catch (const FileFault&) {
            unlink(beside.c_str());
            throw;
        }
    }
    if (rename(beside.c_str(), place.c_str()) != 0) {
        const std::string why = std::strerror(errno);
        unlink(beside.c_str());
        fail(FileTrouble::machine, place, "cannot be written: " + why, "What was there before is unchanged.");
    }
}

} // namespace panside
