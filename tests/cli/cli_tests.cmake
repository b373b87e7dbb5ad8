# Tests of the command line, in this process and with the real program.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_cli_tests
  LINK tillwright_app tillwright_test_support
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/codes_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/commands_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/shop_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/stick_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/system_files_test.cpp)
target_compile_definitions(tillwright_cli_tests
  PRIVATE TILLWRIGHT_PROGRAM="$<TARGET_FILE:tillwright_cli>")
add_dependencies(tillwright_cli_tests tillwright_cli)
