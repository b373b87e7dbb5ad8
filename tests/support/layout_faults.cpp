#include "support/layout_faults.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "text/utf8.h"

namespace tillwright {
namespace {

bool IsFinite(double a) { return std::isfinite(a) && std::abs(a) < 1e9; }
bool IsFinite(PaperPoint p) { return IsFinite(p.x) && IsFinite(p.y); }

struct FiniteCheck {
  bool operator()(const Polyline& line) const {
    return std::all_of(line.points.begin(), line.points.end(),
                       [](PaperPoint p) { return IsFinite(p); });
  }
  bool operator()(const Circle& c) const { return IsFinite(c.center) && IsFinite(c.radius); }
  bool operator()(const Arc& a) const {
    return IsFinite(a.center) && IsFinite(a.radius) && IsFinite(a.start) && IsFinite(a.sweep);
  }
  bool operator()(const Arrowhead& a) const {
    return IsFinite(a.tip) && IsFinite(a.direction) && IsFinite(a.length);
  }
  bool operator()(const Tick& t) const { return IsFinite(t.at) && IsFinite(t.length); }
  bool operator()(const HatchLines& hatch) const {
    return std::all_of(hatch.segments.begin(), hatch.segments.end(),
                       [](const PaperSegment& s) { return IsFinite(s.from) && IsFinite(s.to); });
  }
  bool operator()(const Label& label) const {
    return IsFinite(label.at) && IsFinite(label.cap_height) && IsFinite(label.width) &&
           IsFinite(label.box.left) && IsFinite(label.box.top) && IsFinite(label.box.right) &&
           IsFinite(label.box.bottom);
  }
};

double SquaredDistance(PaperPoint p, PaperPoint q) {
  return (p.x - q.x) * (p.x - q.x) + (p.y - q.y) * (p.y - q.y);
}

double SquaredDistance(PaperPoint p, const PaperSegment& s) {
  const double dx = s.to.x - s.from.x;
  const double dy = s.to.y - s.from.y;
  const double square = dx * dx + dy * dy;
  if (square <= 0) return SquaredDistance(p, s.from);
  const double t = ((p.x - s.from.x) * dx + (p.y - s.from.y) * dy) / square;
  const double u = std::clamp(t, 0.0, 1.0);
  return SquaredDistance(p, PaperPoint{s.from.x + u * dx, s.from.y + u * dy});
}

double SquaredDistance(PaperPoint p, const PaperBox& box) {
  const double dx = std::max({box.left - p.x, p.x - box.right, 0.0});
  const double dy = std::max({box.top - p.y, p.y - box.bottom, 0.0});
  return dx * dx + dy * dy;
}

// Do the box's two diagonals or its inside meet the segment?
bool Meets(const PaperBox& box, const PaperSegment& s) {
  double low = 0;
  double high = 1;
  const auto narrow = [&](double start, double step, double from, double to) {
    if (std::abs(step) < 1e-12) return start >= from && start <= to;
    const double a = (from - start) / step;
    const double b = (to - start) / step;
    low = std::max(low, std::min(a, b));
    high = std::min(high, std::max(a, b));
    return low <= high;
  };
  return narrow(s.from.x, s.to.x - s.from.x, box.left, box.right) &&
         narrow(s.from.y, s.to.y - s.from.y, box.top, box.bottom);
}

bool IsNear(const PaperBox& box, const PaperSegment& s, double reach) {
  const PaperBox wide = Grow(box, reach);
  if (std::max(s.from.x, s.to.x) < wide.left || std::min(s.from.x, s.to.x) > wide.right ||
      std::max(s.from.y, s.to.y) < wide.top || std::min(s.from.y, s.to.y) > wide.bottom) {
    return false;
  }
  if (Meets(box, s)) return true;
  const double limit = reach * reach;
  const std::array corners{PaperPoint{box.left, box.top}, PaperPoint{box.right, box.top},
                           PaperPoint{box.right, box.bottom}, PaperPoint{box.left, box.bottom}};
  return SquaredDistance(s.from, box) < limit || SquaredDistance(s.to, box) < limit ||
         std::any_of(corners.begin(), corners.end(),
                     [&](PaperPoint corner) { return SquaredDistance(corner, s) < limit; });
}

bool IsInside(const std::vector<PaperPoint>& ring, PaperPoint p) {
  bool inside = false;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const PaperPoint a = ring[i];
    const PaperPoint b = ring[j];
    if ((a.y > p.y) != (b.y > p.y) && p.x < (b.x - a.x) * (p.y - a.y) / (b.y - a.y) + a.x) {
      inside = !inside;
    }
  }
  return inside;
}

double Reach(Pen pen) { return kStrokeClearance + StyleOf(pen).width / 2; }

// Does a primitive come too close to a label's ink? `covers`: it is drawn after the label.
class TouchTest {
 public:
  TouchTest(const PaperBox& label, bool covers) : label_(label), covers_(covers) {}

