#include <algorithm>
#include <array>
#include <cmath>

#include "bank/part_roles.h"
#include "draw/part/part_sheet_dims.h"
#include "draw/part/part_sheet_faces.h"
#include "draw/part/part_sheet_notes.h"
#include "draw/part/part_sheet_words.h"
#include "draw/part/part_sheets.h"
#include "sheet/annotation.h"
#include "sheet/rich_text.h"

namespace tillwright {
namespace {

constexpr double kBetween = 5;      // mm between the pictures and their dimensions
constexpr double kNoteCap = 2;      // mm, height of notes
constexpr double kNotePitch = 3.5;  // mm from line to line
constexpr double kLeastNotes = 62;  // mm, width of notes below a narrow part

// A picture with its dimensions; moved into place as one.
struct Cluster {
  SheetGroup picture;
  SheetGroup dimensions;

  [[nodiscard]] PaperBox Covered() const { return Join(Bounds(picture), Bounds(dimensions)); }
  void Move(double dx, double dy) {
    Shift(picture, dx, dy);
    Shift(dimensions, dx, dy);
  }
};

class PartDrawing {
 public:
  PartDrawing(const Bank& bank, const PartKind& kind, const Scale& scale,
              const ViewOptions& options, const TextMetrics& metrics)
      : bank_(bank),
        kind_(kind),
        part_(bank.parts[kind.parts.front()]),
        shape_(ShapeOf(part_, PiecesOf(bank, kind.parts.front()).front())),
        options_(options),
        metrics_(metrics),
        map_{{0, 0}, scale},
        path_("part." + PartId(bank, part_)) {
    style_.first_offset = 7.5;
    style_.tier_step = 6.5;
  }

  View Draw() {
    view_.name = "part-" + PartKindStem(bank_, kind_);
    view_.title = PartKindLabel(bank_, kind_);
    view_.scale = map_.scale;
    view_.map = map_;
    Cluster face = Face();
    Cluster section = Section();
    section.Move(face.Covered().right + kBetween - section.Covered().left, 0);
    Cluster edge;
    if (HasUpright()) {
      edge = UpperEdge();
      edge.Move(0, face.Covered().top - kBetween - edge.Covered().bottom);
    }
    view_.outline = map_.Box({Length(), Length(), shape_.right, shape_.up});
    view_.box = Join(Join(face.Covered(), section.Covered()), edge.Covered());
    Keep(face, "face", std::string(Facts(part_.role).face));
    Keep(section, "section", "Section across the middle");
    if (HasUpright()) Keep(edge, "edge", "Upper edge");
    Words();
    return std::move(view_);
  }

 private:
  SheetGroup& Group(std::string_view id, std::string title, int depth) {
    view_.groups.push_back(
        {view_.name + (id.empty() ? "" : "-" + std::string(id)), std::move(title), "", depth, {}});
    return view_.groups.back();
  }

  void Keep(Cluster& cluster, const std::string& id, std::string title) {
    Group(id, std::move(title), 0).primitives = std::move(cluster.picture.primitives);
    Group(id + "-sizes", "Sizes", 0).primitives = std::move(cluster.dimensions.primitives);
  }

  bool HasUpright() const { return std::ranges::any_of(shape_.bands, &PlacedCut::IsUpright); }
  static bool IsSeat(const PlacedCut& cut) { return cut.source == CutSource::kSeats; }
  // As deep as the part is thick: its depth is dimensioned as the thickness.
  bool IsThrough(const PlacedCut& band) const { return band.depth == shape_.thickness; }

  std::string CutPath(const PlacedCut& band, std::string_view what) const {
    return path_ + (IsSeat(band) ? ".seat." : ".cut.") + std::to_string(band.index + 1) + "." +
           std::string(what);
  }
  std::string HolePath(std::size_t hole, std::string_view what) const {
    return PartFor(bank_, part_) + ".front.pull." + std::to_string(hole + 1) + "." +
           std::string(what);
  }

  // --- Dimensions -------------------------------------------------------------------------------

