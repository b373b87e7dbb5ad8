# tillwright_core: lengths, spec, solving, checks, drawing and text formats; no Cairo.
configure_file(src/cli/version.h.in ${PROJECT_BINARY_DIR}/include/tillwright/version.h @ONLY)

set(tillwright_headers
  bank check diagnostic draw gap_check keys length length_text nest parts rational read sheet
  solve spec stick stock stock_draw text_metrics trace words write)
list(TRANSFORM tillwright_headers PREPEND ${PROJECT_SOURCE_DIR}/include/tillwright/)
list(TRANSFORM tillwright_headers APPEND .h)

add_library(tillwright_core STATIC
  src/diag/diagnostic.cpp
  src/length/length_scan.cpp
  src/length/length_text.cpp
  src/length/rational.cpp
  src/nest/bounds.cpp
  src/nest/columns.cpp
  src/nest/completion.cpp
  src/nest/cover_bound.cpp
  src/nest/cover_lp.cpp
  src/nest/cuts.cpp
  src/nest/dive.cpp
  src/nest/exchange.cpp
  src/nest/fences.cpp
  src/nest/fitting.cpp
  src/nest/greedy.cpp
  src/nest/guillotine.cpp
  src/nest/knapsack.cpp
  src/nest/nest.cpp
  src/nest/offcuts.cpp
  src/nest/packing.cpp
  src/nest/refill.cpp
  src/nest/runs.cpp
  src/nest/search.cpp
  src/nest/searcher.cpp
  src/nest/tree.cpp
  src/nest/units.cpp
  src/nest/workbench.cpp
  src/spec/box_rules.cpp
  src/spec/mass.cpp
  src/spec/materials.cpp
  src/spec/species.cpp
  src/spec/words.cpp
  src/bank/bank.cpp
  src/bank/id_list.cpp
  src/bank/trace.cpp
  src/solve/apportion.cpp
  src/solve/case_pieces.cpp
  src/solve/gaps.cpp
  src/solve/layout_errors.cpp
  src/solve/parts.cpp
  src/solve/pulls.cpp
  src/solve/solve.cpp
  src/check/advice.cpp
  src/check/bank_checks.cpp
  src/check/case_checks.cpp
  src/check/chance.cpp
  src/check/change.cpp
  src/check/control.cpp
  src/check/drawer_checks.cpp
  src/check/figures.cpp
  src/check/finding_list.cpp
  src/check/fit_checks.cpp
  src/check/gap_check.cpp
  src/check/gap_findings.cpp
  src/check/given_layout.cpp
  src/check/movement_checks.cpp
  src/check/real_opening.cpp
  src/check/refit.cpp
  src/check/shims.cpp
  src/check/stack.cpp
  src/check/stack_text.cpp
  src/check/strength_checks.cpp
  src/check/tipping.cpp
  src/check/weights.cpp
  src/check/wood.cpp
  src/stock/board_choice.cpp
  src/stock/cut_list.cpp
  src/stock/front_runs.cpp
  src/stock/glue_up.cpp
  src/stock/layout_runs.cpp
  src/stock/hardware.cpp
  src/stock/hardware_rules.cpp
  src/stock/part_kinds.cpp
  src/stock/part_names.cpp
  src/stock/part_seats.cpp
  src/stock/part_shape.cpp
  src/stock/stock_parts.cpp
  src/stock/stock_plan.cpp
  src/read/box_reader.cpp
  src/read/case_reader.cpp
  src/read/check_inputs.cpp
  src/read/json_reader.cpp
  src/read/json_scan.cpp
  src/read/keys.cpp
  src/read/layout_reader.cpp
  src/read/locate.cpp
  src/read/nearest.cpp
  src/read/object_reader.cpp
  src/read/read_spec.cpp
  src/read/stock_reader.cpp
  src/write/bank_tables.cpp
  src/write/case_keys.cpp
  src/write/check_tables.cpp
  src/write/csv.cpp
  src/write/cut_notes.cpp
  src/write/diagnostics_text.cpp
  src/write/dxf.cpp
  src/write/finding_groups.cpp
  src/write/gap_keys.cpp
  src/write/html.cpp
  src/write/json_text.cpp
  src/write/packet.cpp
  src/write/page_text.cpp
  src/write/part_dxf.cpp
  src/write/parts_csv.cpp
  src/write/parts_json.cpp
  src/write/parts_table.cpp
  src/write/parts_text.cpp
  src/write/result_json.cpp
  src/write/result_tables.cpp
  src/write/schema.cpp
  src/write/stock_json.cpp
  src/write/stock_tables.cpp
  src/write/stock_text.cpp
  src/write/text_table.cpp
  src/write/utf8_width.cpp
  src/write/why_text.cpp
  src/write/work_steps.cpp)
add_library(tillwright::core ALIAS tillwright_core)
target_sources(tillwright_core PUBLIC
  FILE_SET HEADERS BASE_DIRS ${PROJECT_SOURCE_DIR}/include FILES ${tillwright_headers})
set_target_properties(tillwright_core PROPERTIES VERIFY_INTERFACE_HEADER_SETS ON)
target_include_directories(tillwright_core
  PUBLIC $<BUILD_INTERFACE:${PROJECT_BINARY_DIR}/include>
  PRIVATE ${PROJECT_SOURCE_DIR}/src)
target_link_libraries(tillwright_core
  PRIVATE $<BUILD_INTERFACE:nlohmann_json::nlohmann_json> $<BUILD_INTERFACE:Boost::headers>
          $<BUILD_INTERFACE:tillwright_flags> Threads::Threads)
# The search takes four square roots at once when errno need not be set.
set_source_files_properties(src/nest/refill.cpp src/nest/workbench.cpp
  PROPERTIES COMPILE_OPTIONS -fno-math-errno)
include(src/draw/toolkit.cmake)
include(src/draw/views.cmake)
include(src/draw/stick/stick.cmake)
include(src/render/render.cmake)

add_library(tillwright_app STATIC
  src/cli/app.cpp
  src/cli/check_command.cpp
  src/cli/draw_command.cpp
  src/cli/files.cpp
  src/cli/options.cpp
  src/cli/parts_command.cpp
  src/cli/program.cpp
  src/cli/shop_command.cpp
  src/cli/size_command.cpp
  src/cli/stick_command.cpp
  src/cli/stick_options.cpp
  src/cli/stock_command.cpp
  src/cli/why_command.cpp)
target_include_directories(tillwright_app PUBLIC ${PROJECT_SOURCE_DIR}/src)
target_link_libraries(tillwright_app
  PUBLIC tillwright_cairo PRIVATE CLI11::CLI11 tillwright_flags)

add_executable(tillwright_cli src/cli/main.cpp)
set_target_properties(tillwright_cli PROPERTIES OUTPUT_NAME tillwright)
target_link_libraries(tillwright_cli PRIVATE tillwright_app tillwright_flags)
