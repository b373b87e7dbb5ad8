# Tests of the views and sheets, measured with the font that is drawn.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_view_tests
  LINK tillwright_core tillwright_render tillwright_test_support
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/view_cases.cpp
    ${CMAKE_CURRENT_LIST_DIR}/view_layout_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/view_numbers.cpp
    ${CMAKE_CURRENT_LIST_DIR}/view_sheets_test.cpp)
