# Tests of the curated specs, their samples, the broken specs and the documents.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_samples_tests
  LINK tillwright_app tillwright_test_support
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/documents_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/invalid_specs_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/prose.cpp
    ${CMAKE_CURRENT_LIST_DIR}/repository.cpp
    ${CMAKE_CURRENT_LIST_DIR}/samples_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/wording_test.cpp)
