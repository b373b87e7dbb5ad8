#include "check/advice.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "check/change.h"
#include "check/control.h"
#include "check/gap_findings.h"
#include "check/given_layout.h"
#include "check/layout_index.h"
#include "spec/defaults.h"
#include "tillwright/solve.h"

namespace tillwright {
namespace {

using Key = SpecChange::Key;

constexpr int kRounds = 20;  // each changes one kind of thing, solves and looks again
constexpr Default kStep{Length::Inches(1, 64), defaults::TenthMm(1)};
// As truly as parts are cut and set by hand (common practice): finer is no advice.
constexpr Default kFinest{Length::Inches(1, 128), defaults::TenthMm(1)};
constexpr Default kRoomBetweenLimits{Length::Inches(1, 16), Length::Millimeters(2)};

// One attempt: the changed spec, solved and reckoned.
struct Attempt {
  Spec spec;
  Bank bank;
  GapCheck check;
};

class Adviser {
 public:
  Adviser(const Spec& spec, const Bank& bank)
      : spec_(spec), bank_(bank), index_(spec), step_(kStep.In(bank.units)) {}

  // The changes, or none when no set of them was found.
  std::vector<SpecChange> Run() {
    std::vector<SpecChange> solvable;
    for (round_ = 0; round_ < kRounds; ++round_) {
      if (!Try()) {
        // Sizes that are given leave no room for wider gaps.
        if (stays_) return {};
        stays_ = true;
        changes_ = solvable;
        if (!Try()) return {};
      }
      solvable = changes_;
      if (!Improve()) return Passes() ? std::move(changes_) : std::vector<SpecChange>();
    }
    return Try() && Passes() ? std::move(changes_) : std::vector<SpecChange>();
  }

 private:
  bool Try() {
    now_ = {};
    now_.spec = Applied(spec_, bank_, changes_);
    Outcome<Bank> solved = SolveBank(now_.spec);
    if (!solved.ok()) return false;
    now_.bank = std::move(solved.value());
    const RealOpening real(now_.spec, now_.bank);
    return ReckonGaps(now_.spec, now_.bank, real, now_.check);
  }

  bool Fails(const StackUp& stack) const {
    if (stack.is_overlap) return Uncovered(stack) > 0;
    const Envelope e = EnvelopeOf(now_.check, stack);
    return e.season || e.measured || e.taper || stack.nominal < now_.check.least ||
           (stack.greatest && stack.nominal > *stack.greatest);
  }

  // By how much an overlap comes short of covering the edge, at the likely worst; zero or less:
  // none.
  double Uncovered(const StackUp& stack) const {
    if (stack.nominal <= Length()) return 0;
    double low = ToMillimeters(stack.nominal) - stack.rss_mm;
    if (now_.check.has_season) low = std::min({low, stack.dry_mm, stack.humid_mm});
    if (now_.check.has_measured) low = std::min(low, stack.measured.Millimeters());
    return low > 0 ? 0 : -low + ToMillimeters(Length::Picometers(1));
  }

  bool Passes() const {
    const auto closes = [](const GivenLayout& layout) { return layout.left_over.IsZero(); };
    const auto fits = [](const MeasuredCell& cell) {
      return !cell.made || cell.box_width <= cell.fits;
    };
    return now_.check.least < now_.check.greatest &&
           std::ranges::none_of(now_.check.stacks, [&](const StackUp& s) { return Fails(s); }) &&
           std::ranges::all_of(GivenLayouts(now_.spec, now_.bank), closes) &&
           std::ranges::all_of(now_.check.cells, fits) && !TooDeep();
  }

  bool TooDeep() const {
    const Length depth = RealOpening(now_.spec, now_.bank).depth();
    return std::ranges::any_of(now_.bank.spaces, [&](const Space& space) {
      return space.HasBox() && space.box.z + space.slide.length + space.slide.behind > depth;
    });
  }

  // --- One round ---------------------------------------------------------------------------------

  // Adds or betters changes; false when there is nothing left to do.
  bool Improve() {
    if (now_.check.least >= now_.check.greatest) {
      return Change(Key::kGreatest, now_.check.least + kRoomBetweenLimits.In(bank_.units));
    }
    return Close() || Refit() || Boxes() || Shift();
  }

  bool Change(Key key, Length to, int space = -1) {
    SpecChange change;
    change.key = key;
    change.to = to;
    change.space = space;
    return Put(std::move(change));
  }

  bool Put(SpecChange change) {
    const auto same = [&](const SpecChange& other) {
      return other.key == change.key && other.node == change.node && other.edge == change.edge &&
             other.space == change.space;
    };
    std::erase_if(changes_, same);
    changes_.push_back(Named(spec_, bank_, std::move(change)));
    return true;
  }

