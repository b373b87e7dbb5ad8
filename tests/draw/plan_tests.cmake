# Tests of plan sections and details, measured with the font that is drawn.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_plan_tests
  LINK tillwright_core tillwright_render tillwright_test_support
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/detail_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/plan_cases.cpp
    ${CMAKE_CURRENT_LIST_DIR}/plan_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/view_cases.cpp
    ${CMAKE_CURRENT_LIST_DIR}/view_numbers.cpp)
