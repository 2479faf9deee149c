#include "core/files/text_file.h"

#include "core/files/whole_file.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
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

FileFault notWritten(const std::string& place, const std::filesystem::filesystem_error& error) {
    std::error_code none;
    return {FileTrouble::machine,
            place + ": cannot be written: " + error.code().message() +
                (std::filesystem::exists(place, none) ? ". What was there before is unchanged."
                                                      : ". Choose a folder that is there and may be written.")};
}

void writeText(const std::string& place, const std::string& text) {
    try {
        writeWhole(place, text);
    } catch (const std::filesystem::filesystem_error& error) {
        throw notWritten(place, error);
    }
}

} // namespace panside