  bool Close() {
    bool changed = false;
    for (const GivenLayout& layout : GivenLayouts(now_.spec, now_.bank)) {
      if (layout.left_over.IsZero() || layout.front < 0) continue;
      const Rect& r = now_.bank.spaces[static_cast<std::size_t>(layout.front)].front.rect;
      const Length to = (layout.rows ? r.height : r.width) + layout.left_over;
      if (to > Length()) changed = Change(Key::kExact, to, layout.front);
    }
    return changed;
  }

  // The opening and the fronts that are made, once, where something fails as measured.
  bool Refit() {
    const bool fails = std::ranges::any_of(now_.check.stacks, [&](const StackUp& stack) {
      const Envelope e = EnvelopeOf(now_.check, stack);
      return stack.is_overlap ? Uncovered(stack) > 0 : e.measured || e.taper;
    });
    if (refitted_ || !now_.check.has_measured || (!fails && !TooDeep())) return false;
    refitted_ = true;
    const RealOpening real(spec_, bank_);
    for (SpecChange& change : ChangesToRefit(spec_, bank_, real)) Put(std::move(change));
    return true;
  }

  bool Boxes() {
    bool changed = false;
    for (const MeasuredCell& cell : now_.check.cells) {
      if (cell.made && cell.box_width > cell.fits) {
        changed = Change(Key::kNotMeasured, Length(), cell.space);
      }
    }
    return changed;
  }

  // --- Gaps --------------------------------------------------------------------------------------

  struct Group {
    double least = -1e9, most = 1e9;                // mm that its value may be moved by
    double likely_least = -1e9, likely_most = 1e9;  // the same without the worst case
    bool fails = false;
    const StackUp* widest = nullptr;
    double width = -1;
  };

  bool Shift() {
    std::map<Control, Group> groups;
    for (const StackUp& stack : now_.check.stacks) {
      if (stack.is_overlap) {
        if (const double by = Uncovered(stack); by > 0) Cover(stack, by);
      } else {
        Take(stack, groups[Shared(ControlOf(index_, now_.bank, stack))]);
      }
    }
    bool changed = covered_;
    covered_ = false;
    for (const auto& [control, group] : groups) {
      if (group.fails) changed = Move(control, group) || changed;
    }
    return changed;
  }

  // The edges left and right of inset fronts are moved together, so that they stay in the middle.
  static Control Shared(Control control) {
    if (control.key == Key::kEdge && control.edge == Edge::kRight) control.edge = Edge::kLeft;
    return control;
  }

  void Take(const StackUp& stack, Group& group) const {
    const Envelope e = EnvelopeOf(now_.check, stack);
    const double least = ToMillimeters(now_.check.least);
    group.least = std::max(group.least, least - e.low);
    if (stack.greatest) {
      const double greatest = ToMillimeters(*stack.greatest);
      group.most = std::min(group.most, greatest - e.high);
      group.likely_most = std::min(group.likely_most, greatest - e.likely_high);
    }
    group.likely_least = std::max(group.likely_least, least - e.likely_low);
    group.fails = group.fails || Fails(stack);
    if (e.likely_high - e.likely_low > group.width) {
      group.width = e.likely_high - e.likely_low;
      group.widest = &stack;
    }
  }

  bool Move(const Control& control, const Group& group) {
    if (stays_ || round_ >= kRounds * 3 / 4) return Narrow(group, 0);
    const bool worst = group.least <= group.most;
    const double least = worst ? group.least : group.likely_least;
    const double most = worst ? group.most : group.likely_most;
    if (least > most) return Narrow(group, least - most);
    const Length now = ValueOf(control);
    const Length to = now + ShiftWithin(least, most);
    if (to < Length()) return Narrow(group, ToMillimeters(-to));
    if (to == now) return false;
    SpecChange change;
    change.key = control.key;
    change.node = control.node;
    change.edge = control.edge;
    change.to = control.key == Key::kOverlay ? -to : to;
    if (change.key == Key::kEdge && change.edge == Edge::kLeft) {
      SpecChange other = change;
      other.edge = Edge::kRight;
      other.to = ValueOf({Key::kEdge, {}, Edge::kRight}) + (to - now);
      if (other.to >= Length()) Put(std::move(other));
    }
    return Put(std::move(change));
  }

  // The least move into [least, most], in whole steps when there is one; after some rounds the
  // middle, since what the increments leave over moves too.
  Length ShiftWithin(double least, double most) const {
    const auto length = [](double mm) { return Length::Picometers(std::llround(mm * 1e9)); };
    if (round_ >= kRounds / 2) return length((least + most) / 2);
    if (least > 0) {
      const Length up = CeilTo(length(least), step_);
      return up <= length(most) ? up : length((least + most) / 2);
    }
    if (most < 0) {
      const Length down = FloorTo(length(most), step_);
      return down >= length(least) ? down : length((least + most) / 2);
    }
    return {};
  }

