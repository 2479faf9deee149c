#pragma once
#include <filesystem>
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
// Whole or not at all (whole_file.h). Throws FileFault.
void writeText(const std::string& place, const std::string& text);
// The fault of a file that could not be written (whole_file.h).
FileFault notWritten(const std::string& place, const std::filesystem::filesystem_error& error);
// What people call the place: "standard input" for "-".
std::string calledPlace(const std::string& place);

} // namespace panside