  bool operator()(const Polyline& line) const {
    if (Matters(line.fill) && line.points.size() > 2 &&
        (IsInside(line.points, label_.Center()) || SidesNear(line.points, true, 0.25))) {
      return true;
    }
    return line.pen != Pen::kNone && SidesNear(line.points, line.closed, Reach(line.pen));
  }

  bool operator()(const Circle& circle) const {
    const double nearest = std::sqrt(SquaredDistance(circle.center, label_));
    if (Matters(circle.fill) && nearest < circle.radius + kStrokeClearance) return true;
    if (circle.pen == Pen::kNone) return false;
    const double reach = Reach(circle.pen);
    return nearest < circle.radius + reach && Farthest(circle.center) > circle.radius - reach;
  }

  bool operator()(const Arc& arc) const {
    if (!(*this)(Circle{arc.center, arc.radius, arc.pen, Tone::kNone})) return false;
    constexpr int kChords = 180;
    PaperPoint before = OnCircle(arc.center, arc.radius, arc.start);
    for (int i = 1; i <= kChords; ++i) {
      const PaperPoint next = OnCircle(arc.center, arc.radius, arc.start + arc.sweep * i / kChords);
      if (IsNear(label_, {before, next}, Reach(arc.pen))) return true;
      before = next;
    }
    return false;
  }

  bool operator()(const Arrowhead& head) const {
    const std::vector<PaperPoint> corners = ArrowheadCorners(head);
    return IsInside(corners, label_.Center()) || SidesNear(corners, true, kStrokeClearance);
  }

  bool operator()(const Tick& tick) const {
    return IsNear(label_, TickSegment(tick), Reach(tick.pen));
  }

  bool operator()(const HatchLines& hatch) const {
    const double reach = Reach(hatch.pen);
    return std::any_of(hatch.segments.begin(), hatch.segments.end(),
                       [&](const PaperSegment& s) { return IsNear(label_, s, reach); });
  }

  bool operator()(const Label&) const { return false; }

 private:
  [[nodiscard]] bool Matters(Tone fill) const {
    switch (fill) {
      case Tone::kNone:
        return false;
      case Tone::kPaper:
        return covers_;
      case Tone::kInk:
      case Tone::kShade:
        return true;
    }
    return true;
  }

  [[nodiscard]] double Farthest(PaperPoint p) const {
    const double dx = std::max(std::abs(label_.left - p.x), std::abs(label_.right - p.x));
    const double dy = std::max(std::abs(label_.top - p.y), std::abs(label_.bottom - p.y));
    return std::hypot(dx, dy);
  }

  [[nodiscard]] bool SidesNear(const std::vector<PaperPoint>& points, bool closed,
                               double reach) const {
    for (std::size_t i = 0; i + (closed ? 0 : 1) < points.size(); ++i) {
      if (IsNear(label_, {points[i], points[(i + 1) % points.size()]}, reach)) return true;
    }
    return false;
  }

