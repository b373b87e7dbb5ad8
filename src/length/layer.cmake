# Exact lengths and their text.
tillwright_layer(length
  USES diag
  HEADERS length length_text rational
  SOURCES
    length_scan.cpp
    length_text.cpp
    rational.cpp)
