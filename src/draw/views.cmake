# The views of a bank, and the sheets they stand on.
target_sources(tillwright_core PRIVATE
  ${CMAKE_CURRENT_LIST_DIR}/dimension_paths.cpp
  ${CMAKE_CURRENT_LIST_DIR}/front_view.cpp
  ${CMAKE_CURRENT_LIST_DIR}/scale.cpp
  ${CMAKE_CURRENT_LIST_DIR}/view.cpp
  ${CMAKE_CURRENT_LIST_DIR}/plan_box.cpp
  ${CMAKE_CURRENT_LIST_DIR}/plan_dims.cpp
  ${CMAKE_CURRENT_LIST_DIR}/plan_faces.cpp
  ${CMAKE_CURRENT_LIST_DIR}/plan_ink.cpp
  ${CMAKE_CURRENT_LIST_DIR}/plan_view.cpp
  ${CMAKE_CURRENT_LIST_DIR}/plan_words.cpp)
