#pragma once
#include <stdexcept>
#include <string>

namespace panside {

enum class FileTrouble {
    named,  // what was named cannot serve: it is not there, or not of this kind
    machine // the disk or its rights did not let it be read or written
};

// A file that was named could not be read or written: what, where, and what to do.
class FileFault : public std::runtime_error {
public:
    FileFault(FileTrouble trouble, const std::string& sentence) : std::runtime_error{sentence}, trouble_{trouble} {}
    FileTrouble trouble() const { return trouble_; }

private:
    FileTrouble trouble_;
};

// The whole of a file; "-" is the standard input. Throws FileFault.
std::string readText(const std::string& place);
// Writes beside the place and then moves it there, so that a file already there is replaced whole or not at all.
// Throws FileFault.
void writeText(const std::string& place, const std::string& text);
// What people call the place: "standard input" for "-".
std::string calledPlace(const std::string& place);

} // namespace panside
