#include "draw/bank/case_pieces.h"

#include "bank/part_roles.h"
#include "draw/part/part_sheet_notes.h"
#include "draw/section/side_cut.h"
#include "sheet/rich_text.h"

namespace tillwright {
namespace {

constexpr Length kFootSize = Length::Millimeters(50);  // as drawn: a bought foot's is its maker's

// The piece's name beside its middle, which the center line runs through, where it fits.
void AddName(SheetGroup& out, PartRole role, const PaperBox& box, const TextMetrics& metrics) {
  const LabelStyle style{.cap_height = 1.8, .anchor = TextAnchor::kCenter};
  const PaperPoint at{box.left + box.Width() / 4, box.Center().y};
  const Label label = MakePlainLabel(metrics, UpperCase(ToText(role)), style, at);
  if (2 * label.box.Width() + 4 < box.Width() && label.box.Height() + 1 < box.Height()) {
    out.primitives.emplace_back(label);
  }
}

// Upper and lower edge, and the ends that are seen.
void AddBrokenOff(SheetGroup& out, const PaperBox& box, const PieceFace& face) {
  const auto line = [&](PaperPoint from, PaperPoint to) {
    out.primitives.emplace_back(LineOf(from, to, Pen::kOutline));
  };
  line({box.left, box.top}, {box.right, box.top});
  line({box.left, box.bottom}, {box.right, box.bottom});
  if (!face.cut_left) line({box.left, box.top}, {box.left, box.bottom});
  if (!face.cut_right) line({box.right, box.top}, {box.right, box.bottom});
}

void AddFeet(SheetGroup& out, const CaseBuild& c, Length low, Length high, const PaperMap& map) {
  for (const Length at : {low, high - kFootSize}) {
    out.primitives.emplace_back(
        BoxOutline(map.Box({at, -c.base - c.feet, kFootSize, c.feet}), Pen::kThin));
  }
}

}  // namespace

bool IsWebFrame(const Bank& bank, const Divider& member) {
  return !member.partition && bank.casework && bank.casework->web;
}

PieceFace FrontFaceOf(const Bank& bank, const CasePiece& piece) {
  constexpr Length kRun = Length::Millimeters(120);
  const Block& b = piece.block;
  PieceFace face{{b.x, b.y, b.width, b.height}, false, false};
  if (Facts(piece.role).group != PartGroup::kWorktop) return face;
  const CaseBuild& c = *bank.casework;
  const Length left = -c.side_in - c.side;
  const Length low = Max(b.x, left - kRun);
  const Length high = Min(b.x + b.width, left + c.width + kRun);
  face.cut_left = low > b.x;
  face.cut_right = high < b.x + b.width;
  face.rect.x = low;
  face.rect.width = high - low;
  return face;
}

void AddPiecesInFront(SheetGroup& out, const Bank& bank, const PaperMap& map,
                      const TextMetrics& metrics) {
  const CaseBuild& c = *bank.casework;
  const Length left = -c.side_in - c.side;
  if (!c.feet.IsZero()) AddFeet(out, c, left, left + c.width, map);
  for (const CasePiece& piece : bank.pieces) {
    if (!Facts(piece.role).from_front) continue;
    const PieceFace face = FrontFaceOf(bank, piece);
    const PaperBox box = map.Box(face.rect);
    const PartGroup group = Facts(piece.role).group;
    const bool inner = group == PartGroup::kCrosspiece;
    if (!face.cut_left && !face.cut_right) {
      out.primitives.emplace_back(BoxOutline(box, inner ? Pen::kThin : Pen::kOutline));
    } else {
      AddBrokenOff(out, box, face);
    }
    if (group != PartGroup::kFaceFrame) AddName(out, piece.role, box, metrics);
  }
}

void AddPiecesInSection(SheetGroup& out, const Bank& bank, const Assembly& assembly, Length x,
                        const PaperMap& map) {
  const CaseBuild& c = *bank.casework;
  if (!c.feet.IsZero()) {
    AddFeet(out, c, Max(c.front_in, c.feet_setback), c.front_in + c.depth, map);
  }
  for (const PlacedPart& piece : assembly.pieces()) {
    if (!IsInPieces(Facts(piece.role).group)) continue;
    const Block& b = piece.clear;
    const PaperBox box = map.Box({b.z, b.y, b.depth, b.height});
    if (b.x < x && x < b.x + b.width) {
      const bool upright = Facts(piece.role).grain == Grain::kVertical;
      AddCut(out, box,
             {.material = bank.parts[piece.part].material,
              .grain = upright ? CutGrain::kUpright : CutGrain::kAcross});
    } else if (piece.role == PartRole::kWebRunner && b.x > x) {
      out.primitives.emplace_back(BoxOutline(box, Pen::kThin));
    }
  }
}

Polyline SideOutline(const Bank& bank, const PaperMap& map) {
  const CaseBuild& c = *bank.casework;
  const Length rear = c.front_in + c.depth;
  const Length low = -c.base;
  const Length high = low + c.height;
  Polyline outline{{map.At(c.front_in, high), map.At(rear, high), map.At(rear, low)},
                   !c.frame,  // behind a frame the front edge is hidden by what is drawn before it
                   Pen::kOutline,
                   Tone::kNone};
  if (c.kick_setback.IsZero()) {
    outline.points.push_back(map.At(c.front_in, low));
    return outline;
  }
  const Length up = low + c.raise;
  for (const PaperPoint at :
       {map.At(c.kick_setback, low), map.At(c.kick_setback, up), map.At(c.front_in, up)}) {
    outline.points.push_back(at);
  }
  return outline;
}

}  // namespace tillwright
