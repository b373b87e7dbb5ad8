#include "draw/stock/panel_labels.h"

#include <algorithm>
#include <array>
#include <numeric>

namespace tillwright {
namespace {

constexpr int kTries = 6;
constexpr double kIntoStrip = 1.2;  // mm: how far into a strip the dot of its leader stands

// On a box's end at a side, a little inside it.
PaperPoint TipOf(const PaperBox& box, PaperSide side) {
  const PaperPoint middle = box.Center();
  const double x = std::min(kIntoStrip, box.Width() / 2);
  const double y = std::min(kIntoStrip, box.Height() / 2);
  switch (side) {
    case PaperSide::kLeft:
      return {box.left + x, middle.y};
    case PaperSide::kRight:
      return {box.right - x, middle.y};
    case PaperSide::kAbove:
      return {middle.x, box.top + y};
    case PaperSide::kBelow:
      return {middle.x, box.bottom - y};
  }
  return middle;
}

// The end of a line at a side.
PaperPoint TipOf(const PaperSegment& line, PaperSide side) {
  const bool at_start = side == PaperSide::kLeft || side == PaperSide::kBelow;
  return at_start ? line.from : line.to;
}

double LengthOf(const PaperSegment& line) {
  return std::abs(line.to.x - line.from.x) + std::abs(line.to.y - line.from.y);
}

}  // namespace

PanelLabels::PanelLabels(const PaperBox& outline, std::vector<PanelLine> lines,
                         std::vector<PanelBox> boxes, const TextMetrics& metrics)
    : outline_(outline),
      lines_(std::move(lines)),
      boxes_(std::move(boxes)),
      metrics_(metrics),
      callouts_(outline, metrics),
      line_outside_(lines_.size()),
      box_outside_(boxes_.size()) {
  PlaceAtEdges();
  PlaceInside();
}

// Every cut that reaches an edge, and every box that is too narrow for its label and does.
void PanelLabels::PlaceAtEdges() {
  for (std::size_t i = 0; i < lines_.size(); ++i) {
    const PanelLine& line = lines_[i];
    if (!line.edge) continue;
    line_outside_[i] = true;
    callouts_.Add({*line.edge, TipOf(line.line, *line.edge), line.number, {}, line.depth, i});
  }
  for (std::size_t i = 0; i < boxes_.size(); ++i) {
    const PanelBox& box = boxes_[i];
    if (!box.edge || box.optional || LabelInBox(box.texts, box.box, {}, metrics_)) continue;
    box_outside_[i] = true;
    callouts_.Add({*box.edge, TipOf(box.box, *box.edge), 0, box.texts.back(), box.depth, i});
  }
  for (const EdgeCallout& callout : callouts_.TakeOverfull()) {
    (callout.number > 0 ? line_outside_ : box_outside_)[callout.id] = false;
  }
}

void PanelLabels::PlaceInside() {
  std::vector<std::size_t> first;
  for (int i = 0; i < kTries && !Try(first); ++i) {
  }
  for (std::size_t i = 0; i < lines_.size(); ++i) {
    if (!line_outside_[i] && !lines_[i].tag) Crowded(lines_[i].piece);
  }
  for (std::size_t i = 0; i < boxes_.size(); ++i) {
    if (!box_outside_[i] && !boxes_[i].label && !boxes_[i].optional) Crowded(boxes_[i].whole);
  }
}

bool PanelLabels::Try(std::vector<std::size_t>& first) {
  field_ = {};
  field_.within = outline_;
  for (const PanelLine& line : lines_) field_.lines.push_back(line.line);
  for (PanelBox& box : boxes_) box.label.reset();
  for (const std::size_t i : first) PlaceLabel(i, true);
  PlaceCuts();
  const std::size_t before = first.size();
  for (std::size_t i = 0; i < boxes_.size(); ++i) {
    if (box_outside_[i] || boxes_[i].label) continue;
    PlaceLabel(i, false);
    if (!boxes_[i].label && !boxes_[i].optional) first.push_back(i);
  }
  return first.size() == before;
}

// The shortest first: they have the least choice.
void PanelLabels::PlaceCuts() {
  std::vector<std::size_t> order(lines_.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::stable_sort(order, {}, [&](std::size_t i) { return LengthOf(lines_[i].line); });
  const PaperBox& box = outline_;
  const std::array corners{PaperPoint{box.left, box.top}, PaperPoint{box.right, box.top},
                           PaperPoint{box.right, box.bottom}, PaperPoint{box.left, box.bottom}};
  for (std::size_t i = 0; i < corners.size(); ++i) {
    field_.lines.push_back({corners[i], corners[(i + 1) % corners.size()]});
  }
  for (const std::size_t i : order) {
    lines_[i].tag.reset();
    if (line_outside_[i]) continue;
    const CutTag tag(lines_[i].number, metrics_);
    lines_[i].tag = PlaceTag(field_, i, tag);
    if (!lines_[i].tag) continue;
    field_.taken.push_back(tag.At(lines_[i].tag->at));
    field_.taken.push_back(lines_[i].tag->Leader());
  }
}

void PanelLabels::PlaceLabel(std::size_t index, bool least) {
  PanelBox& box = boxes_[index];
  std::span<const std::string> texts = box.texts;
  if (least) texts = texts.last(1);
  box.label = LabelInBox(texts, box.box, field_.taken, metrics_);
  if (box.label) field_.taken.push_back(box.label->box);
}

void PanelLabels::Crowded(std::int32_t piece) {
  if (std::ranges::find(crowded_, piece) == crowded_.end()) crowded_.push_back(piece);
}

}  // namespace tillwright
