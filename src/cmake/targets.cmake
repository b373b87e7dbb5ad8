# The layers in their order, then the libraries made of them and the program.
include(src/cmake/layers.cmake)
foreach(layer diag length text spec bank solve assembly check nest stock dimension sheet draw read write render)
  include(src/${layer}/layer.cmake)
endforeach()

# tillwright_core: all but what sees Cairo and what sees the disk.
configure_file(src/cli/version.h.in ${PROJECT_BINARY_DIR}/include/tillwright/version.h @ONLY)
add_library(tillwright_core INTERFACE)
add_library(tillwright::core ALIAS tillwright_core)
target_sources(tillwright_core INTERFACE
  FILE_SET HEADERS BASE_DIRS ${PROJECT_SOURCE_DIR}/include FILES ${tillwright_headers})
set_target_properties(tillwright_core PROPERTIES VERIFY_INTERFACE_HEADER_SETS ON)
target_include_directories(tillwright_core INTERFACE
  $<BUILD_INTERFACE:${PROJECT_BINARY_DIR}/include>)
target_link_libraries(tillwright_core INTERFACE tillwright_write)

add_library(tillwright_app STATIC
  src/cli/app.cpp
  src/cli/check_command.cpp
  src/cli/command_table.cpp
  src/cli/draw_command.cpp
  src/cli/files.cpp
  src/cli/interrupt.cpp
  src/cli/options.cpp
  src/cli/parts_command.cpp
  src/cli/program.cpp
  src/cli/shop_command.cpp
  src/cli/size_command.cpp
  src/cli/staging.cpp
  src/cli/stick_command.cpp
  src/cli/stick_options.cpp
  src/cli/stock_command.cpp
  src/cli/why_command.cpp)
target_include_directories(tillwright_app PUBLIC ${PROJECT_SOURCE_DIR}/src)
target_link_libraries(tillwright_app
  PUBLIC tillwright_core tillwright_render PRIVATE CLI11::CLI11 tillwright_flags)

add_executable(tillwright_cli src/cli/main.cpp)
set_target_properties(tillwright_cli PROPERTIES OUTPUT_NAME tillwright)
target_link_libraries(tillwright_cli PRIVATE tillwright_app tillwright_flags)
