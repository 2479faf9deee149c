// make_night HOURS: prints the night that the other benchmarks read.
// make_night HOURS JOURNAL: keeps it in a new journal, as a shift that goes on: it ends now.
#include "core/shift/keeper.h"
#include "core/shift/session.h"
#include "tests/bench/night.h"

#include <cstdio>
#include <cstdlib>

using namespace panside;

namespace {

bool keep(const std::string& text, const char* place) {
    Session session{keeperIn(Journal::open(place))};
    auto facts = readLog(text).facts;
    const auto later = session.now() - facts.back().at;
    for (Fact& fact : facts)
        fact.at += later;
    session.follow(std::move(facts));
    return session.flush();
}

} // namespace

int main(int count, char** words) {
    const auto text = bench::night(count > 1 ? std::atoi(words[1]) : 12);
    if (count > 2)
        return keep(text, words[2]) ? 0 : 3;
    return std::fwrite(text.data(), 1, text.size(), stdout) == text.size() ? 0 : 3;
}
