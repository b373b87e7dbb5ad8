include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_check_tests
  LINK tillwright_test_support
  SOURCES
    tests/check/bank_checks_test.cpp
    tests/check/strength_checks_test.cpp)
