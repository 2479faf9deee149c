# The Debian package: what it says of itself, and the papers that Debian wants in it. `app/package` makes it.
include(GNUInstallDirs)
set(docs ${CMAKE_INSTALL_DATADIR}/doc/panside)

# Lines of a licence as a field of a copyright file: indented, a point for an empty line.
function(panside_as_field file from variable)
  file(READ ${file} text)
  string(SUBSTRING "${text}" ${from} -1 text)
  string(STRIP "${text}" text)
  string(REPLACE "\n" "\n " text " ${text}")
  string(REGEX REPLACE "\n *\n" "\n .\n" text "${text}")
  set(${variable} "${text}" PARENT_SCOPE)
endfunction()
file(READ ${PROJECT_SOURCE_DIR}/LICENSE licence)
string(FIND "${licence}" "Permission is" from)
panside_as_field(${PROJECT_SOURCE_DIR}/LICENSE ${from} expat)
file(READ ${PROJECT_SOURCE_DIR}/resources/faces/OFL.txt licence)
string(FIND "${licence}" "SIL OPEN FONT LICENSE Version" from)
panside_as_field(${PROJECT_SOURCE_DIR}/resources/faces/OFL.txt ${from} ofl)
file(WRITE ${PROJECT_BINARY_DIR}/debian/copyright
"Format: https://www.debian.org/doc/packaging-manuals/copyright-format/1.0/
Upstream-Name: Panside

Files: *
Copyright: 2026 The Panside authors
License: Expat

Files: resources/faces/*
Copyright: 2010, 2012-2020 Google Inc.
           2015-2020 Google LLC
License: OFL-1.1

License: Expat
${expat}

License: OFL-1.1
${ofl}
")
# The change log of the package that is built: its version tells the Debian it was built on, so that the package for a
# newer Debian is the newer one.
file(READ ${PROJECT_SOURCE_DIR}/app/packaging/changelog changes)
string(REPLACE "(${PROJECT_VERSION})" "(${PROJECT_VERSION}${PANSIDE_DISTRIBUTION})" changes "${changes}")
file(WRITE ${PROJECT_BINARY_DIR}/debian/changelog "${changes}")
find_program(GZIP gzip REQUIRED)
execute_process(COMMAND ${GZIP} -9nf ${PROJECT_BINARY_DIR}/debian/changelog COMMAND_ERROR_IS_FATAL ANY)

install(FILES ${PROJECT_BINARY_DIR}/debian/copyright ${PROJECT_BINARY_DIR}/debian/changelog.gz DESTINATION ${docs})
install(FILES ${CMAKE_CURRENT_LIST_DIR}/doc-base DESTINATION ${CMAKE_INSTALL_DATADIR}/doc-base RENAME panside)
file(READ ${CMAKE_CURRENT_LIST_DIR}/lintian-overrides overrides)
if(PANSIDE_DISTRIBUTION STREQUAL "+deb12") # its lintian does not know this tag, and calls its override an error
  string(REGEX REPLACE "\npanside: appstream-metadata-validation-failed[^\n]*" "" overrides "${overrides}")
endif()
file(WRITE ${PROJECT_BINARY_DIR}/debian/overrides "${overrides}")
install(FILES ${PROJECT_BINARY_DIR}/debian/overrides DESTINATION ${CMAKE_INSTALL_DATADIR}/lintian/overrides
        RENAME panside)
install(CODE "
  set(docs \"\$ENV{DESTDIR}\${CMAKE_INSTALL_PREFIX}/${docs}\")
  file(CREATE_LINK ../../panside/manual \"\${docs}/html\" SYMBOLIC)
  file(CREATE_LINK ../../panside/sample-data \"\${docs}/examples\" SYMBOLIC)
")

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME panside)
set(CPACK_PACKAGE_VERSION ${PROJECT_VERSION}${PANSIDE_DISTRIBUTION})
set(CPACK_PACKAGE_CONTACT "The Panside authors <panside@panside.invalid>")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
    OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Not seen by its symbols: Qt's own words in French.
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS qt6-translations-l10n)
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION "console beside the syrup pan of a wood-fired evaporator
Panside is for the small crew that boils sap over a wood fire. It reads the
probes you have, or what you type, and answers from across the room: is
anything wrong, how long until the draw, when is the next firing, how much
longer to boil. It keeps every shift on disk by itself and shows the night
again in the morning.
.
It advises and controls nothing. Somebody stays with a lit fire; local codes
and the instruments on the pan come first, and the hydrometer decides what is
syrup.")
include(CPack)
