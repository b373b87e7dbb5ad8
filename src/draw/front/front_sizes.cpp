#include "draw/front/front_sizes.h"

#include <algorithm>
#include <array>

#include "draw/front/front_chains.h"
#include "draw/section/side_plane.h"
#include "sheet/annotation.h"
#include "sheet/dimension.h"
#include "sheet/view_tools.h"

namespace tillwright {
namespace {

constexpr double kMarkStrip = 9;  // mm between the piece and its dimensions, for the section's ends
constexpr double kColumnSpare = 14;  // mm, how far moved texts may go past the ends of a chain

class FrontSizes {
 public:
  FrontSizes(const View& view, const Bank& bank, const ViewOptions& options, bool has_unnumbered,
             const TextMetrics& metrics)
      : view_(view),
        bank_(bank),
        options_(options),
        metrics_(metrics),
        has_unnumbered_(has_unnumbered),
        mark_(ChooseSectionPlane(bank).x) {}

  void Draw(SheetGroup& group) {
    const PaperBox& box = view_.outline;
    DimensionStack left{.side = PaperSide::kLeft, .edge = box.left};
    AddTiers(left, Edge::kLeft);
    const PaperBox beside = AddDimensionStack(group, left, DimensionStyle(), metrics_);
    const PaperBox right = DrawRight(group);
    DimensionStack below{
        .side = PaperSide::kBelow,
        .edge = std::max({box.bottom + kMarkStrip, beside.bottom - 4, right.bottom - 4})};
    AddTiers(below, Edge::kBottom);
    AddStarts(below, box.bottom);
    AddDimensionStack(group, below, DimensionStyle(), metrics_);
    DrawAbove(group, std::min(beside.top, right.top));
    AddSectionMark(group,
                   {.first = {Map().X(mark_), box.top - 1.8},
                    .last = {Map().X(mark_), box.bottom + 1.8},
                    .sight = 180,
                    .letter = "A"},
                   metrics_);
  }

 private:
  const PaperMap& Map() const { return view_.map; }

  // Without gaps and overlaps where they find no room: no crowd beside small fronts.
  void AddTier(DimensionStack& stack, SizeChain chain) const {
    static constexpr std::array<std::string_view, 3> kLesser{"gap.", "reveal.", "overlap."};
    AddTierWithRoom(stack, std::move(chain), Map(), bank_.units,
                    {.lesser = kLesser, .whole = 0, .rest = kColumnSpare}, metrics_);
  }

  void AddTiers(DimensionStack& stack, Edge edge) const {
    if (options_.all_dimensions) AddTier(stack, FrontsAlong(bank_, edge));
    AddTier(stack, OpeningAlong(bank_, edge));
    AddTier(stack, CaseAlong(bank_, edge));
  }

  // Extension lines begin at the piece, but those near the section's ends below its strip.
  void AddStarts(DimensionStack& stack, double edge) const {
    const double mark = Map().X(mark_);
    for (const DimensionChain& tier : stack.tiers) {
      for (const double station : tier.stations) {
        const bool at_mark = station > mark - 9 && station < mark + 8;
        if (!at_mark) stack.starts.push_back({station, edge});
      }
    }
  }

  // The right column's own chain where it differs, else every height from one datum.
  PaperBox DrawRight(SheetGroup& group) const {
    if (!options_.all_dimensions) return EmptyBox();
    const SizeChain chain = FrontsAlong(bank_, Edge::kRight);
    if (chain.places == FrontsAlong(bank_, Edge::kLeft).places) {
      return options_.heights ? DrawHeights(group, chain) : EmptyBox();
    }
    DimensionStack right{.side = PaperSide::kRight, .edge = view_.outline.right};
    AddTier(right, chain);
    if (right.tiers.empty()) return EmptyBox();
    return AddDimensionStack(group, right, DimensionStyle(), metrics_);
  }

