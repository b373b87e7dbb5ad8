tillwright_add_tests(tillwright_check_tests
  LINK tillwright_core
  SOURCES tests/check/bank_checks_test.cpp)
