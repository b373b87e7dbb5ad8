# The views of a bank, and the sheets they stand on.
target_sources(tillwright_core PRIVATE
  ${CMAKE_CURRENT_LIST_DIR}/dimension_paths.cpp
  ${CMAKE_CURRENT_LIST_DIR}/front_view.cpp
  ${CMAKE_CURRENT_LIST_DIR}/scale.cpp
  ${CMAKE_CURRENT_LIST_DIR}/view.cpp)
