# Tests of story sticks and templates, measured with the font that is drawn, and read back from PDF
# files by other programs.
include(${CMAKE_CURRENT_LIST_DIR}/../support/support.cmake)
tillwright_add_tests(tillwright_stick_tests
  LINK tillwright_core tillwright_render tillwright_test_support PNG::PNG
  SOURCES
    ${CMAKE_CURRENT_LIST_DIR}/part_labels_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/stick_cases.cpp
    ${CMAKE_CURRENT_LIST_DIR}/stick_layout_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/stick_marks_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/stick_paper_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/stick_reading.cpp
    ${CMAKE_CURRENT_LIST_DIR}/stick_template_test.cpp
    ${CMAKE_CURRENT_LIST_DIR}/stick_texts.cpp
    ${CMAKE_CURRENT_LIST_DIR}/view_cases.cpp
    ${CMAKE_CURRENT_LIST_DIR}/../render/tools.cpp)
