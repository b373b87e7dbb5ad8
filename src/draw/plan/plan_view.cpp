#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "draw/plan/plan_box.h"
#include "draw/plan/plan_dims.h"
#include "draw/plan/plan_faces.h"
#include "draw/plan/plan_ink.h"
#include "draw/plan/plan_sizes.h"
#include "draw/plan/plan_words.h"
#include "draw/views.h"
#include "sheet/rich_text.h"
#include "sheet/view_tools.h"
#include "spec/kinds.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

constexpr double kStub = 6;        // mm on paper of what runs on past a partition
constexpr double kNoteStep = 7.5;  // mm between the notes inside the box

Length OnPiece(double paper, const Scale& scale) {
  return Length::Picometers(std::llround(paper / scale.paper_per_mm * 1e3) *
                            (Length::kPerMillimeter / 1000));
}

// Draws one plan. The view's zero, the opening's left front corner, lies at (0, 0).
class PlanDrawing {
 public:
  PlanDrawing(const Bank& bank, std::size_t space, const Scale& scale, const ViewOptions& options,
              const TextMetrics& metrics)
      : bank_(bank),
        space_(bank.spaces[space]),
        options_(options),
        metrics_(metrics),
        id_(ToText(space_.id)),
        scope_(PlanScopeOf(bank, space, OnPiece(kStub, scale))),
        map_{{0, 0}, scale} {
    const Box& box = space_.box;
    const Length low = box.z + box.build.end;
    inside_ = {map_.X(box.x + box.build.side), map_.Y(low + box.inside_depth),
               map_.X(box.x + box.build.side + box.inside_width), map_.Y(low)};
    const Length front = bank.style == FrontStyle::kInset ? Length() : -space_.front.thickness;
    outline_ = {map_.X(scope_.left.end), map_.Y(scope_.rear), map_.X(scope_.right.end),
                map_.Y(front)};
  }

  View Draw() {
    view_.name = "plan-" + Lowered(id_);
    view_.title = "PLAN THROUGH " + id_;
    view_.scale = map_.scale;
    view_.map = map_;
    view_.outline = outline_;
    SheetGroup inside = Group("inside", "Inside of " + id_);
    if (inside_.Width() > 12 && inside_.Height() > 8) DrawInside(inside);
    DrawParts(LabelBoxes({&inside, 1}));
    view_.groups.push_back(std::move(inside));
    DrawDimensions();
    FinishView(view_, outline_.left, bank_.units, metrics_);
    return std::move(view_);
  }

 private:
  [[nodiscard]] std::string Path(std::string_view name) const {
    return id_ + "." + std::string(name);
  }
  [[nodiscard]] SheetGroup Group(std::string_view what, std::string title) const {
    SheetGroup group;
    group.id = view_.name + "-" + std::string(what);
    group.title = std::move(title);
    return group;
  }

  // --- Parts ------------------------------------------------------------------------------------

  void DrawParts(std::vector<PaperBox> holes) {
    const Faces faces = PlanFaces(bank_, scope_);
    FaceInk ink;
    ink.holes = std::move(holes);
    struct Layer {
      FaceOwner owner;
      const char* what;
      std::string title;
    };
    const std::array layers{
        Layer{FaceOwner::kCase, "case", bank_.casework ? "Case" : "Opening"},
        Layer{FaceOwner::kSlide, "slides", "Slides: " + std::string(Word(space_.slide.type))},
        Layer{FaceOwner::kBox, "box", "Box of " + id_},
        Layer{FaceOwner::kFront, "front", "Front of " + id_}};
    for (const Layer& layer : layers) {
      SheetGroup group = Group(layer.what, layer.title);
      DrawFaces(group, faces, layer.owner, map_, ink);
      view_.groups.push_back(std::move(group));
    }
    SheetGroup breaks = Group("breaks", "Broken off");
    if (!IsBounded(scope_.left)) AddBreak(breaks, outline_.left);
    if (!IsBounded(scope_.right)) AddBreak(breaks, outline_.right);
    if (!breaks.primitives.empty()) view_.groups.push_back(std::move(breaks));
  }

