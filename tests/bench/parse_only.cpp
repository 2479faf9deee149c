// parse_only LOG: parses a shift log and prints one line a second, and does nothing else. What `panside replay` is
// measured against: the two read the same rows and print as many lines.
#include "core/boil/shift_log.h"

#include <fstream>
#include <iostream>
#include <iterator>

int main(int count, char** words) {
    if (count < 2)
        return 2;
    std::ifstream file{words[1], std::ios::binary};
    const std::string text{std::istreambuf_iterator<char>{file}, {}};
    const auto log = panside::readLog(text);
    if (log.facts.empty() || !log.faults.empty())
        return 1;
    std::string out;
    for (auto now = std::chrono::ceil<std::chrono::seconds>(log.facts.front().at); now <= log.facts.back().at;
         now += std::chrono::seconds{1}) {
        out += "{\"t\":\"";
        out += panside::textOf(now);
        out += "\"}\n";
    }
    std::cout << out;
    return 0;
}
