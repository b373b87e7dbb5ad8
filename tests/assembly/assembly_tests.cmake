# Tests of where pieces stand and what is cut into them.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_assembly_tests
  LINK tillwright_core tillwright_test_support
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/pieces_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/plane_cut_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/solids_test.cpp)
