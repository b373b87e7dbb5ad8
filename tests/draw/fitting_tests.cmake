# Tests of the fitting sheet, measured with the font that is drawn.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_fitting_tests
  LINK tillwright_core tillwright_render tillwright_test_support
  SOURCES ${CMAKE_CURRENT_LIST_DIR}/fitting_test.cpp)
