include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_check_tests
  LINK tillwright_core tillwright_test_support
  SOURCES
    tests/check/advice_test.cpp
    tests/check/bank_checks_test.cpp
    tests/check/box_movement_test.cpp
    tests/check/chance_test.cpp
    tests/check/given_layout_test.cpp
    tests/check/movement_checks_test.cpp
    tests/check/random_test.cpp
    tests/check/real_opening_test.cpp
    tests/check/refit_test.cpp
    tests/check/shims_test.cpp
    tests/check/stack_test.cpp
    tests/check/strength_checks_test.cpp
    tests/check/wood_test.cpp)
