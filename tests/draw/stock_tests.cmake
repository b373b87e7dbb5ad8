# Tests of the drawings of stock layouts, measured with the font that is drawn.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_stock_view_tests
  LINK tillwright_core tillwright_render tillwright_test_support
  SOURCES ${CMAKE_CURRENT_LIST_DIR}/stock_view_test.cpp)
