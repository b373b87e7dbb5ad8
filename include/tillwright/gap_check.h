// The gap check: will these fronts go in with even gaps, in this opening, cut with these tools, all
// year round? And, when something was measured: what to cut now, and which shim goes where?
//
// Every gap, and every overlap of overlay fronts, is one StackUp: a signed list of contributors.
// The planned size, the worst case, the root-sum-square, the size in the dry and the humid season
// and the size as measured are all sums over that one list; there is no second formula for any of
// them.
//
// Lengths are exact; what a coefficient of a half makes of them is exact too (HalfLength).
// Moisture, movement of wood and chances are doubles, in %, mm and from 0 to 1: they are estimates.
#ifndef TILLWRIGHT_GAP_CHECK_H_
#define TILLWRIGHT_GAP_CHECK_H_

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/check.h"
#include "tillwright/spec.h"

namespace tillwright {

// A length that may end in half a picometer: a count of halves.
struct HalfLength {
  std::int64_t halves = 0;

  [[nodiscard]] static constexpr HalfLength Of(Length length) {
    return {(2 * length).picometers()};
  }
  // The whole picometers, rounded down.
  [[nodiscard]] constexpr Length Below() const { return HalfBelow(Length::Picometers(halves)); }
  [[nodiscard]] constexpr double Millimeters() const {
    return static_cast<double>(halves) / (2.0 * static_cast<double>(Length::kPerMillimeter));
  }
  friend constexpr auto operator<=>(const HalfLength&, const HalfLength&) = default;
  friend constexpr HalfLength operator+(HalfLength a, HalfLength b) {
    return {a.halves + b.halves};
  }
  friend constexpr HalfLength operator-(HalfLength a, HalfLength b) {
    return {a.halves - b.halves};
  }
};

// One thing that a gap depends on.
struct Contributor {
  enum class Kind : std::uint8_t {
    kOpening,  // the span between two fixed edges
    kEdge,     // where the lower or left fixed edge lies, when that is a member
    kSpacer,   // what a gap is set with
    kSize,     // a front's height or width
    kPlace,    // where a front's center line is set
    kMovement  // how a front swells and shrinks where it is held
  } kind = Kind::kSpacer;
  int space = -1;  // index into Bank::spaces: kSize, kPlace, kMovement
  GapEnd edge;     // kOpening and kEdge: the upper or right, lower or left fixed edge
  int halves = 2;  // the coefficient, in halves: 2 is +1, -1 is -1/2
  HalfLength nominal;
  Length tolerance;  // plus or minus
  double dry = 0;    // change of size in the dry season, mm
  double humid = 0;  // and in the humid one
  Length measured;   // how far the thing measured is from the plan
};

struct Shim {
  int spacer = 0;  // index into Spec::spacers
  int count = 0;
};

// How the pieces on hand come nearest to a wanted gap.
struct ShimSet {
  std::vector<Shim> pieces;  // in the spec's order; empty when none at all is nearest
  Length error;              // their sum less the wanted gap
};

// A gap or an overlap, and all that is known of it.
struct StackUp {
  bool is_overlap = false;
  int index = 0;  // into Bank::gaps or Bank::overlaps
  Axis axis = Axis::kY;
  std::vector<Contributor> contributors;

