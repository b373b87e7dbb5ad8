// Strips on paper.
#include <algorithm>
#include <optional>

#include "draw/stick/ruler.h"
#include "draw/stick/strip.h"
#include "draw/stick/strip_map.h"
#include "draw/stick/strip_room.h"
#include "draw/stick/strip_text.h"
#include "sheet/annotation.h"
#include "sheet/hatch.h"
#include "sheet/spread.h"

namespace tillwright {
namespace {

constexpr double kLinePitch = 3.7;  // mm from line to line of captions
constexpr double kBalloonRadius = 2.9;
constexpr double kRegister = 1.5;  // radius of register marks
constexpr double kBetweenRulers = 1.2;

double LinesHeight(std::size_t lines) {
  return lines == 0 ? 0 : static_cast<double>(lines) * kLinePitch + 1.8;
}

class PieceDrawer {
 public:
  PieceDrawer(SheetGroup& out, const Strip& strip, int piece, const StripMap& map,
              const StripStyle& style, const TextMetrics& metrics)
      : out_(out),
        strip_(strip),
        stick_(*strip.stick),
        piece_(piece),
        last_(piece == strip.pieces()),
        map_(map),
        style_(style),
        metrics_(metrics),
        length_(map.V(strip.To(piece))) {}

  void Draw() {
    Edges();
    Rulers();
    Spans();
    Hairlines();
    Labels();
    Foot();
    Head();
  }

 private:
  void Line(double u1, double v1, double u2, double v2, Pen pen) {
    out_.primitives.emplace_back(LineOf(map_.At(u1, v1), map_.At(u2, v2), pen));
  }
  [[nodiscard]] double Beyond() const { return last_ ? 0 : kOverlap; }

  void Edges() {
    Line(0, 0, 0, length_ + Beyond(), Pen::kCutLine);
    Line(0, 0, strip_.width, 0, Pen::kCutLine);
    Line(strip_.width, 0, strip_.width, length_ + Beyond(), Pen::kRuler);
    if (last_) return Line(0, length_, strip_.width, length_, Pen::kCutLine);
    Line(0, length_, strip_.width, length_, Pen::kMatchLine);
    Line(0, length_ + kOverlap, strip_.width, length_ + kOverlap, Pen::kTrimLine);
    Register(length_, false);
  }

  // Whole crosses on the sheet below; halves of them on the one that is cut and laid on it.
  void Register(double v, bool half) {
    for (const double share : {0.3, 0.7}) {
      const double u = kLabelsFrom + share * (strip_.width - kLabelsFrom - 12);
      if (!half) {
        AddRegistrationMark(out_, map_.At(u, v), kRegister);
        continue;
      }
      out_.primitives.emplace_back(
          Arc{map_.At(u, v), kRegister, map_.along < 0 ? 0.0 : 180.0, 180, Pen::kSymbol});
      Line(u, v, u, v + 1.7 * kRegister, Pen::kThin);
    }
  }

  void Rulers() {
    const Length to = strip_.To(piece_);
    const double clear = 1.6;
    const Unit unit = RulerUnit(style_);
    Ruler ruler{unit, strip_.width, strip_.From(piece_), to, clear, clear};
    AddRuler(out_, ruler, map_, metrics_);
    if (style_.units != StickUnits::kBoth) return;
    ruler.edge -= RulerWidth(unit, strip_.begin, strip_.end, metrics_) + kBetweenRulers;
    ruler.unit = unit == Unit::kInch ? Unit::kMillimeter : Unit::kInch;
    Line(ruler.edge, 0, ruler.edge, length_, Pen::kRuler);
    AddRuler(out_, ruler, map_, metrics_);
  }

  // The part of a stretch that lies on this piece, mm from its lower end.
  struct Stretch {
    double low = 0;
    double high = 0;
  };
  [[nodiscard]] std::optional<Stretch> OnPiece(const StickSpan& span) const {
    const Stretch s{std::max(0.0, map_.V(span.from)), std::min(length_, map_.V(span.to))};
    if (s.high <= s.low) return std::nullopt;
    return s;
  }

