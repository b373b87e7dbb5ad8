# tests/bench/nest_bench FOLDER [--turn], in the build's folder: sheets, bounds and times over a folder
# of open instances. Needs no benchmark library.
add_executable(nest_bench tests/bench/nest_bench.cpp
  tests/nest/instances.cpp tests/nest/layout_check.cpp)
target_include_directories(nest_bench PRIVATE ${PROJECT_SOURCE_DIR}/tests)
target_link_libraries(nest_bench PRIVATE tillwright_core tillwright_flags)
set_target_properties(nest_bench PROPERTIES
  RUNTIME_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR}/tests/bench)