  Length nominal;
  HalfLength spread;  // the worst case is nominal -/+ this
  double rss_mm = 0;  // root-sum-square, half of its range
  double dry_mm = 0;  // size in each season; as planned without one
  double humid_mm = 0;
  HalfLength measured;           // size as measured; as planned when nothing was measured
  double least_to_leave_mm = 0;  // made today, this gap still keeps the least in the humid season
  Length taper;  // at the opening or a worktop: how much wider at the upper or right end
  std::optional<Length> greatest;  // its limit; none where the edge of a member shows in the gap
  std::optional<ShimSet> shims;  // when spacers are on hand; gaps only
  Level verdict = Level::kPass;
};

// One drawer in the opening as measured.
struct MeasuredCell {
  int space = 0;
  Length width;                  // the least over the cell's own height
  Length box_width;              // the box to make for it; as measured when it is made already
  bool made = false;             // that is a measured box
  Length fits;                   // the widest box that goes in
  Length shim_left, shim_right;  // behind each slide; side-mount and undermount
};

// Fronts of one node whose sizes are all given, and what gaps they leave.
struct GivenLayout {
  Length left_over;  // negative: too long together
  bool rows = true;
  int first = 0, last = 0;  // indices into Bank::spaces: the fronts at the ends, top or left first
  int gap_count = 0;  // gaps that can take a share: between the fronts, when inset at the ends
  Length gap;         // each of them as planned
  Length spread_gap;  // each with the fronts spread evenly, rounded down to a picometer
  // With the last front where the plan has its outer edge (rows: the bottom one), what is left at
  // the other end: the gap there, or for overlay fronts the overlap.
  Length flush_end;
  int front = -1;  // the largest front: to change it by `left_over` changes least to see
};

// One change of the spec that an advice asks for, to be applied as it stands.
struct SpecChange {
  enum class Key : std::uint8_t {
    kGap,           // the gap of the node at `node`
    kEdge,          // fronts.edge of one edge
    kOverlay,       // fronts.overlay of one edge, as a length
    kCut,           // tolerance.cut
    kPlace,         // tolerance.place
    kOpening,       // tolerance.opening
    kQuarterSawn,   // fronts.cut: "quarter"
    kPanel,         // the material of every front: a panel
    kOpeningWidth,  // opening.width, or the case's by as much
    kOpeningHeight,
    kOpeningDepth,
    kExact,        // the exact size of one front along its split
    kNotMeasured,  // what was measured of one front and box is dropped: they are made anew
    kLeast,        // limits.least
    kGreatest      // limits.greatest
  } key = Key::kGap;
  std::vector<int> node;  // kGap: from the layout's root, child by child
  Edge edge = Edge::kTop;
  int space = -1;    // kExact, kNotMeasured: index into Bank::spaces
  Length to;         // the new length
  std::string text;  // what it says in the spec, such as "fronts.edge.top: 5/32 in"
};

// What is to be cut now that something is made and held, against the plan.
struct Refit {
  struct Change {
    std::string path;  // "D2.front.height", as `why` names it
    Length planned, now;
  };
  std::vector<Change> changes;
  std::vector<std::string> unmet;  // what can no longer be met, in words
  bool solved = false;
};

struct GapCheck {
  Length cut, place, opening;  // the tolerances used
  Setting setting = Setting::kSpaced;
  Length least, greatest;  // the limits used
  bool has_season = false;
  double made = 0, dry = 0, humid = 0;  // moisture, %
  bool has_measured = false;
  std::vector<StackUp> stacks;  // the bank's gaps in their order, then its overlaps
  double chance = 1;            // that all gaps keep their limits
  double chance_error = 0;      // standard error of that; zero: exact
  int chance_samples = 0;       // zero: exact
  std::optional<Length> lean;   // when both diagonals were measured
  std::vector<MeasuredCell> cells;
  std::vector<GivenLayout> layouts;
  std::optional<Refit> refit;
  std::vector<SpecChange> advice;  // all together make every failing verdict pass
  std::vector<Finding> findings;   // beside those of CheckBank
};

// Reckons all of it. Fails, with diagnostics, only when the stacks hold more contributors together
// than can be kept (a front over very many columns). Measured parts that are not there are passed
// over; ReadSpec refuses them.
[[nodiscard]] Outcome<GapCheck> CheckGaps(const Spec& spec, const Bank& bank);

// The value of a stack-up's list as planned, or with every part as measured.
[[nodiscard]] HalfLength PlannedValue(const std::vector<Contributor>& list);
[[nodiscard]] HalfLength MeasuredValue(const std::vector<Contributor>& list);
// And as planned, after the season's movement, mm.
[[nodiscard]] double DryValue(const std::vector<Contributor>& list);
[[nodiscard]] double HumidValue(const std::vector<Contributor>& list);

// "D2.front.height", "opening.height", "spacer", "D2.place", "H1".
[[nodiscard]] std::string ContributorName(const Bank& bank, const StackUp& stack,
                                          const Contributor& contributor);
// The contributors that move a gap most, greatest first; at most `count`.
[[nodiscard]] std::vector<const Contributor*> Biggest(const StackUp& stack, std::size_t count);
// "D2 to D1", "D1 top".
[[nodiscard]] std::string SubjectOf(const Bank& bank, const StackUp& stack);

// The fronts in the order they are hung: from the bottom up, then from the left; indices into
// Bank::spaces.
[[nodiscard]] std::vector<int> HangingOrder(const Bank& bank);

// The spec with the changes made. REQUIRES: `bank` is what the spec gives.
[[nodiscard]] Spec Applied(const Spec& spec, const Bank& bank,
                           const std::vector<SpecChange>& changes);

}  // namespace tillwright

#endif  // TILLWRIGHT_GAP_CHECK_H_
