# The views of a bank.
target_sources(tillwright_core PRIVATE
  ${CMAKE_CURRENT_LIST_DIR}/front_view.cpp)