  // Offsets and widths of the cuts that cross one side of the face.
  std::vector<SizeMark> BandMarks(bool upright) const {
    std::vector<SizeMark> marks;
    if (!options_.all_dimensions) return marks;
    const Length whole = upright ? shape_.right : shape_.up;
    for (const PlacedCut& band : shape_.bands) {
      if (band.IsUpright() != upright || band.twin) continue;
      marks.push_back({band.low, band.high, CutPath(band, "width")});
      if (IsSeat(band)) continue;  // from one datum: AddSeatPlaces()
      if (band.from_far) {
        marks.push_back({band.high, whole, CutPath(band, "offset")});
      } else {
        marks.push_back({Length(), band.low, CutPath(band, "offset")});
      }
    }
    return marks;
  }

  std::vector<SizeMark> AcrossMarks() const {
    std::vector<SizeMark> marks = BandMarks(true);
    if (!shape_.notch.IsNone()) {
      marks.push_back({Length(), shape_.notch.width, path_ + ".notch.width"});
    }
    for (std::size_t i = 0; i < shape_.holes.size(); ++i) {
      if (i == 0) marks.push_back({Length(), shape_.holes[0].x, HolePath(0, "left")});
      if (i + 1 == shape_.holes.size()) break;
      marks.push_back({shape_.holes[i].x, shape_.holes[i + 1].x, HolePath(i, "next")});
    }
    marks.push_back({Length(), shape_.right, path_ + "." + std::string(shape_.right_name)});
    return marks;
  }

  std::vector<SizeMark> UpMarks() const {
    std::vector<SizeMark> marks = BandMarks(false);
    if (!shape_.notch.IsNone() && !StartsAt(shape_.notch.height)) {
      marks.push_back({Length(), shape_.notch.height, path_ + ".notch.height"});
    }
    if (!shape_.holes.empty()) {
      marks.push_back({shape_.holes[0].y, shape_.up, HolePath(0, "above")});
    }
    marks.push_back({Length(), shape_.up, path_ + "." + std::string(shape_.up_name)});
    return marks;
  }

  // Whether a cut across the face begins at this height, which is then told already.
  bool StartsAt(Length up) const {
    return options_.all_dimensions && std::ranges::any_of(shape_.bands, [&](const PlacedCut& band) {
             return !band.IsUpright() && !IsSeat(band) && !band.from_far && band.low == up;
           });
  }

  std::vector<SizeMark> DepthMarks(bool upright) const {
    std::vector<SizeMark> marks;
    std::vector<std::size_t> seen;
    for (const PlacedCut& band : shape_.bands) {
      const std::size_t key = 2 * band.index + (IsSeat(band) ? 1 : 0);
      if (!options_.all_dimensions || std::ranges::count(seen, key) > 0) continue;
      // Through cuts are shown where the thickness is.
      if (IsThrough(band) ? upright : band.IsUpright() != upright) continue;
      seen.push_back(key);
      const Length from = band.behind ? shape_.thickness - band.depth : Length();
      marks.push_back({from, from + band.depth, CutPath(band, "depth")});
    }
    return marks;
  }

  void AddStack(SheetGroup& out, PaperSide side, double edge, const DimensionStyle& style,
                std::vector<SizeMark> marks, const std::function<double(Length)>& paper) const {
    DimensionStack stack;
    stack.side = side;
    stack.edge = edge;
    stack.tiers = ChainsOf(std::move(marks), bank_.units, paper);
    AddDimensionStack(out, stack, style, metrics_);
  }

  // --- Pictures ---------------------------------------------------------------------------------

  Cluster Face() const {
    Cluster face;
    AddFace(face.picture, shape_, map_);
    const PaperBox box = map_.Box({Length(), Length(), shape_.right, shape_.up});
    AddStack(face.dimensions, PaperSide::kLeft, box.left, style_, UpMarks(),
             [&](Length up) { return map_.Y(up); });
    // Texts of a low part may hang below it: the other dimensions begin under them.
    DimensionStyle below = style_;
    below.first_offset =
        std::max(below.first_offset, Bounds(face.dimensions).bottom - box.bottom + 3.5);
    AddStack(face.dimensions, PaperSide::kBelow, box.bottom, below, AcrossMarks(),
             [&](Length right) { return map_.X(right); });
    if (options_.all_dimensions) AddSeatPlaces(face.dimensions, box);
    return face;
  }

