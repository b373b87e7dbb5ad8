# Cut list, hardware, what to buy.
tillwright_layer(stock
  USES check nest
  HEADERS parts stock
  SOURCES
    board_choice.cpp
    cut_list.cpp
    front_runs.cpp
    glue_up.cpp
    hardware.cpp
    hardware_rules.cpp
    layout_runs.cpp
    part_kinds.cpp
    part_names.cpp
    part_seats.cpp
    part_shape.cpp
    stock_parts.cpp
    stock_plan.cpp)
