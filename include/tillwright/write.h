// Writing results as text: JSON for programs, tables for the shop, and why a dimension is what it
// is.
#ifndef TILLWRIGHT_WRITE_H_
#define TILLWRIGHT_WRITE_H_

#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/check.h"
#include "tillwright/gap_check.h"
#include "tillwright/parts.h"
#include "tillwright/read.h"
#include "tillwright/stock.h"
#include "tillwright/trace.h"

namespace tillwright {

// The result as JSON, "tillwright-result/1" (specs/README.md lists its keys): lengths are decimals
// of a millimeter, exact to the picometer, under keys that end in _mm. Ends with a newline.
[[nodiscard]] std::string ResultJson(const Bank& bank, const std::vector<Finding>& findings);

// How text is dressed for the place it goes to.
struct TextStyle {
  bool color = false;  // only ever on a terminal that asks for it
};

// The result as tables in the maker's units, at most 100 columns wide.
[[nodiscard]] std::string ResultTables(const Bank& bank, const std::vector<Finding>& findings,
                                       TextStyle style);

// The same two for the gap check: the result as JSON with what the check adds to every gap and to
// the whole, and the gaps as tables. `findings` are those of CheckBank and of the gap check
// together.
[[nodiscard]] std::string CheckJson(const Spec& spec, const Bank& bank, const GapCheck& check,
                                    const std::vector<Finding>& findings);
[[nodiscard]] std::string CheckTables(const Spec& spec, const Bank& bank, const GapCheck& check,
                                      const std::vector<Finding>& findings, TextStyle style);

// Diagnostics as a compiler would show them: file:line:column, the line with a caret, a hint.
// `file` is the name as given; `text` the spec's text (empty when it could not be read).
[[nodiscard]] std::string DiagnosticsText(const Diagnostics& diagnostics, std::string_view file,
                                          std::string_view text, TextStyle style);
// The same as JSON: { "errors": [ … ] }.
[[nodiscard]] std::string DiagnosticsJson(const Diagnostics& diagnostics, std::string_view file,
                                          std::string_view text);

// The cut list and the hardware: as tables; as JSON, "tillwright-parts/1"; each as CSV (RFC 4180:
// UTF-8, CRLF, a header row; lengths as decimal millimeters and inches and as text with a unit
// mark, and no cell that a spreadsheet would take for a formula).
[[nodiscard]] std::string PartsText(const Bank& bank, const PartsLists& lists, TextStyle style);
[[nodiscard]] std::string PartsJson(const Bank& bank, const PartsLists& lists);
[[nodiscard]] std::string CutListCsv(const Bank& bank, const std::vector<CutLine>& lines);
[[nodiscard]] std::string HardwareCsv(const Bank& bank, const std::vector<HardwareLine>& lines);

// The sheet parts of a cut list for a router or laser: DXF R12, a file for every kind of part (and
// hand, and face that is cut into), 1 unit = 1 mm, as the part is sawn: finished size less its
// bands. Layers: OUTLINE, then one for each operation with its depth in its name (GROOVE_D6_35MM),
// HOLE for pulls (5 mm across), LABEL.
struct NamedText {
  std::string name;  // of a file
  std::string text;
};
[[nodiscard]] std::vector<NamedText> PartDxfFiles(const Bank& bank,
                                                  const std::vector<CutLine>& lines);

// What is bought, the layouts and their cuts: as tables; as JSON, "tillwright-stock/1".
[[nodiscard]] std::string StockText(const StockPlan& plan, TextStyle style);
[[nodiscard]] std::string StockJson(const StockPlan& plan);

// How the dimension `path` came about, down to lines of the spec and defaults. The path may carry
// the `_mm` of the result's keys. Empty when there is no such dimension (dimensions.h).
[[nodiscard]] std::string WhyText(const Bank& bank, Trace& trace, std::string_view path,
                                  std::string_view file, std::string_view text);
// The three dimensions whose paths are nearest to `path`, best first.
[[nodiscard]] std::vector<std::string> NearestPaths(const Bank& bank, std::string_view path);

// The JSON Schema (draft 2020-12) of the spec, and a starter spec that solves.
[[nodiscard]] std::string SpecSchema();
[[nodiscard]] std::string StarterSpec();

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_H_
