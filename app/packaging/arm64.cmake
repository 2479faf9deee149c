# Cross-built for the small boards by Debian's own compiler, against Debian's libraries of that architecture.
set(CMAKE_SYSTEM_NAME Linux)
set(CMAKE_SYSTEM_PROCESSOR aarch64)
set(CMAKE_C_COMPILER aarch64-linux-gnu-gcc)
set(CMAKE_CXX_COMPILER aarch64-linux-gnu-g++)
set(CMAKE_LIBRARY_ARCHITECTURE aarch64-linux-gnu)
set(PKG_CONFIG_EXECUTABLE aarch64-linux-gnu-pkg-config)
# Libraries of this machine are none of the board's.
execute_process(COMMAND dpkg-architecture -qDEB_BUILD_MULTIARCH OUTPUT_VARIABLE here OUTPUT_STRIP_TRAILING_WHITESPACE)
set(CMAKE_IGNORE_PREFIX_PATH "")
set(CMAKE_SYSTEM_IGNORE_PATH /usr/lib/${here} /lib/${here})
# moc, rcc and lrelease are this machine's.
set(QT_HOST_PATH /usr)
set(QT_HOST_PATH_CMAKE_DIR /usr/lib/${here}/cmake)
set(CPACK_DEBIAN_PACKAGE_ARCHITECTURE arm64)
