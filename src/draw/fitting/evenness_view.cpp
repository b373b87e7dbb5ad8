#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "draw/fitting/fitting.h"
#include "sheet/rich_text.h"
#include "sheet/view_tools.h"

namespace tillwright {
namespace {

constexpr double kBetween = 7;      // mm, from panel to panel
constexpr double kTitle = 4.5;      // mm, from a panel to the baseline of its title
constexpr double kRowStep = 9;      // mm, from one row of panels to the next
constexpr double kWantedGap = 1.8;  // mm, that a usual gap is drawn

constexpr const char* kTrueMeasured = "ACTUAL, AS MEASURED";  // the widest title

enum class State : std::uint8_t { kTrue, kDry, kHumid, kWorst };

// Sides of a front: left, right, bottom, top.
struct Sides {
  std::array<double, 4> sum{};
  std::array<int, 4> count{};
};

class EvennessDrawing {
 public:
  EvennessDrawing(const Bank& bank, const GapCheck& check, const EvennessLayout& layout,
                  const TextMetrics& metrics)
      : bank_(bank), check_(check), layout_(layout), metrics_(metrics) {
    view_.name = "evenness";
    view_.title = "EVENNESS";
    view_.scale.name = "";
    Measure();
  }

  View Draw() {
    Panel(State::kTrue, check_.has_measured ? kTrueMeasured : "AS PLANNED");
    if (check_.has_season) {
      Panel(State::kDry, "DRY SEASON");
      Panel(State::kHumid, "HUMID SEASON");
    }
    Panel(State::kWorst, "WORST CASE, MINIMUM");
    Caption();
    view_.box = view_.outline = Bounds(view_.groups);
    return std::move(view_);
  }

 private:
  // The piece's extent, how small it is drawn, and how much wider its gaps.
  void Measure() {
    left_ = 0;
    bottom_ = 0;
    double right = ToMillimeters(bank_.opening_width);
    double top = ToMillimeters(bank_.opening_height);
    double least = right;
    for (const Space& space : bank_.spaces) {
      if (!space.HasFront()) continue;
      const Rect& r = space.front.rect;
      left_ = std::min(left_, ToMillimeters(r.x));
      bottom_ = std::min(bottom_, ToMillimeters(r.y));
      right = std::max(right, ToMillimeters(r.Right()));
      top = std::max(top, ToMillimeters(r.Top()));
      least = std::min({least, ToMillimeters(r.width), ToMillimeters(r.height)});
    }
    width_ = right - left_;
    height_ = top - bottom_;
    small_ = std::min(layout_.width / width_, layout_.height / height_);
    const double usual = UsualGap();
    if (usual <= 0) return;
    // No front loses more than half of its size to its gaps.
    const double most = least / (4 * usual);
    times_ = std::max(1.0, std::floor(std::min(kWantedGap / (usual * small_), most)));
  }

  double UsualGap() const {
    std::vector<double> sizes;
    for (const StackUp& stack : check_.stacks) {
      if (!stack.is_overlap) sizes.push_back(ToMillimeters(stack.nominal));
    }
    if (sizes.empty()) return 0;
    std::ranges::nth_element(sizes, sizes.begin() + static_cast<std::ptrdiff_t>(sizes.size() / 2));
    return sizes[sizes.size() / 2];
  }

  static double SizeIn(State state, const StackUp& stack) {
    switch (state) {
      case State::kTrue:
        return stack.measured.Millimeters();
      case State::kDry:
        return stack.dry_mm;
      case State::kHumid:
        return stack.humid_mm;
      case State::kWorst:
        break;
    }
    return ToMillimeters(stack.nominal) - stack.spread.Millimeters();
  }

  // --- One panel ---------------------------------------------------------------------------------

  PaperBox On(double x1, double y1, double x2, double y2) const {
    return {at_ + (x1 - left_) * small_, down_ + (height_ - (y2 - bottom_)) * small_,
            at_ + (x2 - left_) * small_, down_ + (height_ - (y1 - bottom_)) * small_};
  }

  void Panel(State state, const std::string& title) {
    if (panels_ > 0 && panels_ % layout_.across == 0) {
      at_ = 0;
      down_ += height_ * small_ + kRowStep;
    }
    SheetGroup& group = AddViewGroup(view_, "panel-" + std::to_string(++panels_), title, 0);
    const double w = ToMillimeters(bank_.opening_width);
    const double h = ToMillimeters(bank_.opening_height);
    group.primitives.push_back(BoxOutline(On(0, 0, w, h), Pen::kThin));
    if (bank_.style == FrontStyle::kInset) {
      for (const Divider& member : bank_.dividers) {
        const Rect& r = member.rect;
        group.primitives.push_back(BoxOutline(On(ToMillimeters(r.x), ToMillimeters(r.y),
                                                 ToMillimeters(r.Right()), ToMillimeters(r.Top())),
                                              Pen::kThin));
      }
    }
    Fronts(group, state);
    Faults(group, state);
    const LabelStyle style{
        .cap_height = 1.8, .weight = TextWeight::kBold, .level = TextLevel::kBaseline};
    const Label label =
        MakePlainLabel(metrics_, title, style, {at_, down_ + height_ * small_ + kTitle});
    group.primitives.emplace_back(label);
    // Panels stand below one another too: all as wide as the widest title.
    const double widest = MeasureLabel(metrics_, kTrueMeasured, style).width;
    at_ += std::max(width_ * small_, widest) + kBetween;
  }

