# The drawing toolkit: sheets, text, hatch, dimensions, title blocks, layout faults.
target_sources(tillwright_core PRIVATE
  ${CMAKE_CURRENT_LIST_DIR}/annotation.cpp
  ${CMAKE_CURRENT_LIST_DIR}/dimension.cpp
  ${CMAKE_CURRENT_LIST_DIR}/dimension_frame.cpp
  ${CMAKE_CURRENT_LIST_DIR}/dimension_stack.cpp
  ${CMAKE_CURRENT_LIST_DIR}/hatch.cpp
  ${CMAKE_CURRENT_LIST_DIR}/hatch_clip.cpp
  ${CMAKE_CURRENT_LIST_DIR}/layout_faults.cpp
  ${CMAKE_CURRENT_LIST_DIR}/rich_text.cpp
  ${CMAKE_CURRENT_LIST_DIR}/rich_text_reader.cpp
  ${CMAKE_CURRENT_LIST_DIR}/sheet.cpp
  ${CMAKE_CURRENT_LIST_DIR}/single_dimension.cpp
  ${CMAKE_CURRENT_LIST_DIR}/spread.cpp
  ${CMAKE_CURRENT_LIST_DIR}/text_metrics.cpp
  ${CMAKE_CURRENT_LIST_DIR}/title_block.cpp
  ${CMAKE_CURRENT_LIST_DIR}/utf8.cpp)
