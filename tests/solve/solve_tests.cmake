tillwright_add_tests(tillwright_solve_tests
  LINK tillwright_core ${GLPK_LIBRARY}
  SOURCES
    tests/solve/alike_test.cpp
    tests/solve/apportion_test.cpp
    tests/solve/box_test.cpp
    tests/solve/case_test.cpp
    tests/solve/layout_test.cpp
    tests/solve/least_deviation_test.cpp
    tests/solve/property_test.cpp
    tests/solve/published_test.cpp
    tests/solve/worktop_gap_test.cpp)
