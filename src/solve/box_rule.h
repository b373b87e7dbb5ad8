// One drawer: its slide from the depth, its box from the cell, its bottom from the box.
#ifndef TILLWRIGHT_SOLVE_BOX_RULE_H_
#define TILLWRIGHT_SOLVE_BOX_RULE_H_

#include <optional>

#include "solve/context.h"
#include "spec/box_rules.h"
#include "spec/kinds.h"
#include "spec/materials.h"

namespace tillwright {

template <class N>
struct Cell {
  N x, y, width, height;
  // Of boxes that are to be alike: the smallest length of ends, the smallest height.
  std::optional<Length> ends = {}, box_height = {};
};

template <class T>
class BoxRule {
 public:
  using N = typename T::Number;

  // `set_back` is how far in the front face of the box stands: an inset front's thickness, or zero.
  BoxRule(Context<T>& context, const N& opening_depth, const N& set_back)
      : context_(context), t_(context.trace), opening_depth_(opening_depth), set_back_(set_back) {}

  void Run(Space& space, const BoxRules& rules, Place place, const Cell<N>& cell) {
    space_ = &space;
    rules_ = &rules;
    place_ = place;
    const std::optional<N> length = SlideLength();
    if (!length) return;
    const N depth =
        Name("box.depth", rules.depth.typed ? Given("box.depth", rules.depth) : *length);
    space.box.depth = Value(depth);
    space.box.z = Value(Name("box.z", set_back_));
    Stock();
    if (!Across(cell)) return;
    if (!Upright(cell)) return;
    if (!Lengths(depth)) return;
    Bottom(depth);
  }

 private:
  N Given(std::string_view key, const Entry<Length>& entry) { return t_.Given(key, entry); }
  N Name(std::string_view path, const N& number) { return t_.Name(space_->id, path, number); }
  bool HasRoom(const N& size, const char* what, const char* hint) {
    if (Value(size) > Length()) return true;
    return context_.HasRoom(size, ToText(space_->id) + ": " + what, place_, hint);
  }

  // --- The slide --------------------------------------------------------------------------------

  std::optional<N> SlideLength() {
    Slide& slide = space_->slide;
    const N behind = Name("slide.behind", Given("slides.behind", rules_->behind));
    slide.type = rules_->slide;
    slide.behind = Value(behind);
    slide.clearance = rules_->clearance.value;
    slide.deduct = rules_->deduct.value;
    slide.side_max = rules_->side_max.value;
    const N usable = Name("slide.usable_depth", opening_depth_ - set_back_);
    std::optional<N> length;
    if (rules_->slide_length.typed) {
      length = Given("slides.length", rules_->slide_length);
    } else if (Facts(rules_->slide).sold == SoldAs::kNot && rules_->series == nullptr) {
      length = FloorTo(usable - behind, context_.round);
      if (Value(*length) <= Length()) length.reset();
    } else {
      length = FromSeries(usable, behind);
    }
    if (!length) {
      ReportNoSlide(Value(usable));
      return length;
    }
    length = Name("slide.length", *length);
    slide.length = Value(*length);
    return length;
  }

  // The longest of the series with length + behind within the depth, and within a typed box depth.
  std::optional<N> FromSeries(const N& usable, const N& behind) {
    Length best;
    const auto consider = [&](Length length) {
      const bool fits = length + Value(behind) <= Value(usable) &&
                        (!rules_->depth.typed || length <= rules_->depth.value);
      if (fits && length > best) best = length;
    };
    if (rules_->series != nullptr) {
      for (const Entry<Length>& length : *rules_->series) consider(length.value);
    } else {
      const defaults::Series& series =
          context_.unit() == Unit::kInch ? Facts(rules_->slide).inches : defaults::kMetricSeries;
      for (int i = 0; i < series.count; ++i) consider(series.first + i * series.step);
    }
    if (best.IsZero()) return std::nullopt;
    return t_.Chosen("the longest slide of the series that fits", best, usable, behind);
  }

  void ReportNoSlide(Length usable) {
    const Unit unit = context_.unit();
    ReportError(context_.diagnostics, DiagnosticCode::kNoSlide, place_,
                "no slide length fits " + ToText(space_->id) + ": " + FormatWithUnit(usable, unit) +
                    " of depth, of which " + FormatWithUnit(space_->slide.behind, unit) +
                    " is clearance behind the box",
                "make the opening deeper, or list shorter slides in \"lengths\"");
  }