  void Spans() {
    for (const StickSpan& span : stick_.spans) {
      if (span.lane != strip_.lane) continue;
      const std::optional<Stretch> s = OnPiece(span);
      if (!s) continue;
      switch (span.kind) {
        case StickSpan::Kind::kGap:
          Hatch(*s, 45);
          break;
        case StickSpan::Kind::kCut:
          Hatch(*s, 135);
          break;
        case StickSpan::Kind::kBody:
          Body(span, *s);
          break;
      }
    }
  }

  void Hatch(const Stretch& s, double angle) {
    const HatchArea area = AreaOf(map_.Box(0, s.low, kHairline - 1, s.high));
    HatchLines lines = HatchAtAngle(area, angle, 0.9, Pen::kHatch);
    if (!lines.segments.empty()) out_.primitives.emplace_back(std::move(lines));
  }

  // The name of a front or box, up the strip, in the longest stretch that no hairline crosses.
  void Body(const StickSpan& span, const Stretch& s) {
    Stretch room{s.low, s.low};
    double before = s.low;
    for (const StickMark& mark : stick_.marks) {
      if (mark.lane != strip_.lane) continue;
      const double v = std::clamp(map_.V(mark.at), s.low, s.high);
      if (v - before > room.high - room.low) room = {before, v};
      before = std::max(before, v);
    }
    if (s.high - before > room.high - room.low) room = {before, s.high};
    const LabelStyle look{.cap_height = 2.6,
                          .weight = TextWeight::kBold,
                          .anchor = TextAnchor::kCenter,
                          .turn = TextTurn::kUpward};
    const double middle = (room.low + room.high) / 2;
    Label label = MakeLabel(metrics_, BodyText(span, style_), look, map_.At(kHairline / 2, middle),
                            span.path);
    if (label.box.Height() + 3 <= room.high - room.low) out_.primitives.emplace_back(label);
  }

  void Hairlines() {
    const double high = length_ + Beyond();
    std::optional<Length> before;
    for (const StickMark& mark : stick_.marks) {
      if (mark.lane != strip_.lane || (before == mark.at && !mark.is_line)) continue;
      const double v = map_.V(mark.at);
      if (v < 0 || v > high) continue;
      Line(0, v, kHairline, v, mark.is_line ? Pen::kCenter : Pen::kThin);
      before = mark.at;
    }
    const double datum = map_.V(Length());
    if (datum > 0 && datum <= length_) Line(0, datum, kHairline, datum, Pen::kCutLine);
  }

  void Labels() {
    const std::vector<std::size_t> on_piece = MarksOn(strip_, piece_);
    std::vector<SpreadItem> items;
    for (const std::size_t i : on_piece) {
      items.push_back({V(i), strip_.labels[i].box.Height(), 1});
    }
    const LabelRange range = RangeOf(strip_, piece_, style_);
    const std::vector<double> places = SpreadWithin(items, kLabelSpace, range.low, range.high);
    for (std::size_t i = 0; i < on_piece.size(); ++i) {
      Place(strip_.labels[on_piece[i]], V(on_piece[i]), places[i]);
    }
  }

  // Where the i-th mark of the strip lies.
  [[nodiscard]] double V(std::size_t i) const { return map_.V(stick_.marks[strip_.marks[i]].at); }

  void Place(Label label, double from, double to) {
    Line(kHairline, from, kLeaderTo - 1.2, to, Pen::kLeader);
    Line(kLeaderTo - 1.2, to, kLeaderTo, to, Pen::kLeader);
    const PaperPoint at = map_.At(kLabelsFrom, to);
    const double dy = at.y - label.box.Center().y;
    label.at.x += at.x;
    label.at.y += dy;
    label.box = {label.box.left + at.x, label.box.top + dy, label.box.right + at.x,
                 label.box.bottom + dy};
    out_.primitives.emplace_back(std::move(label));
  }

  // Lines of text below each other, from `top` on.
  void Text(const std::vector<std::string>& lines, double left, double top) {
    AddTextBlock(out_,
                 {.at = {left, top + kCaptionCap},
                  .lines = lines,
                  .cap_height = kCaptionCap,
                  .pitch = kLinePitch / kCaptionCap},
                 metrics_);
  }

  // Where a stretch of v begins on paper, from above.
  [[nodiscard]] double TopOf(double v1, double v2) const {
    return std::min(map_.At(0, v1).y, map_.At(0, v2).y);
  }
  [[nodiscard]] double LeftOf(double u1, double u2) const {
    return std::min(map_.At(u1, 0.0).x, map_.At(u2, 0.0).x);
  }

