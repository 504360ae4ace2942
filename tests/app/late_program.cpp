// Asks for the library of file formats once and prints what is said; built with a name or a version that must be refused (late_formats_test).
#include "gis/file_formats.h"

#include <cstdio>

int main()
{
    const auto formats = groundcount::gis::fileFormats();
    std::puts(formats ? "loaded" : formats.error().what.c_str());
    return formats ? 0 : 1;
}
