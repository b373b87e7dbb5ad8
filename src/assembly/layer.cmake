# Where each piece stands, and what is cut into it.
tillwright_layer(assembly
  USES bank
  HEADERS assembly
  SOURCES
    assemble.cpp
    cut_places.cpp
    part_places.cpp
    plane_cut.cpp
    seats.cpp
    solid.cpp)
