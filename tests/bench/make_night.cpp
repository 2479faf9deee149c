// make_night HOURS: prints the night that the other benchmarks read.
#include "tests/bench/night.h"

#include <cstdio>
#include <cstdlib>

int main(int count, char** words) {
    const auto text = panside::bench::night(count > 1 ? std::atoi(words[1]) : 12);
    return std::fwrite(text.data(), 1, text.size(), stdout) == text.size() ? 0 : 3;
}
