include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_nest_tests
  LINK tillwright_core tillwright_test_support ${GLPK_LIBRARY}
  SOURCES tests/nest/cover_bound_test.cpp
          tests/nest/exact_test.cpp
  SOURCES tests/nest/exact_test.cpp
          tests/nest/fences_test.cpp
          tests/nest/instances.cpp
          tests/nest/layout_check.cpp
          tests/nest/layout_check_test.cpp
          tests/nest/nest_test.cpp
          tests/nest/one_sheet_test.cpp
          tests/nest/runs_test.cpp)
