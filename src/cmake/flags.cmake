# Warnings and sanitizers, in one interface target that every target of ours links.
add_library(tillwright_flags INTERFACE)
set(tillwright_warnings
  -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wsign-conversion -Wold-style-cast
  -Woverloaded-virtual -Wnon-virtual-dtor -Wcast-qual -Wcast-align -Wnull-dereference
  -Wdouble-promotion -Wformat=2 -Wundef -Wfloat-equal -Wswitch-enum -Wmissing-declarations)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  list(APPEND tillwright_warnings
    -Wduplicated-cond -Wduplicated-branches -Wlogical-op -Wuseless-cast)
endif()
# GCC 12's optimizer warns of faults that are not there (-Wrestrict on strings, -Wmaybe-uninitialized
# on variants, the others on growing vectors); GCC 13 does not.
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
  list(APPEND tillwright_warnings -Wno-restrict -Wno-maybe-uninitialized -Wno-null-dereference
    -Wno-array-bounds -Wno-stringop-overflow)
endif()
# No fused multiply-add: the same numbers on every machine.
target_compile_options(tillwright_flags INTERFACE ${tillwright_warnings} -ffp-contract=off)
target_compile_definitions(tillwright_flags INTERFACE _GLIBCXX_ASSERTIONS)
if(TILLWRIGHT_WERROR)
  target_compile_options(tillwright_flags INTERFACE -Werror)
endif()
if(TILLWRIGHT_SANITIZE)
  set(tillwright_sanitizers
    -fsanitize=${TILLWRIGHT_SANITIZE} -fno-sanitize-recover=all -fno-omit-frame-pointer)
  target_compile_options(tillwright_flags INTERFACE ${tillwright_sanitizers})
  target_link_options(tillwright_flags INTERFACE ${tillwright_sanitizers})
endif()
