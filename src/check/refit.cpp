#include "check/refit.h"

#include <algorithm>

#include "check/change.h"
#include "check/layout_index.h"
#include "check/measured_parts.h"
#include "spec/defaults.h"
#include "spec/kinds.h"
#include "tillwright/solve.h"

namespace tillwright {
namespace {

// The width of box that fills a clear width, before it is brought to the shop increment.
Length TargetWidth(const Space& space, Length clear_width) {
  const Slide& slide = space.slide;
  if (Facts(slide.type).width == WidthRule::kInside) {
    return clear_width - slide.deduct + 2 * space.box.build.side;
  }
  return clear_width - 2 * slide.clearance;
}

// What is left over beside a box, shared by the shims behind its slides.
void Pack(Length left_over, MeasuredCell& cell) {
  cell.shim_left = HalfBelow(left_over);
  cell.shim_right = HalfAbove(left_over);
}

MeasuredCell CellOf(const MeasuredParts& boxes, const Bank& bank, const RealOpening& real,
                    int index) {
  const Space& space = bank.spaces[static_cast<std::size_t>(index)];
  const Rect& cell = space.cell;
  // The left side is the datum: what the opening is off by falls to the cells at its right side.
  const bool at_right = cell.Right() == bank.opening_width;
  const auto width = [&](Length real_width) {
    return at_right ? cell.width + real_width - bank.opening_width : cell.width;
  };
  MeasuredCell out;
  out.space = index;
  out.width = width(real.LeastWidth(cell.y, cell.Top()));
  const MeasuredPart* made = boxes.Of(space);
  const bool has_width = made != nullptr && made->width.typed;
  out.made = has_width;
  out.fits = TargetWidth(space, out.width);
  out.box_width = has_width ? made->width.value : BoxWidthIn(bank, space, out.width);
  if (Facts(space.slide.type).screwed) {
    const Length left_over =
        TargetWidth(space, width(real.WidthAt(space.slide.line_y))) - out.box_width;
    Pack(left_over, out);
  }
  return out;
}

// Boxes of one make under one node that asks for boxes alike, and that are still to be made, are
// all made as narrow as the narrowest; shims take up the rest.
class Alike {
 public:
  Alike(const Bank& bank, std::vector<MeasuredCell>& cells) : bank_(bank), cells_(cells) {}

  // Goes through the tree in reading order; `space` is the next leaf's index.
  void Walk(const LayoutNode& node, int& space) {
    std::vector<int> drawers;
    for (const LayoutNode& child : node.children) {
      if (IsSplit(child.kind)) {
        Walk(child, space);
        continue;
      }
      if (child.kind == NodeKind::kDrawer && !child.size.exact.typed) drawers.push_back(space);
      ++space;
    }
    if (!node.graduate.alike.value) return;
    while (!drawers.empty()) Level(TakeKin(drawers));
  }

 private:
  const Space& At(int space) const { return bank_.spaces[static_cast<std::size_t>(space)]; }

  bool IsKin(int a, int b) const {
    return At(a).box.build == At(b).box.build && At(a).slide.type == At(b).slide.type &&
           At(a).box.width == At(b).box.width;
  }

  // The first of them and those of its make, taken out of the list.
  std::vector<MeasuredCell*> TakeKin(std::vector<int>& drawers) const {
    const int first = drawers.front();
    std::vector<MeasuredCell*> kin;
    for (MeasuredCell& cell : cells_) {
      const bool here = std::ranges::find(drawers, cell.space) != drawers.end();
      if (here && !cell.made && IsKin(first, cell.space)) kin.push_back(&cell);
    }
    std::erase_if(drawers, [&](int other) { return other == first || IsKin(first, other); });
    return kin;
  }

  void Level(const std::vector<MeasuredCell*>& kin) const {
    if (kin.empty()) return;
    const auto [low, high] = std::ranges::minmax(kin, {}, &MeasuredCell::box_width);
    const Length smallest = low->box_width;
    if (high->box_width - smallest > defaults::kAlikeWithin.In(bank_.units)) return;
    for (MeasuredCell* cell : kin) {
      if (Facts(At(cell->space).slide.type).screwed) {
        Pack(cell->shim_left + cell->shim_right + cell->box_width - smallest, *cell);
      }
      cell->box_width = smallest;
    }
  }

  const Bank& bank_;
  std::vector<MeasuredCell>& cells_;
};

class Refitter {
 public:
  Refitter(const Spec& spec, const Bank& bank, const RealOpening& real)
      : spec_(spec),
        bank_(bank),
        real_(real),
        fronts_(spec.measured.fronts),
        boxes_(spec.measured.boxes) {}

  Refit Run(const std::vector<MeasuredCell>& cells) {
    const Spec held = Applied(spec_, bank_, ChangesToRefit(spec_, bank_, real_));
    const Outcome<Bank> solved = SolveBank(held);
    if (!solved.ok()) {
      for (const Diagnostic& d : solved.diagnostics()) refit_.unmet.push_back(d.message);
      return std::move(refit_);
    }
    refit_.solved = true;
    now_ = &solved.value();
    Compare(cells);
    Closure();
    const LayoutIndex index(spec_);
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      if (bank_.spaces[i].HasFront()) Held(index.SplitOf(static_cast<int>(i)), i);
    }
    return std::move(refit_);
  }

