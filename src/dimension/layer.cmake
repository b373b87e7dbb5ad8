# Every dimension by its path.
tillwright_layer(dimension
  USES stock
  HEADERS dimensions
  SOURCES
    dimensions.cpp
    fields.cpp
    part_fields.cpp)
