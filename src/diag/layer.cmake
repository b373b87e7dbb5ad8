# What every layer above may say: diagnostics and outcomes.
tillwright_layer(diag
  HEADERS diagnostic
  SOURCES
    diagnostic.cpp)
