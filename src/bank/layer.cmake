# The solved job as plain data.
tillwright_layer(bank
  USES spec
  HEADERS bank trace
  SOURCES
    bands.cpp
    bank.cpp
    id_list.cpp
    trace.cpp)