  void Fronts(SheetGroup& group, State state) const {
    const std::vector<Sides> sides = SidesIn(state);
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      if (!bank_.spaces[i].HasFront()) continue;
      const Rect& r = bank_.spaces[i].front.rect;
      const std::array<Length, 4> planned{r.x, r.Right(), r.y, r.Top()};
      std::array<double, 4> edge{};
      for (std::size_t s = 0; s < 4; ++s) {
        edge[s] = sides[i].count[s] == 0 ? ToMillimeters(planned[s])
                                         : sides[i].sum[s] / sides[i].count[s];
      }
      const PaperBox box =
          On(edge[0], edge[2], std::max(edge[0], edge[1]), std::max(edge[2], edge[3]));
      group.primitives.push_back(BoxFill(box, Tone::kShade));
      group.primitives.push_back(BoxOutline(box, Pen::kThin));
    }
  }

  // Where a gap lies, and how wide it is drawn: between fronts about its middle, at a fixed edge
  // from there.
  std::pair<double, double> StretchOf(const Gap& gap, double size) const {
    const double drawn = std::max(size, 0.0) * times_;
    const double low = ToMillimeters(gap.at);
    const double high = ToMillimeters(gap.at + gap.size);
    if (gap.from.kind != GapEnd::Kind::kSpace) return {low, low + drawn};
    if (gap.to.kind != GapEnd::Kind::kSpace) return {high - drawn, high};
    return {(low + high - drawn) / 2, (low + high + drawn) / 2};
  }

  std::vector<Sides> SidesIn(State state) const {
    std::vector<Sides> sides(bank_.spaces.size());
    for (const StackUp& stack : check_.stacks) {
      if (stack.is_overlap) continue;
      const Gap& gap = bank_.gaps[static_cast<std::size_t>(stack.index)];
      const auto [low, high] = StretchOf(gap, SizeIn(state, stack));
      const std::size_t first = gap.axis == Axis::kX ? 0 : 2;
      const auto add = [&](const GapEnd& end, std::size_t side, double at) {
        if (end.kind != GapEnd::Kind::kSpace) return;
        Sides& of = sides[static_cast<std::size_t>(end.index)];
        of.sum[side] += at;
        ++of.count[side];
      };
      add(gap.from, first + 1, low);
      add(gap.to, first, high);
    }
    return sides;
  }

  // Black where a gap is outside its limits; a gap that closed is a black line.
  void Faults(SheetGroup& group, State state) const {
    for (const StackUp& stack : check_.stacks) {
      if (stack.is_overlap) continue;
      const double size = SizeIn(state, stack);
      constexpr double kNothing = 1e-9;
      if (size >= ToMillimeters(check_.least) - kNothing &&
          size <= ToMillimeters(check_.greatest) + kNothing) {
        continue;
      }
      const Gap& gap = bank_.gaps[static_cast<std::size_t>(stack.index)];
      auto [low, high] = StretchOf(gap, size);
      const double thin = 0.5 / small_;
      if (high - low < thin) {
        const double middle = (low + high) / 2;
        low = middle - thin / 2;
        high = middle + thin / 2;
      }
      const double begin = ToMillimeters(gap.begin);
      const double end = ToMillimeters(gap.end);
      group.primitives.push_back(
          BoxFill(gap.axis == Axis::kY ? On(begin, low, end, high) : On(low, begin, high, end),
                  Tone::kInk));
    }
  }

  void Caption() {
    SheetGroup& group = AddViewGroup(view_, "caption", "How to read it", 0);
    const LabelStyle style{.cap_height = 1.8, .level = TextLevel::kBaseline};
    const std::string times = std::to_string(static_cast<int>(times_));
    group.primitives.emplace_back(MakePlainLabel(
        metrics_, "Gaps drawn " + times + " times as wide. Black: outside the limits.", style,
        {0, down_ + height_ * small_ + 2 * kTitle}));
  }

  const Bank& bank_;
  const GapCheck& check_;
  EvennessLayout layout_;
  const TextMetrics& metrics_;
  View view_;
  double left_ = 0, bottom_ = 0, width_ = 1, height_ = 1;  // mm of the piece
  double small_ = 1;  // paper millimeters a millimeter of the piece
  double times_ = 1;
  double at_ = 0, down_ = 0;  // where the next panel begins
  int panels_ = 0;
};

}  // namespace

View EvennessView(const Bank& bank, const GapCheck& check, const EvennessLayout& layout,
                  const TextMetrics& metrics) {
  return EvennessDrawing(bank, check, layout, metrics).Draw();
}

}  // namespace tillwright
