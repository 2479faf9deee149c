// replay_only LOG: the engine over a log, one picture a second, as `panside replay` does.
#include "core/boil/replay.h"

#include <fstream>
#include <iostream>
#include <iterator>

int main(int count, char** words) {
    if (count < 2)
        return 2;
    std::ifstream file{words[1], std::ios::binary};
    const std::string text{std::istreambuf_iterator<char>{file}, {}};
    std::string out;
    const auto faults = panside::replay(text, {}, [&out](const panside::Picture& picture) {
        panside::appendJson(out, picture);
        out += '\n';
        if (out.size() > 1U << 16U) {
            std::cout << out;
            out.clear();
        }
    });
    for (const auto& fault : faults)
        std::cerr << panside::sentence(fault, words[1]) << '\n';
    std::cout << out;
    return faults.empty() ? 0 : 1;
}
