# The maker's spec as plain data; the tables of kinds.
tillwright_layer(spec
  USES length
  HEADERS spec words
  SOURCES
    box_rules.cpp
    mass.cpp
    materials.cpp
    moisture.cpp
    species.cpp
    trade_sizes.cpp
    words.cpp)
