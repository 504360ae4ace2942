#pragma once

#include <cstdio>
#include <cstdlib>

/// A property that must hold for any input; libFuzzer keeps the input that breaks it.
#define HOLD(condition)                                                                  \
    do {                                                                                 \
        if (!(condition)) {                                                              \
            std::fprintf(stderr, "%s:%d: does not hold: %s\n", __FILE__, __LINE__, #condition); \
            std::abort();                                                                \
        }                                                                                \
    } while (false)
