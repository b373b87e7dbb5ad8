# Fuzzers. Always built with a main that replays corpus/ and regressions/ as ordinary tests; with
# TILLWRIGHT_FUZZ=ON and clang also as libFuzzer programs:
#
#   cmake -S . -B build-fuzz -G Ninja -DCMAKE_CXX_COMPILER=clang++ -DTILLWRIGHT_FUZZ=ON
#     -DTILLWRIGHT_SANITIZE=address,undefined -DCMAKE_BUILD_TYPE=RelWithDebInfo
#   build-fuzz/tillwright_spec_fuzz -max_total_time=60 -timeout=10
#     -dict=tests/fuzz/spec.dict new-inputs tests/fuzz/corpus/spec specs
set(tillwright_fuzz_folder ${CMAKE_CURRENT_LIST_DIR})

# What is fuzzed must itself be built to count what it covers: libFuzzer is blind otherwise.
if(TILLWRIGHT_FUZZ)
  foreach(target tillwright_core tillwright_app)
    target_compile_options(${target} PRIVATE -fsanitize=fuzzer-no-link)
  endforeach()
endif()

function(tillwright_add_fuzzer name)
  cmake_parse_arguments(PARSE_ARGV 1 arg "" "" "LINK;FOLDERS")
  set(entry ${tillwright_fuzz_folder}/${name}_fuzz.cpp)
  add_library(tillwright_${name}_fuzz_entry OBJECT ${entry})
  target_include_directories(tillwright_${name}_fuzz_entry PRIVATE
    ${PROJECT_SOURCE_DIR}/src ${PROJECT_SOURCE_DIR}/tests)
  target_link_libraries(tillwright_${name}_fuzz_entry PRIVATE
    ${arg_LINK} nlohmann_json::nlohmann_json tillwright_flags)
  add_executable(tillwright_${name}_replay ${tillwright_fuzz_folder}/replay.cpp)
  target_link_libraries(tillwright_${name}_replay PRIVATE
    tillwright_${name}_fuzz_entry ${arg_LINK} tillwright_flags)
  add_test(NAME fuzz/${name} COMMAND tillwright_${name}_replay
    ${tillwright_fuzz_folder}/corpus/${name} ${tillwright_fuzz_folder}/regressions/${name}
    ${arg_FOLDERS})
  set_tests_properties(fuzz/${name} PROPERTIES TIMEOUT 300)
  if(TILLWRIGHT_FUZZ)
    target_compile_options(tillwright_${name}_fuzz_entry PRIVATE -fsanitize=fuzzer-no-link)
    add_executable(tillwright_${name}_fuzz)
    target_link_libraries(tillwright_${name}_fuzz PRIVATE
      tillwright_${name}_fuzz_entry ${arg_LINK} tillwright_flags)
    target_link_options(tillwright_${name}_fuzz PRIVATE -fsanitize=fuzzer)
  endif()
endfunction()

tillwright_add_fuzzer(length LINK tillwright_core)
tillwright_add_fuzzer(spec LINK tillwright_core
  FOLDERS ${PROJECT_SOURCE_DIR}/specs ${PROJECT_SOURCE_DIR}/specs/invalid)
tillwright_add_fuzzer(arguments LINK tillwright_app)
