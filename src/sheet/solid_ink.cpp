#include "sheet/solid_ink.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>

#include "sheet/rich_text.h"
#include "sheet/spread.h"
#include "sheet/view_tools.h"

namespace tillwright {
namespace {

constexpr double kNameCap = 2.2;  // mm
constexpr double kSizesCap = 2.0;
constexpr double kBeside = 7;  // mm from the picture to the leaders' elbows
constexpr double kShelf = 2;
constexpr double kTextGap = 0.9;

constexpr std::array kFaces{CuboidFace::kFront, CuboidFace::kTop, CuboidFace::kRight};

// The point of a face at the shares (u, v) of its sides.
PaperPoint OnFace(const PaperRing& ring, double u, double v) {
  return {ring[0].x + (ring[1].x - ring[0].x) * u + (ring[3].x - ring[0].x) * v,
          ring[0].y + (ring[1].y - ring[0].y) * u + (ring[3].y - ring[0].y) * v};
}

double AreaOnPaper(const PaperRing& ring) {
  const PaperPoint a{ring[1].x - ring[0].x, ring[1].y - ring[0].y};
  const PaperPoint b{ring[3].x - ring[0].x, ring[3].y - ring[0].y};
  return std::abs(a.x * b.y - a.y * b.x);
}

// Height of a note's texts.
double NoteHeight(const PartNote& note) { return note.sizes.empty() ? 2.9 : 8.2; }

void AddNote(SheetGroup& out, const PartNote& note, double elbow_x, double y,
             std::span<const PaperBox> labels, const TextMetrics& metrics) {
  const double sign = note.left ? -1 : 1;
  const PaperPoint elbow{elbow_x, y};
  const PaperPoint shelf{elbow_x + sign * kShelf, y};
  AddBroken(out, Polyline{{note.tip, elbow, shelf}, false, Pen::kLeader, {}}, labels);
  out.primitives.emplace_back(Circle{note.tip, 0.45, Pen::kNone, Tone::kInk});
  LabelStyle style;
  style.cap_height = kNameCap;
  style.anchor = note.left ? TextAnchor::kRight : TextAnchor::kLeft;
  const PaperPoint at{shelf.x + sign * kTextGap, y};
  out.primitives.emplace_back(MakePlainLabel(metrics, note.name, style, at));
  if (note.sizes.empty()) return;
  style.cap_height = kSizesCap;
  out.primitives.emplace_back(MakeLabel(metrics, note.sizes, style, {at.x, at.y + 4.6}, note.path));
}

void AddColumn(SheetGroup& out, std::vector<PartNote> notes, double elbow_x,
               std::span<const PaperBox> labels, const TextMetrics& metrics) {
  std::ranges::stable_sort(notes, {}, [](const PartNote& note) { return note.tip.y; });
  std::vector<SpreadItem> items;
  for (const PartNote& note : notes) items.push_back({note.tip.y, NoteHeight(note), 1});
  const std::vector<double> places = Spread(items, 1.2);
  for (std::size_t i = 0; i < notes.size(); ++i) {
    const double name = notes[i].sizes.empty() ? 0 : 2.3;  // above the middle of both texts
    AddNote(out, notes[i], elbow_x, places[i] - name, labels, metrics);
  }
}

}  // namespace

bool IsInRing(const PaperRing& ring, PaperPoint point) {
  bool left = false;
  bool right = false;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const PaperPoint a = ring[i];
    const PaperPoint b = ring[(i + 1) % ring.size()];
    const double turn = (b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x);
    left = left || turn > 0;
    right = right || turn < 0;
  }
  return !(left && right);
}

std::vector<std::size_t> SolidPicture::AddLayer(std::span<const Cuboid> boxes) {
  std::vector<std::size_t> places(boxes.size());
  for (const std::size_t i : DepthOrder(boxes, view_)) places[i] = Add(boxes[i]);
  return places;
}

std::size_t SolidPicture::Add(const Cuboid& box) {
  boxes_.push_back(box);
  return boxes_.size() - 1;
}

PaperBox SolidPicture::Covered() const {
  PaperBox all = EmptyBox();
  for (const Cuboid& box : boxes_) all = Join(all, view_.BoxOf(box));
  return all;
}

bool SolidPicture::IsHidden(std::size_t box, PaperPoint point) const {
  for (std::size_t i = box + 1; i < boxes_.size(); ++i) {
    for (const CuboidFace face : kFaces) {
      if (face == CuboidFace::kFront && boxes_[i].cut_in_front) continue;
      if (IsInRing(view_.Face(boxes_[i], face), point)) return true;
    }
  }
  return false;
}

std::optional<PaperPoint> SolidPicture::PointInSight(std::size_t box, double across) const {
  constexpr std::array kShares{0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92};
  std::array along = kShares;
  std::ranges::stable_sort(along, {}, [&](double u) { return std::abs(u - across); });
  std::array faces = kFaces;
  std::ranges::stable_sort(faces, std::greater(), [&](CuboidFace face) {
    return AreaOnPaper(view_.Face(boxes_[box], face));
  });
  for (const CuboidFace face : faces) {
    if (face == CuboidFace::kFront && boxes_[box].cut_in_front) continue;
    const PaperRing ring = view_.Face(boxes_[box], face);
    for (const double u : along) {
      for (const double v : kShares) {
        const PaperPoint point = OnFace(ring, u, v);
        if (!IsHidden(box, point)) return point;
      }
    }
  }
  return std::nullopt;
}

bool SolidPicture::HasRoom(std::size_t box, const PaperBox& label) const {
  const PaperRing face = view_.Face(boxes_[box], CuboidFace::kFront);
  const PaperBox l = Grow(label, 0.7);
  const std::array corners{PaperPoint{l.left, l.top}, PaperPoint{l.right, l.top},
                           PaperPoint{l.right, l.bottom}, PaperPoint{l.left, l.bottom}};
  if (!std::ranges::all_of(corners, [&](PaperPoint p) { return IsInRing(face, p); })) return false;
  for (std::size_t i = box + 1; i < boxes_.size(); ++i) {
    if (!Overlaps(l, view_.BoxOf(boxes_[i]))) continue;
    for (int step = 0; step <= 12; ++step) {
      const double x = l.left + l.Width() * step / 12;
      for (const double y : {l.top, l.Center().y, l.bottom}) {
        if (IsHidden(box, {x, y})) return false;
      }
    }
    return true;
  }
  return true;
}

void AddPartNotes(SheetGroup& out, std::span<const PartNote> notes, const PaperBox& picture,
                  const TextMetrics& metrics) {
  const std::vector<PaperBox> labels = LabelBoxes({&out, 1});
  std::vector<PartNote> left;
  std::vector<PartNote> right;
  for (const PartNote& note : notes) (note.left ? left : right).push_back(note);
  AddColumn(out, std::move(left), picture.left - kBeside, labels, metrics);
  AddColumn(out, std::move(right), picture.right + kBeside, labels, metrics);
}

}  // namespace tillwright
