# Toolchain: a Debian amd64 machine builds for Debian arm64 with arm64 libraries installed beside its own (multiarch). tests/package_arm64 uses it.
set(CMAKE_SYSTEM_NAME Linux)
set(CMAKE_SYSTEM_PROCESSOR aarch64)
set(CMAKE_C_COMPILER aarch64-linux-gnu-gcc)
set(CMAKE_CXX_COMPILER aarch64-linux-gnu-g++)
set(CMAKE_STRIP aarch64-linux-gnu-strip)
set(ENV{PKG_CONFIG_LIBDIR} /usr/lib/aarch64-linux-gnu/pkgconfig:/usr/share/pkgconfig)
# moc, rcc, lrelease run on this machine
set(QT_HOST_PATH /usr)
set(QT_HOST_PATH_CMAKE_DIR /usr/lib/x86_64-linux-gnu/cmake)
# groundbook is started once, for its manual page
find_program(QEMU_ARM64 qemu-aarch64-static)
if(QEMU_ARM64)
  set(CMAKE_CROSSCOMPILING_EMULATOR "${QEMU_ARM64}")
endif()
set(CPACK_DEBIAN_PACKAGE_ARCHITECTURE arm64)
