# The layers of the source, and the direction of their includes.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_layers_tests
  LINK tillwright_test_support
  SOURCES ${CMAKE_CURRENT_LIST_DIR}/house_test.cpp
          ${CMAKE_CURRENT_LIST_DIR}/layers_test.cpp
          ${CMAKE_CURRENT_LIST_DIR}/names_test.cpp
          ${CMAKE_CURRENT_LIST_DIR}/source_text.cpp)
