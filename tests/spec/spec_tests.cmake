# Tests of the spec as data: words, materials, and whose keys win.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_spec_tests
  LINK tillwright_test_support
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/box_rules_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/diagnostic_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/mass_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/materials_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/words_test.cpp)
