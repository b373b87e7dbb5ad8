# The kernel of drawings: knows paper, no furniture.
tillwright_layer(sheet
  USES length text
  HEADERS paper sheet text_metrics
  SOURCES
    annotation.cpp
    axonometric.cpp
    dimension.cpp
    dimension_frame.cpp
    dimension_stack.cpp
    hatch.cpp
    hatch_clip.cpp
    rich_text.cpp
    rich_text_reader.cpp
    scale.cpp
    sheet.cpp
    sheet_packer.cpp
    single_dimension.cpp
    size_chain.cpp
    solid_ink.cpp
    spread.cpp
    text_metrics.cpp
    title_block.cpp
    view.cpp
    view_tools.cpp)
