#include "tillwright/sheet.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace tillwright {
namespace {

// Dashes in multiples of the pen's width, worked out for its width. ISO 128-2:2020 [M]: dash 12,
// long dash 24, gap 3, dot at most 0.5. A gap of 4 and dots of 1.5 are used: they stay open and
// visible on desktop printers.
constexpr double kThinWidth = 0.18;
constexpr std::array kDashed{12 * kThinWidth, 4 * kThinWidth};
constexpr std::array kChain{24 * kThinWidth, 3 * kThinWidth, 1.5 * kThinWidth, 3 * kThinWidth};
constexpr std::array kChainTwoDots{24 * kThinWidth, 3 * kThinWidth,   1.5 * kThinWidth,
                                   3 * kThinWidth,  1.5 * kThinWidth, 3 * kThinWidth};

// In the order of Pen. Line types of ISO 128-2 [M] beside each.
constexpr std::array<PenStyle, kPenCount> kPens{{
    {"none", 0, {}},
    {"cut", 0.35, {}},                     // 01.2
    {"detail-cut", 0.5, {}},               // 01.2
    {"outline", 0.35, {}},                 // 01.2
    {"front", 0.25, {}},                   // between the two: fronts are many and close together
    {"thin", kThinWidth, {}},              // 01.1
    {"hidden", kThinWidth, kDashed},       // 02.1
    {"center", kThinWidth, kChain},        // 04.1
    {"moved", kThinWidth, kChainTwoDots},  // 05.1
    {"dimension", kThinWidth, {}},         // 01.1
    {"tick", 0.35, {}},                    // ISO 129-1 [M]: oblique stroke, wide
    {"leader", kThinWidth, {}},            // 01.1
    {"hatch", 0.13, {}},                   // 01.1, a step thinner: small scales
    {"detail-hatch", kThinWidth, {}},      // 01.1
    {"ground", 0.5, {}},                   // 01.2
    {"section", 0.5, {}},                  // 04.2, of which only the ends are drawn
    {"callout", 0.35, {}},                 // 01.2
    {"frame", 0.5, {}},                    // ISO 5457 [M] asks for 0.7
    {"cell", kThinWidth, {}},              // 01.1
    {"symbol", 0.25, {}},                  //
    {"ruler", kThinWidth, {}},             //
    {"cut-line", 0.35, {}},                //
    {"match-line", kThinWidth, kChain},    //
    {"trim-line", kThinWidth, kDashed},    //
}};

constexpr double kInfinity = std::numeric_limits<double>::infinity();

PaperBox BoxOf(std::span<const PaperPoint> points) {
  PaperBox box = EmptyBox();
  for (const PaperPoint& p : points) box = Join(box, {p.x, p.y, p.x, p.y});
  return box;
}

PaperBox Stroked(const PaperBox& box, Pen pen) { return Grow(box, StyleOf(pen).width / 2); }

PaperBox BoundsOf(const Polyline& line) { return Stroked(BoxOf(line.points), line.pen); }

PaperBox BoundsOf(const Circle& circle) {
  const PaperPoint c = circle.center;
  return Stroked(Grow({c.x, c.y, c.x, c.y}, circle.radius), circle.pen);
}

PaperBox BoundsOf(const Arc& arc) {
  const double low = std::min(arc.start, arc.start + arc.sweep);
  const double high = std::max(arc.start, arc.start + arc.sweep);
  std::vector<PaperPoint> points{OnCircle(arc.center, arc.radius, low),
                                 OnCircle(arc.center, arc.radius, high)};
  const double quarter = std::ceil(low / 90) * 90;
  for (int i = 0; i < 4 && quarter + 90 * i < high; ++i) {  // |sweep| < 360: at most four
    points.push_back(OnCircle(arc.center, arc.radius, quarter + 90 * i));
  }
  return Stroked(BoxOf(points), arc.pen);
}

PaperBox BoundsOf(const Arrowhead& head) { return BoxOf(ArrowheadCorners(head)); }

PaperBox BoundsOf(const Tick& tick) {
  const PaperSegment s = TickSegment(tick);
  return Stroked(BoxOf(std::array{s.from, s.to}), tick.pen);
}

PaperBox BoundsOf(const HatchLines& hatch) {
  PaperBox box = EmptyBox();
  for (const PaperSegment& s : hatch.segments) box = Join(box, BoxOf(std::array{s.from, s.to}));
  return Stroked(box, hatch.pen);
}

PaperBox BoundsOf(const Label& label) { return label.text.empty() ? EmptyBox() : label.box; }

void Move(PaperPoint& point, double dx, double dy) {
  point.x += dx;
  point.y += dy;
}

class Mover {
 public:
  Mover(double dx, double dy) : dx_(dx), dy_(dy) {}
  void operator()(Polyline& line) const {
    for (PaperPoint& p : line.points) Move(p, dx_, dy_);
  }
  void operator()(Circle& circle) const { Move(circle.center, dx_, dy_); }
  void operator()(Arc& arc) const { Move(arc.center, dx_, dy_); }
  void operator()(Arrowhead& head) const { Move(head.tip, dx_, dy_); }
  void operator()(Tick& tick) const { Move(tick.at, dx_, dy_); }
  void operator()(HatchLines& hatch) const {
    for (PaperSegment& s : hatch.segments) {
      Move(s.from, dx_, dy_);
      Move(s.to, dx_, dy_);
    }
  }
  void operator()(Label& label) const {
    Move(label.at, dx_, dy_);
    label.box = {label.box.left + dx_, label.box.top + dy_, label.box.right + dx_,
                 label.box.bottom + dy_};
  }

