# Results to JSON, tables, pages, DXF.
tillwright_layer(write
  USES draw read
  HEADERS write
  SOURCES
    bank_tables.cpp
    case_keys.cpp
    check_tables.cpp
    csv.cpp
    cut_notes.cpp
    diagnostics_text.cpp
    dxf.cpp
    finding_groups.cpp
    gap_keys.cpp
    html.cpp
    json_text.cpp
    packet.cpp
    page_text.cpp
    part_dxf.cpp
    parts_csv.cpp
    parts_json.cpp
    parts_table.cpp
    parts_text.cpp
    result_json.cpp
    result_tables.cpp
    schema.cpp
    stock_json.cpp
    stock_tables.cpp
    stock_text.cpp
    text_table.cpp
    why_text.cpp
    work_steps.cpp)
target_link_libraries(tillwright_write PRIVATE $<BUILD_INTERFACE:nlohmann_json::nlohmann_json>)
