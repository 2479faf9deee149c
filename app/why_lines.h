#pragma once
#include "core/boil/show_ground.h"

#include <iosfwd>
#include <set>
#include <string>

namespace panside {

// The switch --why: what the lines rest on, on the error stream, once when it begins to be said.
class WhyLines {
public:
    explicit WhyLines(std::ostream& err) : err_{err} {}
    void say(const Picture& picture);

private:
    std::ostream& err_;
    std::set<std::string> said_; // by the line before
};

} // namespace panside
