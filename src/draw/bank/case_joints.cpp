#include "draw/bank/case_joints.h"

#include <algorithm>

#include "sheet/annotation.h"
#include "spec/kinds.h"

namespace tillwright {
namespace {

// A member along its own run: its clear part, what it enters by, and across it where that lies.
struct Run {
  Length from, to;    // clear
  Length begin, end;  // with what enters others
  Length low, high;   // its faces
  Length entry_low, entry_high;
};

// Its outline, along and across, anticlockwise from its lower left corner.
std::vector<FacePoint> RunOutline(const Run& r) {
  std::vector<FacePoint> ring;
  const auto corner = [&](Length along, Length across) {
    if (ring.empty() || ring.back().a != along || ring.back().b != across) {
      ring.push_back({along, across});
    }
  };
  if (r.entry_low > r.low) corner(r.from, r.low);
  if (r.entry_low > r.low) corner(r.to, r.low);
  for (const auto& [along, across] :
       {FacePoint{r.to, r.entry_low}, FacePoint{r.end, r.entry_low}, FacePoint{r.end, r.entry_high},
        FacePoint{r.to, r.entry_high}}) {
    corner(along, across);
  }
  if (r.entry_high < r.high) corner(r.to, r.high);
  if (r.entry_high < r.high) corner(r.from, r.high);
  for (const auto& [along, across] :
       {FacePoint{r.from, r.entry_high}, FacePoint{r.begin, r.entry_high},
        FacePoint{r.begin, r.entry_low}, FacePoint{r.from, r.entry_low}}) {
    corner(along, across);
  }
  return ring;
}

// A stretch of heights.
struct Stretch {
  Length low, high;
};

// Bottom or top, between the sides.
Run AcrossRun(const CaseBuild& c, Length low, Length thickness, bool tongue_high) {
  const Length left = -c.side_in;
  const Length right = left + c.inside_width;
  const Length wide = c.SeatWidth(thickness);
  const Length entry = tongue_high ? low + thickness - wide : low;
  return {left,  right,       left - c.joint_depth, right + c.joint_depth, low, low + thickness,
          entry, entry + wide};
}

Run BottomRun(const CaseBuild& c) { return AcrossRun(c, -c.low_in - c.bottom, c.bottom, true); }
Run TopRun(const Bank& bank, const CaseBuild& c) {
  return AcrossRun(c, bank.opening_height + c.high_in, c.top, false);
}

Polyline OnPaper(const std::vector<FacePoint>& ring, bool upright, const PaperMap& map, Pen pen) {
  Polyline line{{}, true, pen, Tone::kNone};
  for (const FacePoint& p : ring) {
    line.points.push_back(upright ? map.At(p.b, p.a) : map.At(p.a, p.b));
  }
  return line;
}

// The seats in one side's inner face, from below.
std::vector<JointSeat> SeatsAt(const Bank& bank, const CaseBuild& c, bool right) {
  std::vector<JointSeat> seats{BottomSeat(c)};
  for (const Divider& member : bank.dividers) {
    const Rect& r = member.rect;
    if (member.partition || (right ? r.Right() != bank.opening_width : !r.x.IsZero())) continue;
    seats.push_back({r.y, r.y + c.SeatWidth(r.height)});
  }
  if (!c.top_none) {
    const Run top = TopRun(bank, c);
    seats.push_back({top.entry_low, top.entry_high});
  }
  std::ranges::sort(seats, {}, &JointSeat::low);
  return seats;
}

// The inner edge of a side between two heights, broken where something enters it.
void AddInnerEdge(SheetGroup& out, const Bank& bank, bool right, Stretch stretch, Pen pen,
                  const PaperMap& map) {
  const CaseBuild& c = *bank.casework;
  const Length x = right ? c.inside_width - c.side_in : -c.side_in;
  Length from = stretch.low;
  const auto line = [&](Length to) {
    if (to > from) out.primitives.emplace_back(LineOf(map.At(x, from), map.At(x, to), pen));
  };
  for (const JointSeat& seat : SeatsAt(bank, c, right)) {
    line(Min(seat.low, stretch.high));
    from = Max(from, seat.high);
  }
  line(stretch.high);
}

bool IsLetIn(const Bank& bank) {
  return bank.casework && !bank.casework->frame && Facts(bank.casework->joint).cut;
}

// Where parts butt, their edges run through.
void AddButtedEdges(SheetGroup& out, const Bank& bank, const CaseBuild& c, const PaperMap& map) {
  const Length left = -c.side_in;
  const Length right = left + c.inside_width;
  const Length floor = -c.base;
  const auto line = [&](Length x1, Length y1, Length x2, Length y2) {
    out.primitives.emplace_back(LineOf(map.At(x1, y1), map.At(x2, y2), Pen::kThin));
  };
  line(left, floor, left, floor + c.height);
  line(right, floor, right, floor + c.height);
  line(left, Length(), right, Length());
  if (!c.raise.IsZero()) line(left, -c.bottom, right, -c.bottom);
  if (!c.top_none) line(left, bank.opening_height, right, bank.opening_height);
}

}  // namespace

JointSeat BottomSeat(const CaseBuild& c) {
  const Run run = BottomRun(c);
  return {run.entry_low, run.entry_high};
}

std::string_view CaseJointTitle(CaseJoint joint) { return Facts(joint).caption; }

Faces CornerJointFaces(const Bank& bank) {
  const CaseBuild& c = *bank.casework;
  const JointSeat seat = BottomSeat(c);
  const Length inner = -c.side_in;
  const Length outer = inner - c.side;
  const Length deep = inner - c.joint_depth;
  const Length low = -c.base;
  const Length high = low + c.height;
  std::vector<FacePoint> side{{outer, low}};
  if (seat.low > low) side.insert(side.end(), {{inner, low}, {inner, seat.low}});
  side.insert(
      side.end(),
      {{deep, seat.low}, {deep, seat.high}, {inner, seat.high}, {inner, high}, {outer, high}});
  Faces faces;
  faces.cut.push_back({FaceOwner::kCase, LookOf(c.material, FaceLook::kGrainB, FaceAxis::kA), true,
                       std::move(side)});
  faces.cut.push_back({FaceOwner::kCase, LookOf(c.material, FaceLook::kGrainA, FaceAxis::kB), false,
                       RunOutline(BottomRun(c))});
  return faces;
}

Polyline MemberOutline(const Bank& bank, const Divider& member, const PaperMap& map, Pen pen) {
  const Rect& r = member.rect;
  if (!IsLetIn(bank)) return BoxOutline(map.Box(r), pen);
  const bool upright = member.partition;
  Run run;
  run.from = upright ? r.y : r.x;
  run.to = upright ? r.Top() : r.Right();
  run.begin = member.begin;
  run.end = member.begin + member.length;
  run.low = run.entry_low = upright ? r.x : r.y;
  const Length thickness = upright ? r.width : r.height;
  run.high = run.low + thickness;
  run.entry_high = run.low + bank.casework->SeatWidth(thickness);
  return OnPaper(RunOutline(run), upright, map, pen);
}

void AddCaseEdges(SheetGroup& out, const Bank& bank, const PaperMap& map) {
  const CaseBuild& c = *bank.casework;
  if (!Facts(c.joint).cut) return AddButtedEdges(out, bank, c, map);
  for (const bool right : {false, true}) {
    AddInnerEdge(out, bank, right, {-c.base, c.height - c.base}, Pen::kThin, map);
  }
  out.primitives.emplace_back(OnPaper(RunOutline(BottomRun(c)), false, map, Pen::kThin));
  if (c.top_none) return;
  out.primitives.emplace_back(OnPaper(RunOutline(TopRun(bank, c)), false, map, Pen::kThin));
}

void AddOpeningEdges(SheetGroup& out, const Bank& bank, const PaperMap& map) {
  const Length width = bank.opening_width;
  const Length height = bank.opening_height;
  const Length zero;
  if (!IsLetIn(bank)) {
    out.primitives.emplace_back(BoxOutline(map.Box({zero, zero, width, height}), Pen::kOutline));
    return;
  }
  for (const Length y : {zero, height}) {
    out.primitives.emplace_back(LineOf(map.At(zero, y), map.At(width, y), Pen::kOutline));
  }
  for (const bool right : {false, true}) {
    AddInnerEdge(out, bank, right, {zero, height}, Pen::kOutline, map);
  }
}

}  // namespace tillwright
