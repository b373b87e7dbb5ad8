# Tests of part sheets, overviews and pulls, measured with the font that is drawn.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_part_tests
  LINK tillwright_core tillwright_render tillwright_test_support
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/overview_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/part_cases.cpp
    ${CMAKE_CURRENT_LIST_DIR}/part_kinds_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/part_view_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/view_cases.cpp
    ${CMAKE_CURRENT_LIST_DIR}/view_numbers.cpp
    ${CMAKE_CURRENT_LIST_DIR}/../solve/pulls_test.cpp)