  // Where numbers do not fit the fronts they stand here instead: which front is which matters more.
  PaperBox DrawHeights(SheetGroup& group, const SizeChain& chain) const {
    if (has_unnumbered_) return DrawNumbers(group, chain);
    const std::string datum = bank_.casework ? "floor." : "";
    const Length below = bank_.casework ? bank_.casework->base : Length();
    OrdinateColumn column{.side = PaperSide::kRight,
                          .edge = view_.outline.right,
                          .heading = bank_.casework ? "FROM CASE BASE" : "FROM OPENING"};
    for (std::size_t i = chain.paths.size(); i-- > 0;) {
      const std::size_t dot = chain.paths[i].find(".front.height");
      if (dot == std::string::npos) continue;
      const std::string front = datum + chain.paths[i].substr(0, dot) + ".front.";
      for (const bool top : {true, false}) {
        const Length y = chain.places[top ? i + 1 : i];
        column.ordinates.push_back(
            {Map().Y(y), FormatLength(y + below, bank_.units), front + (top ? "top" : "y")});
      }
    }
    constexpr double kEach = 5.2;  // mm, of a stacked fraction and its clearance
    const double need = kEach * static_cast<double>(column.ordinates.size());
    if (need > view_.outline.Height() + kColumnSpare) return EmptyBox();
    return AddOrdinateColumn(group, column, DimensionStyle(), metrics_);
  }

  // Numbers of fronts beside them, so many as there is room for, the first and the last always.
  PaperBox DrawNumbers(SheetGroup& group, const SizeChain& chain) const {
    std::vector<Ordinate> all;
    for (std::size_t i = chain.paths.size(); i-- > 0;) {
      const std::size_t dot = chain.paths[i].find(".front.height");
      if (dot == std::string::npos) continue;
      const double middle = (Map().Y(chain.places[i]) + Map().Y(chain.places[i + 1])) / 2;
      all.push_back({middle, chain.paths[i].substr(0, dot), {}});
    }
    const DimensionStyle style{.cap_height = 1.8};
    const double room = std::max(1.0, view_.outline.Height() / (style.cap_height + 1.2));
    std::size_t step = 1;
    while (static_cast<double>(all.size()) / static_cast<double>(step) > room) {
      step = step == 1 ? 5 : 2 * step;
    }
    OrdinateColumn column{.side = PaperSide::kRight, .edge = view_.outline.right};
    for (std::size_t i = 0; i < all.size(); ++i) {
      const bool last = i + 1 == all.size();
      if (i == 0 || last || (i + 1) % step == 0) column.ordinates.push_back(all[i]);
    }
    return AddOrdinateColumn(group, column, style, metrics_);
  }

  // Above: where the pulls' holes are, and widths along the top that are not those below.
  void DrawAbove(SheetGroup& group, double top) const {
    if (!options_.all_dimensions) return;
    const double edge = std::min(view_.outline.top - kMarkStrip, top + 4);
    DimensionStack above{.side = PaperSide::kAbove, .edge = edge};
    AddTier(above, PullsAlong(bank_, Edge::kTop));
    const SizeChain chain = FrontsAlong(bank_, Edge::kTop);
    if (chain.places != FrontsAlong(bank_, Edge::kBottom).places) AddTier(above, chain);
    AddStarts(above, view_.outline.top);
    if (!above.tiers.empty()) AddDimensionStack(group, above, DimensionStyle(), metrics_);
  }

  const View& view_;
  const Bank& bank_;
  const ViewOptions& options_;
  const TextMetrics& metrics_;
  bool has_unnumbered_;
  Length mark_;  // x of the section's plane
};

}  // namespace

void AddFrontSizes(View& view, const Bank& bank, const ViewOptions& options, bool has_unnumbered,
                   const TextMetrics& metrics) {
  SheetGroup& group = AddViewGroup(view, "dimensions", "Sizes of the front elevation", 0);
  FrontSizes(view, bank, options, has_unnumbered, metrics).Draw(group);
}

}  // namespace tillwright
