#pragma once
#include <stdexcept>
#include <string>

namespace panside {

// A file that was named could not be read or written: what, where, and what to do. The exit status goes with it.
class FileFault : public std::runtime_error {
public:
    FileFault(int exitStatus, const std::string& sentence) : std::runtime_error{sentence}, exitStatus_{exitStatus} {}
    int exitStatus() const { return exitStatus_; }

private:
    int exitStatus_;
};

// The whole of a file; "-" is the standard input. Throws FileFault.
std::string readText(const std::string& place);
// Writes beside the place and then moves it there, so that a file already there is replaced whole or not at all.
// Throws FileFault.
void writeText(const std::string& place, const std::string& text);
// What people call the place: "standard input" for "-".
std::string calledPlace(const std::string& place);

} // namespace panside