 private:
  double dx_;
  double dy_;
};

std::string_view NameOf(Tone tone) {
  switch (tone) {
    case Tone::kNone:
      return "";
    case Tone::kInk:
      return " ink";
    case Tone::kShade:
      return " shade";
    case Tone::kPaper:
      return " paper";
  }
  return "";
}

// Writes primitives as lines of text.
class Dumper {
 public:
  explicit Dumper(std::string& out) : out_(out) {}

  void operator()(const Polyline& line) {
    Start(line.closed ? "polygon" : "polyline", line.pen, line.fill);
    for (const PaperPoint& p : line.points) Add(p);
  }
  void operator()(const Circle& circle) {
    Start("circle", circle.pen, circle.fill);
    Add(circle.center);
    Add(circle.radius);
  }
  void operator()(const Arc& arc) {
    Start("arc", arc.pen, Tone::kNone);
    Add(arc.center);
    for (const double value : {arc.radius, arc.start, arc.sweep}) Add(value);
  }
  void operator()(const Arrowhead& head) {
    out_ += "arrowhead";
    Add(head.tip);
    Add(head.direction);
    Add(head.length);
  }
  void operator()(const Tick& tick) {
    Start("tick", tick.pen, Tone::kNone);
    Add(tick.at);
    Add(tick.length);
  }
  void operator()(const HatchLines& hatch) {
    Start("hatch", hatch.pen, Tone::kNone);
    for (const PaperSegment& s : hatch.segments) {
      Add(s.from);
      out_ += " -";
      Add(s.to);
    }
  }
  void operator()(const Label& label) {
    out_ += label.weight == TextWeight::kBold ? "label bold" : "label";
    if (label.turn == TextTurn::kUpward) out_ += " upward";
    Add(label.cap_height);
    Add(label.at);
    out_ += " [";
    Add({label.box.left, label.box.top});
    Add({label.box.right, label.box.bottom});
    out_ += " ] \"" + label.plain + '"';
    if (!label.path.empty()) out_ += " = " + label.path;
  }

 private:
  void Start(std::string_view what, Pen pen, Tone fill) {
    out_ += what;
    out_ += ' ';
    out_ += StyleOf(pen).name;
    out_ += NameOf(fill);
  }
  void Add(double value) {
    out_ += ' ';
    AppendPaper(out_, value);
  }
  void Add(PaperPoint point) {
    Add(point.x);
    out_ += ',';
    AppendPaper(out_, point.y);
  }

  std::string& out_;
};

}  // namespace

PaperBox EmptyBox() { return {kInfinity, kInfinity, -kInfinity, -kInfinity}; }

bool IsEmpty(const PaperBox& box) { return box.right < box.left || box.bottom < box.top; }

PaperBox Join(const PaperBox& a, const PaperBox& b) {
  return {std::min(a.left, b.left), std::min(a.top, b.top), std::max(a.right, b.right),
          std::max(a.bottom, b.bottom)};
}

PaperBox Grow(const PaperBox& box, double margin) {
  return {box.left - margin, box.top - margin, box.right + margin, box.bottom + margin};
}

