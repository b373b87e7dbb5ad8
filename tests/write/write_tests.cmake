# Tests of what is written: JSON, tables, diagnostics, why, the schema.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_write_tests
  LINK tillwright_test_support
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/diagnostics_text_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/json_text_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/packet_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/result_json_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/result_tables_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/schema_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/why_text_test.cpp)
