# Helpers that several test programs share.
include_guard(GLOBAL)
add_library(tillwright_test_support STATIC
  ${CMAKE_CURRENT_LIST_DIR}/files.cpp ${CMAKE_CURRENT_LIST_DIR}/layout_faults.cpp
  ${CMAKE_CURRENT_LIST_DIR}/schema_walk.cpp)
target_include_directories(tillwright_test_support PUBLIC ${CMAKE_CURRENT_LIST_DIR}/..)
target_compile_definitions(tillwright_test_support
  PRIVATE TILLWRIGHT_SOURCE_DIR="${PROJECT_SOURCE_DIR}")
target_link_libraries(tillwright_test_support
  PUBLIC tillwright_core GTest::gtest nlohmann_json::nlohmann_json PRIVATE tillwright_flags)
