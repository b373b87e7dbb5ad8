# UTF-8, widths of characters, cases.
tillwright_layer(text
  USES diag
  SOURCES
    utf8.cpp
    utf8_width.cpp)