  // A thin line with one zigzag where the drawing ends before the piece does.
  void AddBreak(SheetGroup& out, double x) const {
    const double low = outline_.bottom + 2;
    const double high = outline_.top - 2;
    const double middle = (low + high) / 2;
    out.primitives.push_back(Polyline{{{x, low},
                                       {x, middle + 1.6},
                                       {x - 1.6, middle + 0.7},
                                       {x + 1.6, middle - 0.7},
                                       {x, middle - 1.6},
                                       {x, high}},
                                      false,
                                      Pen::kThin,
                                      Tone::kNone});
  }

  // --- Inside the box ---------------------------------------------------------------------------

  // Half the width of the text that stands in the line of the inside depth.
  [[nodiscard]] double HalfDepthText() const {
    const DimensionText text = TextOf(bank_, Path("box.inside_depth"));
    const LabelStyle style{.cap_height = DimensionStyle().cap_height};
    return MeasureLabel(metrics_, text.text, style).width / 2;
  }
  [[nodiscard]] double DepthLine() const {
    return inside_.right - std::max({8.0, 0.14 * inside_.Width(),
                                     SlideReach() + HalfDepthText() + 2, HalfDepthText() + 3});
  }
  // Beside the line of the inside depth, for the name.
  [[nodiscard]] double NameRoom() const {
    return 2 * (DepthLine() - HalfDepthText() - 2 - inside_.Center().x);
  }
  [[nodiscard]] bool HasRoomInside() const {
    return inside_.Width() >= 34 && inside_.Height() >= 30 && NameRoom() >= 9;
  }
  [[nodiscard]] double SlideReach() const {
    const SlideType type = space_.slide.type;
    const bool under = Facts(type).place == SlidePlace::kUnder;
    return under ? map_.Size(RunnerReach(space_.box)) : 0;
  }

  void DrawInside(SheetGroup& out) const {
    if (options_.all_dimensions && HasRoomInside()) DrawInsideSizes(out);
    const std::vector<NoteLine> notes = Notes();
    const bool noted = FitNotes(notes);
    const double lift = noted ? kNoteStep * static_cast<double>(notes.size()) / 2 : 0;
    DrawName(out, lift);
    if (noted) DrawNotes(out, notes);
  }

  void DrawInsideSizes(SheetGroup& out) const {
    const double y = inside_.top + std::max(7.0, 0.13 * inside_.Height());
    SingleDimension across{.side = PaperSide::kAbove,
                           .from = inside_.left,
                           .to = inside_.right,
                           .line = y,
                           .from_edge = y,
                           .to_edge = y,
                           .text = TextOf(bank_, Path("box.inside_width"))};
    AddSingleDimension(out, across, DimensionStyle(), metrics_);
    const double x = DepthLine();
    SingleDimension deep{.side = PaperSide::kLeft,
                         .from = inside_.top,
                         .to = inside_.bottom,
                         .line = x,
                         .from_edge = x,
                         .to_edge = x,
                         .text = TextOf(bank_, Path("box.inside_depth"))};
    AddSingleDimension(out, deep, DimensionStyle(), metrics_);
  }

  void DrawName(SheetGroup& out, double lift) const {
    const bool sized = options_.all_dimensions && HasRoomInside();
    const double room = sized ? NameRoom() : inside_.Width() - 4;
    const double middle = inside_.Center().x;
    double y = inside_.Center().y - lift;
    LabelStyle bold{.cap_height = 3, .weight = TextWeight::kBold, .anchor = TextAnchor::kCenter};
    bold.max_width = std::max(room, 6.0);
    out.primitives.push_back(MakePlainLabel(metrics_, id_, bold, {middle, y}));
    if (space_.name.empty() || room < 14 || inside_.Height() < 22) return;
    LabelStyle plain{.cap_height = 2.2, .anchor = TextAnchor::kCenter};
    const std::vector<std::string> lines = NameLines(plain, room);
    plain.max_width = room;
    double pitch = 5.2;
    for (const std::string& line : lines) {
      y += pitch;
      pitch = 3.9;
      out.primitives.push_back(MakePlainLabel(metrics_, line, plain, {middle, y}));
    }
  }

