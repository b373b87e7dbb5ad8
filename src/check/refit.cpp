#include "check/refit.h"

#include "check/change.h"
#include "check/layout_index.h"
#include "check/measured_parts.h"
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
    out.shim_left = HalfBelow(left_over);
    out.shim_right = HalfAbove(left_over);
  }
  return out;
}

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
  return cells;
}

Refit RefitBank(const Spec& spec, const Bank& bank, const RealOpening& real,
                const std::vector<MeasuredCell>& cells) {
  return Refitter(spec, bank, real).Run(cells);
}

}  // namespace tillwright
