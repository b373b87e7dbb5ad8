# Tests of the drawing toolkit; no Cairo, no font.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
add_executable(tillwright_draw_tests
  ${CMAKE_CURRENT_LIST_DIR}/annotation_test.cpp
  ${CMAKE_CURRENT_LIST_DIR}/dimension_test.cpp
  ${CMAKE_CURRENT_LIST_DIR}/hatch_test.cpp
  ${CMAKE_CURRENT_LIST_DIR}/layout_faults_test.cpp
  ${CMAKE_CURRENT_LIST_DIR}/rich_text_test.cpp
  ${CMAKE_CURRENT_LIST_DIR}/sheet_test.cpp
  ${CMAKE_CURRENT_LIST_DIR}/spread_test.cpp)
target_include_directories(tillwright_draw_tests PRIVATE
  ${CMAKE_CURRENT_LIST_DIR}/.. ${CMAKE_CURRENT_LIST_DIR}/../../src)
target_link_libraries(tillwright_draw_tests PRIVATE
  tillwright_core tillwright_test_support tillwright_flags GTest::gmock_main)
gtest_discover_tests(tillwright_draw_tests DISCOVERY_MODE PRE_TEST TEST_PREFIX draw/)