  Length ValueOf(const Control& control) const {
    const FrontsSpec& fronts = now_.spec.fronts;
    const auto edge = static_cast<std::size_t>(control.edge);
    if (control.key == Key::kOverlay) return -now_.bank.overlay[edge];  // under a worktop
    const auto or_default = [&](const Entry<Length>& entry, const Default& fallback) {
      return LengthOr(entry, fallback, bank_.units);
    };
    if (control.key == Key::kEdge) return or_default(fronts.edge[edge], defaults::kEdge);
    const Entry<Length>& own = LayoutIndex(now_.spec).At(control.node).gap;
    return or_default(own.typed ? own : fronts.gap, defaults::kGap);
  }

  void Cover(const StackUp& stack, double by) {
    const Overlap& overlap = now_.bank.overlaps[static_cast<std::size_t>(stack.index)];
    SpecChange change;
    change.key = Key::kOverlay;
    change.edge = overlap.edge;
    change.to = now_.bank.overlay[static_cast<std::size_t>(overlap.edge)] +
                CeilTo(Length::Picometers(std::llround(by * 1e9)), step_) + now_.bank.round;
    covered_ = Put(std::move(change));
  }

  // The gap varies by more than its limits are apart: make what moves it most move it less.
  bool Narrow(const Group& group, double excess) {
    const StackUp& stack = *group.widest;
    const double season = std::max({ToMillimeters(stack.nominal), stack.dry_mm, stack.humid_mm}) -
                          std::min({ToMillimeters(stack.nominal), stack.dry_mm, stack.humid_mm});
    const double tolerance = 2 * stack.rss_mm;
    if (season > 0 && season >= tolerance && !paneled_) return Steadier();
    const bool measured =
        now_.check.has_measured && (stack.measured != HalfLength::Of(stack.nominal));
    if (measured && DropMeasured(stack)) return true;
    if (tolerance > 0 && tightened_ < kRounds / 4) return Tighten();
    return Allow(group, excess);
  }

  // When nothing else is left: limits that what comes out keeps.
  bool Allow(const Group& group, double excess) {
    const auto steps = [&](double mm) {
      return CeilTo(Length::Picometers(std::llround(std::max(mm, 0.0) * 1e9)), step_);
    };
    if (stays_ && group.likely_least > 0) {
      return Change(Key::kLeast,
                    Max(Length(), now_.check.least - steps(group.likely_least) - step_));
    }
    return Change(Key::kGreatest,
                  now_.check.greatest + steps(std::max(excess, -group.likely_most)) + step_);
  }

  bool Steadier() {
    if (now_.spec.fronts.cut.value == SawnCut::kFlat) return Change(Key::kQuarterSawn, Length());
    paneled_ = true;
    return Change(Key::kPanel, Length());
  }

  // Fronts whose measured size no split can hold are to be cut anew.
  bool DropMeasured(const StackUp& stack) {
    bool dropped = false;
    for (const Contributor& c : stack.contributors) {
      if (c.kind == Contributor::Kind::kSize && !c.measured.IsZero()) {
        std::erase_if(changes_, [&](const SpecChange& change) {
          return change.key == Key::kExact && change.space == c.space;
        });
        dropped = Change(Key::kNotMeasured, Length(), c.space);
      }
    }
    return dropped;
  }

  bool Tighten() {
    ++tightened_;
    const auto halve = [&](Key key, Length now) {
      const Length finer = FloorTo(HalfBelow(now), kFinest.In(bank_.units));
      if (finer > Length()) Change(key, finer);
    };
    halve(Key::kCut, now_.check.cut);
    halve(Key::kPlace, now_.check.place);
    halve(Key::kOpening, now_.check.opening);
    return true;
  }

  const Spec& spec_;
  const Bank& bank_;
  LayoutIndex index_;
  Length step_;
  int round_ = 0;
  Attempt now_;
  std::vector<SpecChange> changes_;
  bool refitted_ = false, paneled_ = false, covered_ = false;
  bool stays_ = false;  // gaps cannot be moved
  int tightened_ = 0;
};

}  // namespace

void Advise(const Spec& spec, const Bank& bank, GapCheck& check) {
  const bool fails =
      HasFailure(check.findings) ||
      std::ranges::any_of(check.stacks,
                          [&](const StackUp& stack) {
                            return !stack.is_overlap &&
                                   (stack.nominal < check.least ||
                                    (stack.greatest && stack.nominal > *stack.greatest));
                          }) ||
      std::ranges::any_of(check.layouts,
                          [](const GivenLayout& layout) { return !layout.left_over.IsZero(); });
  if (!fails) return;
  check.advice = Adviser(spec, bank).Run();
  SayAdvice(spec, bank, check);
}

}  // namespace tillwright
