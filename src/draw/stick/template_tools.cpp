#include "draw/stick/template_tools.h"

#include <algorithm>

#include "draw/stick/strip_text.h"
#include "sheet/annotation.h"
#include "sheet/rich_text.h"

namespace tillwright {
namespace {

constexpr double kTitleCap = 2.2;
constexpr double kPitch = 4.1;      // mm from line to line
constexpr double kLeastWords = 62;  // mm, width of the words

}  // namespace

void TemplateCanvas::Line(double x1, double y1, double x2, double y2, Pen pen) {
  group_.primitives.emplace_back(LineOf({x1, y1}, {x2, y2}, pen));
}

void TemplateCanvas::Hole(double x, double y) { AddRegistrationMark(group_, {x, y}, 2.2); }

void TemplateCanvas::Chain(PaperSide side, double start, double edge,
                           const std::vector<Size>& sizes) {
  const bool level = side == PaperSide::kAbove || side == PaperSide::kBelow;
  DimensionChain chain;
  Length at;
  chain.stations.push_back(start);
  for (const Size& size : sizes) {
    at += size.length;
    chain.stations.push_back(start + (level ? X(at) : Y(at)));
    chain.texts.push_back({DistanceText(size.length, style_), size.path});
  }
  DimensionStack stack{.side = side, .edge = edge};
  stack.tiers.push_back(std::move(chain));
  DimensionStyle look;
  look.cap_height = 2.2;
  AddDimensionStack(group_, stack, look, metrics_);
}

Template TemplateCanvas::Finish(const std::string& id, const std::string& title,
                                const std::vector<std::string>& words, double most_width) {
  PaperBox box = Bounds(group_);
  const double width = std::min(std::max(box.Width(), kLeastWords), most_width);
  double y = box.bottom + 1.6;
  const LabelStyle bold{.cap_height = kTitleCap, .weight = TextWeight::kBold};
  const LabelStyle plain{.cap_height = kCaptionCap};
  const auto add = [&](const std::string& text, const LabelStyle& style) {
    for (const std::string& line : WrapText(metrics_, text, style, width)) {
      y += kPitch;
      group_.primitives.emplace_back(MakeLabel(metrics_, line, style, {box.left, y - 1.2}, ""));
    }
  };
  add(title, bold);
  for (const std::string& sentence : words) add(sentence, plain);
  box = Bounds(group_);
  Shift(group_, -box.left, -box.top);
  group_.id = id;
  group_.title = title;
  return {std::move(group_), box.Width(), box.Height()};
}

}  // namespace tillwright
