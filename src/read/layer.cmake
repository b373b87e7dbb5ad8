# JSON to spec.
tillwright_layer(read
  USES spec
  HEADERS keys read
  SOURCES
    box_reader.cpp
    case_reader.cpp
    check_inputs.cpp
    json_reader.cpp
    json_scan.cpp
    keys.cpp
    layout_reader.cpp
    locate.cpp
    nearest.cpp
    object_reader.cpp
    read_spec.cpp
    stock_reader.cpp)
target_link_libraries(tillwright_read PRIVATE $<BUILD_INTERFACE:nlohmann_json::nlohmann_json>)
