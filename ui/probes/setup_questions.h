#pragma once
// What the numbers make the set-up screen ask: a unit that cannot be meant, two probes the wrong way round, a field
// that is plainly one of the readings. Asked, never done without a yes. Pure.
#include "ui/probes/probe_setup.h"

#include <set>

namespace panside {

struct SetupQuestion {
    QString words, yes; // the question, and what a yes does
    std::string key;    // the same as long as the same thing is asked: a no is remembered by it
    ProbeFile after;    // the file after a yes
    bool operator==(const SetupQuestion&) const = default;
};

// All that is to be asked now and was not answered with no; the gravest first.
std::vector<SetupQuestion> setupQuestions(const ProbeSetup& setup, const std::set<std::string>& refused);

} // namespace panside
