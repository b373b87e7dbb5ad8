# One construction rule a function.
tillwright_layer(solve
  USES bank
  HEADERS solve
  SOURCES
    alike.cpp
    apportion.cpp
    case_pieces.cpp
    gaps.cpp
    layout_errors.cpp
    parts.cpp
    solve.cpp)
target_link_libraries(tillwright_solve PRIVATE $<BUILD_INTERFACE:Boost::headers>)