 private:
  std::string In(Length length) const { return FormatWithUnit(length, bank_.units); }

  void Say(const std::string& path, Length planned, Length now) {
    if (planned != now) refit_.changes.push_back({path, planned, now});
  }

  void Compare(const std::vector<MeasuredCell>& cells) {
    Say("opening.width", bank_.opening_width, now_->opening_width);
    Say("opening.height", bank_.opening_height, now_->opening_height);
    Say("opening.depth", bank_.opening_depth, now_->opening_depth);
    auto cell = cells.begin();
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      const Space& planned = bank_.spaces[i];
      const Space& now = now_->spaces[i];
      if (!planned.HasFront()) continue;
      const std::string id = ToText(planned.id);
      Say(id + ".front.width", planned.front.rect.width, now.front.rect.width);
      Say(id + ".front.height", planned.front.rect.height, now.front.rect.height);
      if (!planned.HasBox()) continue;
      // The box is as wide as its own stretch of the opening allows.
      Say(id + ".box.width", planned.box.width, cell->box_width);
      ++cell;
      Say(id + ".box.height", planned.box.height, now.box.height);
      Say(id + ".box.depth", planned.box.depth, now.box.depth);
    }
  }

  void Closure() {
    for (const SolveNote& note : now_->notes) {
      if (note.kind != SolveNote::Kind::kDoesNotClose) continue;
      const bool long_ = note.amount < Length();
      refit_.unmet.push_back("the fronts of " + note.subject + " already cut are " +
                             In(long_ ? -note.amount : note.amount) + " too " +
                             (long_ ? "long" : "short") + " in all for the opening");
    }
  }

  void Held(const std::optional<Axis>& split, std::size_t at) {
    const Space& now = now_->spaces[at];
    const std::string id = ToText(now.id);
    if (const MeasuredPart* front = fronts_.Of(now)) {
      for (const Axis axis : {Axis::kX, Axis::kY}) {
        const Entry<Length>* size = MeasuredParts::Along(*front, axis);
        if (size == nullptr || split == axis) continue;
        Across(id, axis == Axis::kX ? "width" : "height", size->value,
               axis == Axis::kX ? now.front.rect.width : now.front.rect.height);
      }
    }
    if (const MeasuredPart* box = boxes_.Of(now)) HeldBox(id, now, *box);
  }

  // A size that no split can make room for: the front is as wide as its column is.
  void Across(const std::string& id, const char* what, Length is, Length wanted) {
    if (is == wanted) return;
    refit_.unmet.push_back(id + "'s front is " + In(is) + " in " + what + ", but " + In(wanted) +
                           " would be right: its gaps will be off by a total of " +
                           In(is > wanted ? is - wanted : wanted - is));
  }

  void HeldBox(const std::string& id, const Space& now, const MeasuredPart& box) {
    const auto too_large = [&](const Entry<Length>& size, Length room, const char* what) {
      if (!size.typed || size.value <= room) return;
      refit_.unmet.push_back(id + "'s box is " + In(size.value - room) + " too " + what +
                             " for its opening");
    };
    const Length upright = now.cell.height - now.box.build.clear_below - now.box.build.clear_above;
    too_large(box.height, upright, "tall");
    too_large(box.depth, now_->opening_depth - now.box.z - now.slide.behind, "deep");
    too_large(box.width, TargetWidth(now, now.cell.width), "wide");
  }

  const Spec& spec_;
  const Bank& bank_;
  const RealOpening& real_;
  MeasuredParts fronts_, boxes_;
  const Bank* now_ = nullptr;
  Refit refit_;
};

}  // namespace

Length BoxWidthIn(const Bank& bank, const Space& space, Length clear_width) {
  // What ends and corner joints add up with stays as it is planned.
  const Length beside = space.box.width - space.box.end_length;
  return FloorTo(TargetWidth(space, clear_width) - beside, bank.round) + beside;
}

std::vector<MeasuredCell> MeasuredCells(const Spec& spec, const Bank& bank,
                                        const RealOpening& real) {
  const MeasuredParts boxes(spec.measured.boxes);
  std::vector<MeasuredCell> cells;
  for (std::size_t i = 0; i < bank.spaces.size(); ++i) {
    if (bank.spaces[i].HasBox()) {
      cells.push_back(CellOf(boxes, bank, real, static_cast<int>(i)));
    }
  }
  int space = 0;
  Alike(bank, cells).Walk(spec.layout, space);
  return cells;
}

Refit RefitBank(const Spec& spec, const Bank& bank, const RealOpening& real,
                const std::vector<MeasuredCell>& cells) {
  return Refitter(spec, bank, real).Run(cells);
}

}  // namespace tillwright