  // --- The box ----------------------------------------------------------------------------------

  void Stock() {
    side_ = Name("side.thickness", Given("box.side.thickness", rules_->side));
    end_ =
        Name("end.thickness", rules_->end.typed ? Given("box.end.thickness", rules_->end) : side_);
    setback_ = Name("corner.back_setback", Given("box.corner.back_setback", rules_->back_setback));
    BoxBuild& build = space_->box.build;
    build.side = Value(side_);
    build.end = Value(end_);
    build.joint = rules_->joint;
    build.back_setback = Value(setback_);
    build.side_material = *rules_->side_material;
    build.end_material = *rules_->end_material;
    build.bottom_material = *rules_->bottom_material;
    const CornerFacts& has = Facts(rules_->joint);
    if (has.depth) {
      joint_depth_ = rules_->joint_depth.typed ? Given("box.corner.depth", rules_->joint_depth)
                                               : PartBelow(side_, 2);
      joint_depth_ = Name("corner.depth", joint_depth_);
      build.joint_depth = Value(joint_depth_);
    }
    if (has.lap) {
      lap_ = rules_->lap.typed ? Given("box.corner.lap", rules_->lap) : PartBelow(end_, 4);
      lap_ = Name("corner.lap", lap_);
      build.lap = Value(lap_);
    }
  }

  // What the ends' lengths add up to with, to make the box's width.
  N Beside() {
    if (!Facts(rules_->joint).depth) return 2 * side_;
    return 2 * (side_ - joint_depth_);
  }

  // A size that follows the smallest of the boxes that are to be alike.
  N Alike(const N& own, const std::optional<Length>& smallest) {
    if (!smallest || *smallest >= Value(own)) return own;
    return t_.Chosen("the smallest of the matching boxes", *smallest, own, own);
  }

  bool Across(const Cell<N>& cell) {
    const bool inside = Facts(rules_->slide).width == WidthRule::kInside;
    const N target = Name(
        "box.target_width",
        inside
            ? cell.width - Name("slide.deduct", Given("slides.deduct", rules_->deduct)) + 2 * side_
            : cell.width -
                  2 * Name("slide.clearance", Given("slides.clearance", rules_->clearance)));
    if (inside) Name("slide.side_max", Given("slides.side_max", rules_->side_max));
    Box& box = space_->box;
    N ends = target;
    N width = target;
    if (!Facts(rules_->joint).tailed) {
      const N beside = Beside();
      ends = Name("box.end_length", Alike(FloorTo(target - beside, context_.round), cell.ends));
      width = ends + beside;
    } else {
      ends = Name("box.end_length", Alike(FloorTo(target, context_.round), cell.ends));
      width = ends;
    }
    width = Name("box.width", width);
    box.width = Value(width);
    box.end_length = Value(ends);
    inside_width_ = Name("box.inside_width", width - 2 * side_);
    box.inside_width = Value(inside_width_);
    box.x = Value(Name("box.x", cell.x + HalfBelow(cell.width - width)));
    width_ = width;
    return HasRoom(ends, "the length of the box front and back",
                   "make the opening wider or the sides thinner") &&
           HasRoom(width, "the box's width", "make the opening wider") &&
           HasRoom(inside_width_, "the box's inside width",
                   "make the opening wider or the sides thinner");
  }

  bool Upright(const Cell<N>& cell) {
    const N below = Name("box.clear_below", Given("box.clear_below", rules_->clear_below));
    const N above = Name("box.clear_above", Given("box.clear_above", rules_->clear_above));
    Box& box = space_->box;
    box.build.clear_below = Value(below);
    box.build.clear_above = Value(above);
    const std::optional<N> found = HeightIn(cell.height - below - above);
    if (!found) return false;
    height_ = Name("box.height", Alike(*found, cell.box_height));
    box.height = Value(height_);
    const N lower = Name("box.y", cell.y + below);
    box.y = Value(lower);
    const N line = Name("slide.line", Given("slides.line", rules_->line));
    space_->slide.line = Value(line);
    space_->slide.line_y = Value(Name("slide.line_y", lower + line));
    return HasRoom(height_, "the box's height", "make the front taller or the clearances smaller");
  }

