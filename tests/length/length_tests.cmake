# Tests of lengths and ratios, and of their text.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_length_tests
  LINK tillwright_test_support
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/length_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/length_text_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/rational_test.cpp)