  // The drawer's name in at most two lines; what is over will be cut off at the end of the second.
  [[nodiscard]] std::vector<std::string> NameLines(const LabelStyle& style, double room) const {
    std::vector<std::string> lines = WrapText(metrics_, space_.name, style, room);
    for (; lines.size() > 2; lines.erase(lines.begin() + 2)) lines[1] += ' ' + lines[2];
    return lines;
  }

  // What the drawing shows but does not say: slide, corner, bottom; from the rear to the front.
  [[nodiscard]] std::vector<NoteLine> Notes() const {
    return {{SlideWords(space_.slide.type), ""},
            {BottomWords(space_.box.build), ""},
            {CornerWords(space_.box.build.joint), ""}};
  }

  [[nodiscard]] double NotesLeft() const { return inside_.left + SlideReach() + 7; }

  [[nodiscard]] bool FitNotes(const std::vector<NoteLine>& notes) const {
    if (!options_.all_dimensions || !HasRoomInside()) return false;
    double widest = 0;
    for (const NoteLine& note : notes) {
      widest = std::max(widest, MeasureLabel(metrics_, note.text, {.cap_height = 2.2}).width);
    }
    const double height = kNoteStep * static_cast<double>(notes.size()) + 34;
    const double right = Facts(space_.slide.type).place == SlidePlace::kUnderMiddle
                             ? SlideTip() - 4
                             : DepthLine() - HalfDepthText() - 3;
    return NotesLeft() + 4 + widest < right && inside_.Height() > height;
  }

  void DrawNotes(SheetGroup& out, const std::vector<NoteLine>& notes) const {
    const Box& box = space_.box;
    const double first = inside_.bottom - 5 - kNoteStep * static_cast<double>(notes.size());
    const std::array tips{PaperPoint{SlideTip(), first - 4},
                          PaperPoint{inside_.left + SlideReach() + 3, first + kNoteStep + 4},
                          PaperPoint{map_.X(box.x) + map_.Size(box.build.side) / 2,
                                     map_.Y(box.z) - map_.Size(box.build.end) / 2}};
    for (std::size_t i = 0; i < notes.size(); ++i) {
      PathNote note;
      note.tip = tips[i];
      note.elbow = {NotesLeft(), first + kNoteStep * static_cast<double>(i)};
      if (i == 0 && Facts(space_.slide.type).place == SlidePlace::kUnderMiddle) {
        note.elbow.x = SlideTip() - 5;
        note.text_left = true;
      }
      note.dot = i == 1;
      note.lines = {notes[i]};
      AddPathNote(out, note, metrics_);
    }
  }

  [[nodiscard]] double SlideTip() const {
    const Box& box = space_.box;
    switch (Facts(space_.slide.type).place) {
      case SlidePlace::kBeside:
        return map_.X(box.x);
      case SlidePlace::kUnder:
        return inside_.left + SlideReach();
      case SlidePlace::kUnderMiddle:
        break;
    }
    return inside_.Center().x - map_.Size(CenterHalf(space_.box));
  }

  // --- Dimensions -------------------------------------------------------------------------------

  void DrawDimensions() {
    SheetGroup group = Group("dimensions", "Dimensions");
    AddPlanSizes(group,
                 {bank_, scope_, map_, inside_, outline_,
                  options_.all_dimensions ? PlanDetail::kAll : PlanDetail::kKey, HasRoomInside()},
                 metrics_);
    view_.groups.push_back(std::move(group));
  }

  const Bank& bank_;
  const Space& space_;
  const ViewOptions& options_;
  const TextMetrics& metrics_;
  std::string id_;
  PlanScope scope_;
  PaperMap map_;
  PaperBox inside_{};
  PaperBox outline_{};
  View view_;
};

}  // namespace

View PlanSection(const Bank& bank, std::size_t space, const Scale& scale,
                 const ViewOptions& options, const TextMetrics& metrics) {
  return PlanDrawing(bank, space, scale, options, metrics).Draw();
}

}  // namespace tillwright
