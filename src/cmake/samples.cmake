# Targets that remake what the program gives for the curated specs; tests/samples holds the files to
# it. "samples" makes all, "sample_texts" and "sample_drawings" their share.
set(tillwright_samples_root ${CMAKE_CURRENT_LIST_DIR}/../..)
file(STRINGS ${CMAKE_CURRENT_LIST_DIR}/sample_commands.txt tillwright_sample_lines REGEX "^[a-z]")
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS
  ${CMAKE_CURRENT_LIST_DIR}/sample_commands.txt)
file(GLOB tillwright_sample_specs CONFIGURE_DEPENDS
  RELATIVE ${tillwright_samples_root} ${tillwright_samples_root}/specs/*.json)
list(REMOVE_ITEM tillwright_sample_specs specs/schema.json)

set(tillwright_text_commands COMMAND tillwright_cli schema -o specs/schema.json)
set(tillwright_draw_commands)
foreach(spec IN LISTS tillwright_sample_specs)
  cmake_path(GET spec STEM name)
  foreach(line IN LISTS tillwright_sample_lines)
    string(REPLACE "{spec}" "${spec}" command "${line}")
    string(REPLACE "{name}" "${name}" command "${command}")
    separate_arguments(command UNIX_COMMAND "${command}")
    if(line MATCHES "^(draw|stick) ")
      list(APPEND tillwright_draw_commands COMMAND tillwright_cli ${command})
    else()
      list(APPEND tillwright_text_commands COMMAND tillwright_cli ${command})
    endif()
  endforeach()
endforeach()

add_custom_target(sample_texts ${tillwright_text_commands}
  WORKING_DIRECTORY ${tillwright_samples_root} VERBATIM)
add_custom_target(sample_drawings ${tillwright_draw_commands}
  WORKING_DIRECTORY ${tillwright_samples_root} VERBATIM)
add_custom_target(samples)
add_dependencies(samples sample_texts sample_drawings)
