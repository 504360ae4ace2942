#pragma once

#include <dlfcn.h>

/// Functions of a shared library that are found when the first of them is called, instead of when the program is loaded (docs/decisions/0013).
/// Without the library every call gives nothing: null, 0, false.
namespace groundcount::late {

template <class R>
R nothing()
{
    return R();
}

}  // namespace groundcount::late

// A function of C that a library has under the same name. `found` is the file's own look-up of a name. There is no way to say "the same
// parameters" in the language; so they are written once more, and the compiler holds them against the library's own header.
#define LATE(result, name, parameters, arguments)                                 \
    extern "C" result name parameters                                             \
    {                                                                             \
        static auto* const real = reinterpret_cast<decltype(&(name))>(found(#name)); \
        return real ? real arguments : groundcount::late::nothing<result>();      \
    }
