# Tests of reading specs: keys, places, limits.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_read_tests
  LINK tillwright_test_support
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/json_places_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/json_syntax_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/keys_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/limits_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/locate_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/read_spec_test.cpp)