  PaperBox label_;
  bool covers_;
};

// Does a paper fill cover a box wholly?
class PaperCover {
 public:
  explicit PaperCover(const PaperBox& box) : box_(box) {}

  bool operator()(const Polyline& line) const {
    if (line.fill != Tone::kPaper || line.points.size() < 3) return false;
    if (!IsInside(line.points, box_.Center())) return false;
    for (std::size_t i = 0; i < line.points.size(); ++i) {
      if (Meets(box_, {line.points[i], line.points[(i + 1) % line.points.size()]})) return false;
    }
    return true;
  }
  bool operator()(const Circle& circle) const {
    const double dx = std::max(circle.center.x - box_.left, box_.right - circle.center.x);
    const double dy = std::max(circle.center.y - box_.top, box_.bottom - circle.center.y);
    return circle.fill == Tone::kPaper && std::hypot(dx, dy) <= circle.radius;
  }
  template <class Other>
  bool operator()(const Other&) const {
    return false;
  }

 private:
  PaperBox box_;
};

struct Item {
  const SheetGroup* group = nullptr;
  const Primitive* primitive = nullptr;
  PaperBox bounds;
  std::size_t order = 0;
};

struct LabelItem {
  const SheetGroup* group = nullptr;
  const Label* label = nullptr;
  std::size_t order = 0;
};

bool HasInk(const Label& label) { return !label.text.empty() && label.width > 0; }

std::string_view KindName(const Primitive& primitive) {
  return std::visit(Overloaded{[](const Polyline&) { return std::string_view("line"); },
                               [](const Circle&) { return std::string_view("circle"); },
                               [](const Arc&) { return std::string_view("arc"); },
                               [](const Arrowhead&) { return std::string_view("arrowhead"); },
                               [](const Tick&) { return std::string_view("tick"); },
                               [](const HatchLines&) { return std::string_view("hatch"); },
                               [](const Label&) { return std::string_view("label"); }},
                    primitive);
}

std::string Quoted(const Label& label) { return "\"" + label.plain + "\""; }

class FaultFinder {
 public:
  FaultFinder(const Sheet& sheet, const TextMetrics& metrics) : sheet_(sheet), metrics_(metrics) {}

  std::vector<LayoutFault> Find() {
    Collect();
    CheckPage();
    for (const LabelItem& item : labels_) {
      CheckFrame(item);
      CheckGlyphs(item);
      CheckStrokes(item);
    }
    CheckLabelPairs();
    return std::move(faults_);
  }

 private:
  void Report(LayoutFaultKind kind, const SheetGroup& group, std::string message, PaperPoint at) {
    message += " at ";
    AppendPaper(message, at.x);
    message += ", ";
    AppendPaper(message, at.y);
    faults_.push_back({kind, group.id, std::move(message), at});
  }

  void Collect() {
    std::size_t order = 0;
    for (const SheetGroup& group : sheet_.groups) {
      for (const Primitive& primitive : group.primitives) {
        ++order;
        if (!std::visit(FiniteCheck(), primitive)) {
          Report(LayoutFaultKind::kNotFinite, group,
                 std::string(KindName(primitive)) + " without finite coordinates", {0, 0});
          continue;
        }
        items_.push_back({&group, &primitive, Bounds(primitive), order});
        const Label* label = std::get_if<Label>(&primitive);
        if (label != nullptr && HasInk(*label)) labels_.push_back({&group, label, order});
      }
    }
  }

  [[nodiscard]] static bool IsWithin(const PaperBox& inner, const PaperBox& outer) {
    constexpr double kSlack = 1e-6;
    return inner.left >= outer.left - kSlack && inner.top >= outer.top - kSlack &&
           inner.right <= outer.right + kSlack && inner.bottom <= outer.bottom + kSlack;
  }

