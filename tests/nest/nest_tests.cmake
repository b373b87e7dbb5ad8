tillwright_add_tests(tillwright_nest_tests
  LINK tillwright_core tillwright_test_support
  SOURCES tests/nest/instances.cpp
          tests/nest/layout_check.cpp
          tests/nest/layout_check_test.cpp
          tests/nest/nest_test.cpp)
