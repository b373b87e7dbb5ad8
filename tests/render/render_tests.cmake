# Tests of the renderers: bytes, and what other programs read in them.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
add_executable(tillwright_render_tests
  ${CMAKE_CURRENT_LIST_DIR}/demo_sheet.cpp
  ${CMAKE_CURRENT_LIST_DIR}/detail_scale_test.cpp
  ${CMAKE_CURRENT_LIST_DIR}/font_test.cpp
  ${CMAKE_CURRENT_LIST_DIR}/pdf_test.cpp
  ${CMAKE_CURRENT_LIST_DIR}/png_test.cpp
  ${CMAKE_CURRENT_LIST_DIR}/svg_test.cpp
  ${CMAKE_CURRENT_LIST_DIR}/tools.cpp
  ${CMAKE_CURRENT_LIST_DIR}/true_scale_test.cpp)
target_include_directories(tillwright_render_tests PRIVATE
  ${CMAKE_CURRENT_LIST_DIR}/.. ${CMAKE_CURRENT_LIST_DIR}/../../src)
target_link_libraries(tillwright_render_tests PRIVATE
  tillwright_core tillwright_render tillwright_test_support tillwright_flags PNG::PNG GTest::gmock_main)
gtest_discover_tests(tillwright_render_tests DISCOVERY_MODE PRE_TEST TEST_PREFIX render/)
