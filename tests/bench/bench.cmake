# Benchmarks (Google Benchmark). Never part of the tests: times depend on the machine.
find_package(benchmark REQUIRED)
add_executable(tillwright_bench
  tests/bench/check_bench.cpp tests/bench/draw_bench.cpp tests/bench/process_bench.cpp
  tests/bench/solve_bench.cpp)
target_include_directories(tillwright_bench PRIVATE ${PROJECT_SOURCE_DIR}/src)
target_link_libraries(tillwright_bench
  PRIVATE tillwright_core tillwright_render benchmark::benchmark_main tillwright_flags)
target_compile_definitions(tillwright_bench PRIVATE
  TILLWRIGHT_PROGRAM="$<TARGET_FILE:tillwright_cli>")
add_dependencies(tillwright_bench tillwright_cli)

# A program that links the same libraries and does nothing, to weigh start-up against.
add_executable(tillwright_start tests/bench/start.cpp)
target_link_libraries(tillwright_start PRIVATE tillwright_app)
