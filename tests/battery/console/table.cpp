#include "tests/battery/console/program.h"

#include <array>

namespace battery {

std::span<const Row> allRows() {
    static const std::array rows{
        Row{"hands", "1500 random keys, clicks, sizes, languages and looks", 120, 1, randomHands},
        Row{"soak", "72 h of boil at the fastest, the season growing", 1, 1, soaked},
    };
    return rows;
}

} // namespace battery
