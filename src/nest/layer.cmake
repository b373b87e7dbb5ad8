# Parts laid out on sheets and boards; knows nothing of drawers.
tillwright_layer(nest
  USES length
  HEADERS nest
  SOURCES
    bounds.cpp
    columns.cpp
    completion.cpp
    cover_bound.cpp
    cover_lp.cpp
    cuts.cpp
    dive.cpp
    exchange.cpp
    fences.cpp
    fitting.cpp
    greedy.cpp
    guillotine.cpp
    knapsack.cpp
    nest.cpp
    offcuts.cpp
    packing.cpp
    refill.cpp
    runs.cpp
    search.cpp
    searcher.cpp
    tree.cpp
    units.cpp
    workbench.cpp)
target_link_libraries(tillwright_nest PRIVATE Threads::Threads)
# The search takes four square roots at once when errno need not be set.
set_source_files_properties(src/nest/refill.cpp src/nest/workbench.cpp
  PROPERTIES COMPILE_OPTIONS -fno-math-errno)
