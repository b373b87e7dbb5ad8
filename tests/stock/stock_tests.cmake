# Tests of the cut list and the hardware.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_stock_tests
  LINK tillwright_app tillwright_test_support nlohmann_json::nlohmann_json
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/assembly.cpp
    ${CMAKE_CURRENT_LIST_DIR}/assembly_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/cut_list_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/drawn_parts_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/dxf_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/front_runs_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/hardware_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/matched_stock_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/parts_csv_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/stock_plan_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/whole_case_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/../nest/layout_check.cpp)