  [[nodiscard]] const PieceWords& Words() const {
    return strip_.words[static_cast<std::size_t>(piece_) - 1];
  }

  void Foot() {
    const double height = FootHeight(strip_, piece_);
    const double top = TopOf(-height, 0);
    const double left = LeftOf(0, strip_.width);
    AddBalloon(out_, {left + kBalloonRadius + 0.3, top + kBalloonRadius + 0.9}, kBalloonRadius,
               PieceLetter(piece_), metrics_, Tone::kNone);
    const LabelStyle bold{.cap_height = kCaptionCap,
                          .weight = TextWeight::kBold,
                          .level = TextLevel::kBaseline,
                          .max_width = strip_.width - kFootText};
    out_.primitives.emplace_back(MakePlainLabel(metrics_, LaneTitle(strip_), bold,
                                                {left + kFootText, top + 1.1 + kCaptionCap}));
    Text(Words().foot, left + kFootText, top + 1.1 + kLinePitch);
    if (piece_ > 1) Register(0, true);
  }

  void Head() {
    const std::vector<std::string>& lines = Words().head;
    if (last_) {
      const double top = TopOf(length_, length_ + LinesHeight(lines.size()));
      return Text(lines, LeftOf(0, strip_.width), top + 1.5);
    }
    const double height = LinesHeight(lines.size());
    const double top = TopOf(length_ + kOverlap - 0.8 - height, length_ + kOverlap - 0.8);
    Text(lines, LeftOf(kBesideJoint, strip_.width - kBesideJoint), top + 1);
  }

  SheetGroup& out_;
  const Strip& strip_;
  const Stick& stick_;
  int piece_;
  bool last_;
  StripMap map_;
  const StripStyle& style_;
  const TextMetrics& metrics_;
  double length_;
};

}  // namespace

double FootHeight(const Strip& strip, int piece) {
  return LinesHeight(strip.words[static_cast<std::size_t>(piece) - 1].foot.size() + 1);
}

double HeadHeight(const Strip& strip, int piece) {
  if (piece < strip.pieces()) return kOverlap;
  return LinesHeight(strip.words[static_cast<std::size_t>(piece) - 1].head.size());
}

double RulerZone(const Strip& strip, const StripStyle& style, const TextMetrics& metrics) {
  const Unit unit = RulerUnit(style);
  const double own = RulerWidth(unit, strip.begin, strip.end, metrics);
  if (style.units != StickUnits::kBoth) return own + 1.2;
  const Unit other = unit == Unit::kInch ? Unit::kMillimeter : Unit::kInch;
  return own + kBetweenRulers + RulerWidth(other, strip.begin, strip.end, metrics) + 1.2;
}

double PieceHeight(const Strip& strip, int piece, const StripStyle& style) {
  return FootHeight(strip, piece) +
         ToMillimeters(strip.To(piece) - strip.From(piece)) * style.correction.y +
         HeadHeight(strip, piece);
}

StickPiece DrawPiece(SheetGroup& out, const Strip& strip, int piece, PaperPoint corner,
                     const StripStyle& style, const TextMetrics& metrics) {
  const double foot = FootHeight(strip, piece);
  StripMap map;
  map.from = strip.From(piece);
  map.along = style.datum_up ? 1 : -1;
  map.inward = style.mirror ? -1 : 1;
  map.stretch = style.correction.y;
  map.zero.x = corner.x + (style.mirror ? strip.width : 0);
  map.zero.y = corner.y + (style.datum_up ? foot : PieceHeight(strip, piece, style) - foot);
  PieceDrawer(out, strip, piece, map, style, metrics).Draw();
  StickPiece placed;
  placed.lane = strip.lane;
  placed.part = strip.part;
  placed.piece = piece;
  placed.from = strip.From(piece);
  placed.to = strip.To(piece);
  placed.zero = map.zero;
  placed.toward_end = map.along;
  placed.inward = map.inward;
  placed.width = strip.width;
  for (const std::size_t i : MarksOn(strip, piece)) placed.marks.push_back(strip.marks[i]);
  return placed;
}

}  // namespace tillwright