  std::optional<N> HeightIn(const N& space) {
    if (rules_->height.typed) return Given("box.height", rules_->height);
    if (rules_->heights == nullptr) return FloorTo(space, context_.round);
    Length best;
    for (const Entry<Length>& height : *rules_->heights) {
      if (height.value <= Value(space)) best = Max(best, height.value);
    }
    if (best.IsZero()) {
      ReportError(context_.diagnostics, DiagnosticCode::kNoSuchHeight, place_,
                  ToText(space_->id) + ": none of the stock heights fits the " +
                      FormatWithUnit(Value(space), context_.unit()) + " there is for the box",
                  "add a shorter one to \"heights\", or make the front taller");
      return std::nullopt;
    }
    return t_.Chosen("the tallest stock height that fits", best, space, space);
  }

  bool Lengths(const N& depth) {
    Box& box = space_->box;
    const N sides = Facts(rules_->joint).lap ? depth - 2 * lap_ : depth;
    box.side_length = Value(Name("box.side_length", sides));
    inside_depth_ = Name("box.inside_depth", depth - 2 * end_ - setback_);
    box.inside_depth = Value(inside_depth_);
    return HasRoom(sides, "the length of the box sides", "make the box deeper") &&
           HasRoom(inside_depth_, "the box's inside depth", "make the box deeper");
  }

  // --- The bottom -------------------------------------------------------------------------------

  void Bottom(const N& depth) {
    BoxBuild& build = space_->box.build;
    thickness_ = Name("bottom.thickness", Given("box.bottom.thickness", rules_->bottom));
    build.fit = rules_->fit;
    build.bottom = Value(thickness_);
    build.open_back = rules_->open_back;
    space_->box.solid_bottom = IsSolidWood(build.bottom_material);
    if (Facts(rules_->fit).cut) return LetIn(Facts(rules_->fit).set_up);
    Height(height_ - thickness_, height_ - thickness_, height_ - thickness_);
    Panel(width_, depth);
  }

  void LetIn(bool set_up) {
    BoxBuild& build = space_->box.build;
    const N in = Name("groove.depth", Given("box.bottom.depth", rules_->groove));
    const N play = Name("bottom.play", Given("box.bottom.play", rules_->play));
    build.groove = Value(in);
    build.play = Value(play);
    const N across = FloorTo(inside_width_ + 2 * in - 2 * play, context_.round);
    if (!set_up) {
      Height(height_ - thickness_, height_, height_);
      Panel(across, FloorTo(inside_depth_ + 2 * in - 2 * play, context_.round));
      return;
    }
    const N up = Name("groove.up", Given("box.bottom.up", rules_->up));
    build.up = Value(up);
    const N above = height_ - up - thickness_;
    Height(above, height_, build.open_back ? above : height_);
    Panel(across, build.open_back ? FloorTo(inside_depth_ + in + end_ - play, context_.round)
                                  : FloorTo(inside_depth_ + 2 * in - 2 * play, context_.round));
  }

  void Height(const N& inside, const N& wood, const N& back) {
    Box& box = space_->box;
    box.inside_height = Value(Name("box.inside_height", inside));
    box.wood_height = Value(Name("box.wood_height", wood));
    box.back_height = Value(Name("box.back_height", back));
    const char* hint = "make the front taller or lower the bottom";
    HasRoom(inside, "the box's inside height", hint);
    HasRoom(wood, "the height of the box sides", hint);
    HasRoom(back, "the height of the box back", hint);
  }

  void Panel(const N& across, const N& deep) {
    Box& box = space_->box;
    box.panel_width = Value(Name("box.panel_width", across));
    box.panel_depth = Value(Name("box.panel_depth", deep));
    HasRoom(across, "the bottom panel's width", "make the opening wider");
    HasRoom(deep, "the bottom panel's depth", "make the box deeper");
  }

  Context<T>& context_;
  T& t_;
  N opening_depth_, set_back_;
  Space* space_ = nullptr;
  const BoxRules* rules_ = nullptr;
  Place place_;
  N side_{}, end_{}, setback_{}, joint_depth_{}, lap_{}, thickness_{};
  N width_{}, height_{}, inside_width_{}, inside_depth_{};
};

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_BOX_RULE_H_
