#pragma once
// What must hold of any input: where it does not, the fuzzer keeps the input, and this says which line demanded it.
#include <cstdio>
#include <cstdlib>

// Clang 14 knows no std::source_location.
inline void demand(bool holds, const char* file = __builtin_FILE(), int line = __builtin_LINE()) {
    if (holds)
        return;
    std::fprintf(stderr, "%s:%d: does not hold\n", file, line);
    std::abort();
}
