# Story sticks and templates at full scale.
target_sources(tillwright_core PRIVATE
  ${CMAKE_CURRENT_LIST_DIR}/axis_marks.cpp
  ${CMAKE_CURRENT_LIST_DIR}/depth_marks.cpp
  ${CMAKE_CURRENT_LIST_DIR}/draw_sticks.cpp
  ${CMAKE_CURRENT_LIST_DIR}/find_parts.cpp
  ${CMAKE_CURRENT_LIST_DIR}/height_marks.cpp
  ${CMAKE_CURRENT_LIST_DIR}/key.cpp
  ${CMAKE_CURRENT_LIST_DIR}/lines_across.cpp
  ${CMAKE_CURRENT_LIST_DIR}/make_sticks.cpp
  ${CMAKE_CURRENT_LIST_DIR}/mark_book.cpp
  ${CMAKE_CURRENT_LIST_DIR}/page.cpp
  ${CMAKE_CURRENT_LIST_DIR}/part_blocks.cpp
  ${CMAKE_CURRENT_LIST_DIR}/ruler.cpp
  ${CMAKE_CURRENT_LIST_DIR}/strip_draw.cpp
  ${CMAKE_CURRENT_LIST_DIR}/strip_plan.cpp
  ${CMAKE_CURRENT_LIST_DIR}/strip_text.cpp
  ${CMAKE_CURRENT_LIST_DIR}/template_tools.cpp
  ${CMAKE_CURRENT_LIST_DIR}/templates.cpp
  ${CMAKE_CURRENT_LIST_DIR}/width_marks.cpp)
