# tillwright_layer(NAME [USES layer…] [HEADERS public header…] SOURCES file…)
#
# One static library a layer. A layer's own headers and its public ones are found only through a
# folder of links that belongs to its target, so that an include of a layer that is not used does not
# compile, and a call of one does not link. HEADERS are names of include/tillwright/ without ".h".
set(tillwright_headers)
set(tillwright_layers)

macro(tillwright_layer name)
  cmake_parse_arguments(layer "" "" "USES;HEADERS;SOURCES" ${ARGN})
  list(TRANSFORM layer_SOURCES PREPEND ${PROJECT_SOURCE_DIR}/src/${name}/)
  add_library(tillwright_${name} STATIC ${layer_SOURCES})
  set(layer_rooms ${PROJECT_BINARY_DIR}/layers/${name})
  file(MAKE_DIRECTORY ${layer_rooms}/tillwright)
  file(CREATE_LINK ${PROJECT_SOURCE_DIR}/src/${name} ${layer_rooms}/${name} SYMBOLIC)
  foreach(header IN LISTS layer_HEADERS)
    set(header_file ${PROJECT_SOURCE_DIR}/include/tillwright/${header}.h)
    file(CREATE_LINK ${header_file} ${layer_rooms}/tillwright/${header}.h SYMBOLIC)
    list(APPEND tillwright_headers ${header_file})
  endforeach()
  target_include_directories(tillwright_${name} PUBLIC $<BUILD_INTERFACE:${layer_rooms}>)
  list(TRANSFORM layer_USES PREPEND tillwright_ OUTPUT_VARIABLE layer_uses)
  target_link_libraries(tillwright_${name}
    PUBLIC ${layer_uses} PRIVATE $<BUILD_INTERFACE:tillwright_flags>)
  list(APPEND tillwright_layers ${name})
endmacro()
