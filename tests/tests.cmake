# Every test of the project. Each folder has a fragment of its own; a fragment adds one test program.
# The program builds without what only the tests need; the README's second command installs it.
find_package(GTest 1.12 QUIET CONFIG)
find_path(GLPK_INCLUDE glpk.h)
find_library(GLPK_LIBRARY glpk)
if(NOT GTest_FOUND OR NOT GLPK_INCLUDE OR NOT GLPK_LIBRARY)
  message(STATUS "No tests: libgtest-dev, libgmock-dev and libglpk-dev are needed for them")
  return()
endif()
include(GoogleTest)

# tillwright_add_tests(NAME LINK target… SOURCES file…): one GoogleTest program, found test by test
# when ctest runs.
function(tillwright_add_tests name)
  cmake_parse_arguments(PARSE_ARGV 1 arg "" "" "LINK;SOURCES")
  add_executable(${name} ${arg_SOURCES})
  target_include_directories(${name} PRIVATE ${PROJECT_SOURCE_DIR}/src ${PROJECT_SOURCE_DIR}/tests)
  target_link_libraries(${name} PRIVATE ${arg_LINK} GTest::gmock_main tillwright_flags)
  gtest_discover_tests(${name} DISCOVERY_MODE PRE_TEST TEST_PREFIX "${name}/"
    DISCOVERY_TIMEOUT 60 PROPERTIES TIMEOUT 600)
endfunction()

file(GLOB tillwright_test_fragments ${PROJECT_SOURCE_DIR}/tests/*/*_tests.cmake)
foreach(fragment ${tillwright_test_fragments})
  include(${fragment})
endforeach()
