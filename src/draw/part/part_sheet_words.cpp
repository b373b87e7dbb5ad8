#include "draw/part/part_sheet_words.h"

#include <algorithm>

#include "bank/part_roles.h"
#include "draw/part/part_sheet_faces.h"
#include "draw/part/part_sheet_notes.h"
#include "sheet/annotation.h"
#include "sheet/rich_text.h"

namespace tillwright {
namespace {

constexpr double kNameCap = 2;  // mm

class FaceWords {
 public:
  FaceWords(const DrawnFace& face, const TextMetrics& metrics) : face_(face), metrics_(metrics) {}

  // Name of the face, its mark, grain and front edge, as far as they fit; else as notes.
  void Add(SheetGroup& words, std::vector<std::string>& notes) const {
    const PaperBox room = Grow(FreeFace(face_.shape, face_.map), -1);
    LabelStyle style;
    style.cap_height = kNameCap;
    style.anchor = TextAnchor::kCenter;
    const std::string name = UpperCase(Facts(face_.part.role).face);
    const TextSize size = MeasureLabel(metrics_, name, style);
    const bool fits = room.Width() > size.width + 1.5 && room.Height() > size.height + 1.2;
    const PaperPoint middle = room.Center();
    const bool arrow_below = fits && room.Height() > size.height + 8;
    if (fits) {
      const double y = arrow_below ? middle.y - 2 : middle.y;
      words.primitives.emplace_back(MakeLabel(metrics_, name, style, {middle.x, y}, ""));
      if (arrow_below) AddGrain(words, room, {middle.x, middle.y + 3});
    } else {
      notes.push_back(std::string(Facts(face_.part.role).face) + " drawn");
    }
    // The mark's tails run to the lower edge, across no more than the cuts along it.
    const bool lowest = room.bottom > face_.map.zero.y - face_.map.Size(face_.shape.up) / 4;
    const bool marked = fits && lowest && room.Height() > 16 && room.Width() > size.width + 24;
    if (marked && Facts(face_.part.role).group != PartGroup::kFront) {
      AddFaceMark(words, {room.left + 6, room.bottom + 1}, 4.5);
    }
    if (face_.handed) AddEnds(words, room, fits ? size.width : room.Width(), notes);
  }

 private:
  void AddGrain(SheetGroup& words, const PaperBox& room, PaperPoint at) const {
    if (face_.part.grain == Grain::kNone) return;
    const bool across = face_.part.grain == Grain::kHorizontal;
    if (across) {
      AddGrainArrow(words, at, std::min(16.0, room.Width() - 1), PaperAxis::kHorizontal);
      return;
    }
    const double length = std::min(14.0, room.bottom - at.y);
    if (length < 5) return;
    AddGrainArrow(words, {at.x, at.y + length / 2 - 1}, length, PaperAxis::kVertical);
  }

  // FRONT and REAR at the ends of a part that has a left and a right.
  void AddEnds(SheetGroup& words, const PaperBox& room, double taken,
               std::vector<std::string>& notes) const {
    LabelStyle style;
    style.cap_height = 1.8;
    const double width = MeasureLabel(metrics_, "FRONT", style).width;
    if (room.Width() < taken + 2 * width + 6) return notes.push_back("Front at the left");
    const double y = room.Height() > 14 ? room.top + 2.5 : room.Center().y;
    words.primitives.emplace_back(MakeLabel(metrics_, "FRONT", style, {room.left + 0.8, y}, ""));
    style.anchor = TextAnchor::kRight;
    words.primitives.emplace_back(MakeLabel(metrics_, "REAR", style, {room.right - 0.8, y}, ""));
  }

  const DrawnFace& face_;
  const TextMetrics& metrics_;
};

}  // namespace

void AddFaceWords(SheetGroup& words, std::vector<std::string>& notes, const DrawnFace& face,
                  const TextMetrics& metrics) {
  FaceWords(face, metrics).Add(words, notes);
}

}  // namespace tillwright
