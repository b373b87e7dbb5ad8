// Edge callouts: the numbers of cuts that reach an edge of a layout, and the letters of strips too
// narrow for them, in rows beyond that edge, each joined to its place by a leader.
#ifndef TILLWRIGHT_DRAW_STOCK_EDGE_CALLOUTS_H_
#define TILLWRIGHT_DRAW_STOCK_EDGE_CALLOUTS_H_

#include <array>
#include <cstddef>
#include <string>
#include <vector>

#include "sheet/dimension.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

struct EdgeCallout {
  PaperSide side = PaperSide::kAbove;
  PaperPoint tip;          // on the cut or in the strip, at the edge
  std::size_t number = 0;  // of a cut; 0: a strip with this text
  std::string text{};
  int depth = 0;       // how many cuts deep it lies
  std::size_t id = 0;  // the caller's
};

class EdgeCallouts {
 public:
  // `outline` is what the rows stand beside.
  EdgeCallouts(const PaperBox& outline, const TextMetrics& metrics)
      : outline_(outline), metrics_(metrics) {}

  void Add(EdgeCallout callout) { callouts_.push_back(std::move(callout)); }

  // Takes back what the rows have no room for, the deepest first.
  [[nodiscard]] std::vector<EdgeCallout> TakeOverfull();

  void Draw(SheetGroup& numbers, SheetGroup& letters) const;

  // How far the row on a side reaches out, 0 when there is none.
  [[nodiscard]] double Reach(PaperSide side) const;
  // Whether the row is no longer than the outline.
  [[nodiscard]] bool IsWithin(PaperSide side) const;

 private:
  using Row = std::vector<const EdgeCallout*>;

  [[nodiscard]] Row RowOf(PaperSide side) const;
  [[nodiscard]] double WidthOf(const EdgeCallout& callout) const;
  [[nodiscard]] double Along(const EdgeCallout& callout) const;  // its size along the edge
  [[nodiscard]] double LengthOf(PaperSide side) const;           // of all callouts in a row
  [[nodiscard]] double EdgeLength(PaperSide side) const;
  [[nodiscard]] std::vector<double> PlacesOf(PaperSide side, const Row& row) const;
  void DrawOne(SheetGroup& out, const EdgeCallout& callout, double place) const;

  PaperBox outline_;
  const TextMetrics& metrics_;
  std::vector<EdgeCallout> callouts_;
};

inline constexpr std::array kPaperSides{PaperSide::kAbove, PaperSide::kBelow, PaperSide::kLeft,
                                        PaperSide::kRight};

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STOCK_EDGE_CALLOUTS_H_