  // Near sides of the dados or grooves for dividers from the lower end, for partitions from the
  // left.
  void AddSeatPlaces(SheetGroup& out, const PaperBox& box) const {
    OrdinateColumn right{.side = PaperSide::kRight, .edge = box.right, .heading = "FROM LOWER END"};
    OrdinateColumn above{.side = PaperSide::kAbove, .edge = box.top};
    for (const PlacedCut& band : shape_.bands) {
      if (!IsSeat(band)) continue;
      OrdinateColumn& column = band.IsUpright() ? above : right;
      column.ordinates.push_back({band.IsUpright() ? map_.X(band.low) : map_.Y(band.low),
                                  FormatLength(band.low, bank_.units), CutPath(band, "offset")});
    }
    for (OrdinateColumn* column : {&right, &above}) {
      if (column->ordinates.empty()) continue;
      std::ranges::sort(column->ordinates, {}, &Ordinate::station);
      AddOrdinateColumn(out, *column, style_, metrics_);
    }
  }

  Cluster Section() const {
    Cluster section;
    AddSection(section.picture, shape_, map_);
    std::vector<SizeMark> marks = DepthMarks(false);
    marks.push_back({Length(), shape_.thickness, path_ + ".thickness"});
    AddStack(section.dimensions, PaperSide::kBelow, map_.zero.y, style_, std::move(marks),
             [&](Length depth) { return map_.X(depth); });
    return section;
  }

  Cluster UpperEdge() const {
    Cluster edge;
    AddUpperEdge(edge.picture, shape_, map_);
    AddStack(edge.dimensions, PaperSide::kLeft, map_.zero.x, style_, DepthMarks(true),
             [&](Length depth) { return map_.Y(depth); });
    return edge;
  }

  // --- Words ------------------------------------------------------------------------------------

  void Words() {
    SheetGroup words{view_.name + "-words", view_.title, "", 0, {}};
    std::vector<std::string> notes;
    AddFaceWords(words, notes, {part_, shape_, map_, kind_.mirrored > 0}, metrics_);
    const double width = std::max(view_.box.Width(), kLeastNotes);
    std::vector<std::string> ids =
        WrapText(metrics_, PartKindIds(bank_, kind_), NoteStyle(), width);
    std::string title = PartKindRole(bank_, kind_);
    if (ids.size() == 1 && ids[0].size() <= 18) {
      title = view_.title;
      ids.clear();
    }
    const double left = view_.box.left;
    const PaperBox head = AddViewTitle(words,
                                       {.at = {left, view_.box.bottom + 8},
                                        .title = title,
                                        .caption = "SCALE " + std::string(view_.scale.name),
                                        .max_width = width},
                                       metrics_);
    double y = head.bottom + kNotePitch;
    const auto plain = [&](const std::string& text) {
      for (const std::string& line : WrapText(metrics_, text, NoteStyle(), width)) {
        // Wrapped as if fractions were stacked: in plain they take a little more.
        words.primitives.emplace_back(
            MakePlainLabel(metrics_, line, NoteStyle(1.2 * width), {left, y}));
        y += kNotePitch;
      }
    };
    for (const std::string& line : ids) plain(line);
    if (!OnlyName().empty()) plain(OnlyName());
    plain(PartKindCount(bank_, kind_));
    plain(PartKindMaterial(part_));
    if (options_.all_dimensions) {
      std::ranges::for_each(PartKindCuts(part_, bank_.units), plain);
      std::ranges::for_each(PartKindSeats(bank_, kind_), plain);
    }
    std::ranges::for_each(notes, plain);
    view_.box = Join(view_.box, Bounds(words));
    view_.groups.push_back(std::move(words));
  }

  static LabelStyle NoteStyle(double max_width = 0) {
    LabelStyle style;
    style.cap_height = kNoteCap;
    style.level = TextLevel::kBaseline;
    style.max_width = max_width;
    return style;
  }

  // The drawer's own name when the part is for that drawer alone.
  std::string OnlyName() const {
    if (kind_.parts.size() != 1 || part_.space < 0) return "";
    return bank_.spaces[static_cast<std::size_t>(part_.space)].name;
  }

  const Bank& bank_;
  const PartKind& kind_;
  const Part& part_;
  PartShape shape_;
  const ViewOptions& options_;
  const TextMetrics& metrics_;
  PaperMap map_;
  std::string path_;
  DimensionStyle style_;
  View view_;
};

}  // namespace

View PartView(const Bank& bank, const PartKind& kind, const Scale& scale,
              const ViewOptions& options, const TextMetrics& metrics) {
  return PartDrawing(bank, kind, scale, options, metrics).Draw();
}

}  // namespace tillwright
