// Fronts that are matched: which stand in one run, and how each is sawn in it.
#ifndef TILLWRIGHT_STOCK_FRONT_RUNS_H_
#define TILLWRIGHT_STOCK_FRONT_RUNS_H_

#include <vector>

#include "tillwright/parts.h"

namespace tillwright {

// The runs of a bank without their sizes.
[[nodiscard]] std::vector<FrontRun> MatchedFronts(const Bank& bank);

// Of each of Bank::parts: its line in the cut list.
[[nodiscard]] std::vector<std::size_t> LineOfParts(const Bank& bank,
                                                   const std::vector<CutLine>& lines);

// A front as it is sawn in a run: to its finished size along the run, where the piece has the
// allowance once (`spare`), and as rough as on its own the other way.
struct SawnInRun {
  Length length, width;
  Length spare;
};
[[nodiscard]] SawnInRun SawnIn(const FrontRun& run, const CutLine& line);

// The piece that fronts of a run, from one up to another, are cut from, as a SawnInRun whose spare
// is in its size. `line_of` is LineOfParts of the lines.
struct FrontStretch {
  std::size_t from = 0;
  std::size_t to = 0;
};
[[nodiscard]] SawnInRun PieceOf(const FrontRun& run, FrontStretch stretch,
                                const std::vector<CutLine>& lines,
                                const std::vector<std::size_t>& line_of, Length kerf);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_FRONT_RUNS_H_
