#include "share/address.h"

#include <cstdio>

/// What an address says in a program whose libpq is missing (late_formats_test).
int main()
{
    const auto checked = groundcount::share::checkAddress("host=db.example sslmode=verify-full");
    std::puts(checked ? "The address was read." : checked.error().what.c_str());
    return 0;
}