bool Overlaps(const PaperBox& a, const PaperBox& b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

const PenStyle& StyleOf(Pen pen) { return kPens[static_cast<std::size_t>(pen)]; }

SheetGroup& AddGroup(Sheet& sheet, std::string id, std::string title, int depth) {
  sheet.groups.push_back({std::move(id), std::move(title), "", depth, {}});
  return sheet.groups.back();
}

Polyline LineOf(PaperPoint from, PaperPoint to, Pen pen) {
  return {{from, to}, false, pen, Tone::kNone};
}

Polyline BoxOutline(const PaperBox& box, Pen pen) {
  return {
      {{box.left, box.top}, {box.right, box.top}, {box.right, box.bottom}, {box.left, box.bottom}},
      true,
      pen,
      Tone::kNone};
}

Polyline BoxFill(const PaperBox& box, Tone fill) {
  Polyline shape = BoxOutline(box, Pen::kNone);
  shape.fill = fill;
  return shape;
}

Polyline InsetOutline(const PaperBox& box, Pen pen) {
  return BoxOutline(Grow(box, -StyleOf(pen).width / 2), pen);
}

PaperPoint OnCircle(PaperPoint center, double radius, double angle) {
  const double radians = angle * std::numbers::pi / 180;
  return {center.x + radius * std::cos(radians), center.y - radius * std::sin(radians)};
}

std::vector<PaperPoint> ArrowheadCorners(const Arrowhead& head) {
  const double half = head.length * kArrowheadWidth / 2;
  const PaperPoint back = OnCircle(head.tip, head.length, head.direction + 180);
  return {head.tip, OnCircle(back, half, head.direction + 90),
          OnCircle(back, half, head.direction - 90)};
}

PaperSegment TickSegment(const Tick& tick) {
  const double reach = tick.length / 2 * std::numbers::sqrt2 / 2;
  return {{tick.at.x - reach, tick.at.y + reach}, {tick.at.x + reach, tick.at.y - reach}};
}

PaperBox Bounds(const Primitive& primitive) {
  return std::visit([](const auto& p) { return BoundsOf(p); }, primitive);
}

PaperBox Bounds(const SheetGroup& group) {
  PaperBox box = EmptyBox();
  for (const Primitive& primitive : group.primitives) box = Join(box, Bounds(primitive));
  return box;
}

PaperBox Bounds(std::span<const SheetGroup> groups) {
  PaperBox box = EmptyBox();
  for (const SheetGroup& group : groups) box = Join(box, Bounds(group));
  return box;
}

PaperBox Bounds(const Sheet& sheet) { return Bounds(std::span(sheet.groups)); }

void Shift(SheetGroup& group, double dx, double dy) {
  for (Primitive& primitive : group.primitives) std::visit(Mover(dx, dy), primitive);
}

std::string Dump(const Sheet& sheet) {
  std::string out = "sheet ";
  AppendPaper(out, sheet.width);
  out += " x ";
  AppendPaper(out, sheet.height);
  out += " \"" + sheet.title + "\"\n";
  for (const SheetGroup& group : sheet.groups) {
    const std::string indent(static_cast<std::size_t>(2 * std::max(group.depth, 0)), ' ');
    out += indent + "group " + group.id + " \"" + group.title + "\"\n";
    for (const Primitive& primitive : group.primitives) {
      out += indent + "  ";
      std::visit(Dumper(out), primitive);
      out += '\n';
    }
  }
  return out;
}

void AppendPaper(std::string& out, double mm) {
  long long thousandths = std::llround(mm * 1000);
  if (thousandths < 0) {
    out += '-';
    thousandths = -thousandths;
  }
  std::array<char, 24> digits{};
  std::size_t at = digits.size();
  long long rest = thousandths % 1000;
  for (int place = 0; place < 3; ++place, rest /= 10) {
    if (rest % 10 == 0 && at == digits.size()) continue;  // trailing zero
    digits[--at] = static_cast<char>('0' + rest % 10);
  }
  if (at != digits.size()) digits[--at] = '.';
  for (long long whole = thousandths / 1000; whole != 0 || at == digits.size() || digits[at] == '.';
       whole /= 10) {
    digits[--at] = static_cast<char>('0' + whole % 10);
    if (whole < 10) break;
  }
  out.append(&digits[at], digits.size() - at);
}

}  // namespace tillwright