  void CheckPage() {
    const PaperBox page{0, 0, sheet_.width, sheet_.height};
    for (const Item& item : items_) {
      if (IsEmpty(item.bounds) || IsWithin(item.bounds, page)) continue;
      Report(LayoutFaultKind::kOutsidePage, *item.group,
             std::string(KindName(*item.primitive)) + " reaches past the page",
             item.bounds.Center());
    }
  }

  void CheckFrame(const LabelItem& item) {
    const bool none = IsEmpty(sheet_.frame) || sheet_.frame.Width() <= 0;
    const PaperBox frame = none ? PaperBox{0, 0, sheet_.width, sheet_.height} : sheet_.frame;
    if (IsWithin(item.label->box, frame)) return;
    Report(LayoutFaultKind::kOutsideFrame, *item.group,
           Quoted(*item.label) + " reaches past the frame", item.label->box.Center());
  }

  [[nodiscard]] bool CanDraw(const std::string& text, TextWeight weight) const {
    for (std::size_t at = 0; at < text.size();) {
      const char32_t c = NextCharacter(text, at);
      if (c == kBadByte || !metrics_.HasGlyph(c, weight)) return false;
    }
    return true;
  }

  void CheckGlyphs(const LabelItem& item) {
    const Label& label = *item.label;
    const bool all = std::all_of(label.text.begin(), label.text.end(), [&](const TextRun& run) {
      return CanDraw(run.text, label.weight) && CanDraw(run.denominator, label.weight);
    });
    if (all) return;
    Report(LayoutFaultKind::kMissingGlyph, *item.group,
           Quoted(label) + " has characters without a glyph", label.box.Center());
  }

  // The order of the last paper fill below the label that reaches past it on every side: what was
  // drawn before is hidden there.
  [[nodiscard]] std::size_t GroundOf(const LabelItem& label) const {
    constexpr double kMargin = kStrokeClearance + 0.25;  // and half the widest pen
    const PaperBox box = Grow(label.label->box, kMargin);
    std::size_t ground = 0;
    for (const Item& item : items_) {
      if (item.order >= label.order) break;
      if (!IsWithin(box, item.bounds)) continue;
      if (std::visit(PaperCover(box), *item.primitive)) ground = item.order;
    }
    return ground;
  }

  void CheckStrokes(const LabelItem& label) {
    const PaperBox near = Grow(label.label->box, 1);
    const std::size_t ground = GroundOf(label);
    for (const Item& item : items_) {
      if (item.order < ground || !Overlaps(near, item.bounds)) continue;
      if (!std::visit(TouchTest(label.label->box, item.order > label.order), *item.primitive)) {
        continue;
      }
      Report(LayoutFaultKind::kLineOnLabel, *label.group,
             std::string(KindName(*item.primitive)) + " of \"" + item.group->id + "\" runs into " +
                 Quoted(*label.label),
             label.label->box.Center());
    }
  }

  void CheckLabelPairs() {
    for (std::size_t i = 0; i < labels_.size(); ++i) {
      const PaperBox near = Grow(labels_[i].label->box, kLabelClearance);
      for (std::size_t j = i + 1; j < labels_.size(); ++j) {
        if (!Overlaps(near, labels_[j].label->box)) continue;
        Report(LayoutFaultKind::kLabelsTouch, *labels_[i].group,
               Quoted(*labels_[i].label) + " and " + Quoted(*labels_[j].label) + " are too close",
               labels_[i].label->box.Center());
      }
    }
  }

  const Sheet& sheet_;
  const TextMetrics& metrics_;
  std::vector<Item> items_;
  std::vector<LabelItem> labels_;
  std::vector<LayoutFault> faults_;
};

}  // namespace

std::vector<LayoutFault> FindLayoutFaults(const Sheet& sheet, const TextMetrics& metrics) {
  return FaultFinder(sheet, metrics).Find();
}

std::string DescribeFaults(const std::vector<LayoutFault>& faults) {
  std::string out;
  for (const LayoutFault& fault : faults) {
    out += fault.group;
    out += ": ";
    out += fault.message;
    out += '\n';
  }
  return out;
}

}  // namespace tillwright
