# Tests of the registry of dimensions, over everything that is printed.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_dimension_tests
  LINK tillwright_core tillwright_render tillwright_test_support
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/paths_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/printed_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/../draw/view_numbers.cpp)
