// Section A-A: the bank cut from front to back, seen from the right. z to the right, y up.
#include <algorithm>
#include <array>

#include "draw/bank/case_pieces.h"
#include "draw/section/side_cut.h"
#include "draw/section/side_plane.h"
#include "draw/views.h"
#include "sheet/annotation.h"
#include "sheet/rich_text.h"
#include "sheet/size_chain.h"
#include "sheet/view_tools.h"
#include "spec/kinds.h"
#include "tillwright/assembly.h"

namespace tillwright {
namespace {

class SideDrawing {
 public:
  SideDrawing(const Bank& bank, const Scale& scale, const ViewOptions& options,
              const TextMetrics& metrics)
      : bank_(bank),
        assembly_(Assemble(bank)),
        options_(options),
        metrics_(metrics),
        plane_(ChooseSectionPlane(bank)) {
    view_.name = "side";
    view_.title = "SECTION A\u2013A";
    view_.scale = scale;
    view_.map.scale = scale;
    view_.outline = view_.map.Box(Extent());
  }

  View Draw() {
    DrawCase(AddViewGroup(view_, "case", "Case and opening, cut", 0));
    for (const std::size_t index : plane_.spaces) DrawSpace(index);
    DrawDimensions(AddViewGroup(view_, "sizes", "Sizes of the section", 0));
    FinishView(view_, view_.outline.left, bank_.units, metrics_);
    return std::move(view_);
  }

 private:
  const PaperMap& Map() const { return view_.map; }
  Length Rear() const {
    return bank_.casework ? bank_.casework->front_in + bank_.casework->depth : bank_.opening_depth;
  }

  // Front faces to the rear, the case's lower to its upper edge, and fronts beyond them.
  Rect Extent() const {
    Length front;
    Length rear = Rear();
    Length bottom;
    Length top = bank_.opening_height;
    if (bank_.casework) {
      const CaseBuild& c = *bank_.casework;
      bottom = -c.base - c.feet;
      top = c.height - c.base;
      if (Facts(c.back).behind) rear += c.back_thickness;
    }
    for (const CasePiece& piece : bank_.pieces) {
      front = Min(front, piece.block.z);
      rear = Max(rear, piece.block.z + piece.block.depth);
      top = Max(top, piece.block.y + piece.block.height);
    }
    for (const std::size_t index : plane_.spaces) {
      const Space& space = bank_.spaces[index];
      if (!space.HasFront()) continue;
      const Rect& r = space.front.rect;
      bottom = Min(bottom, r.y);
      top = Max(top, r.Top());
      if (IsOverlay()) front = Min(front, -space.front.thickness);
      if (space.HasBox()) rear = Max(rear, space.box.z + space.box.depth);
    }
    return {front, bottom, rear - front, top - bottom};
  }
  bool IsOverlay() const { return bank_.style == FrontStyle::kOverlay; }

  // --- The case ---------------------------------------------------------------------------------

  void DrawCase(SheetGroup& group) const {
    if (bank_.casework) {
      DrawCaseBody(group, *bank_.casework);
    } else {
      group.primitives.push_back(BoxOutline(
          Map().Box({Length(), Length(), bank_.opening_depth, bank_.opening_height}), Pen::kThin));
    }
    for (const PlacedPart& piece : assembly_.pieces()) {
      const auto wide = ExtentOf(piece.clear, JobAxis::kX);
      const bool cut = wide.low < plane_.x && plane_.x < wide.high;
      if (cut && piece.role == PartRole::kDivider) AddPiece(group, piece, {});
    }
  }

  // The cut face of a piece.
  void AddPiece(SheetGroup& group, const PlacedPart& piece, CutStock stock) const {
    stock.material = bank_.parts[piece.part].material;
    AddCut(group, BoxOf(piece), stock);
  }
  PaperBox BoxOf(const PlacedPart& piece) const {
    const Block& b = piece.block;
    return Map().Box({b.z, b.y, b.depth, b.height});
  }
  // Of the case, where it has such a part.
  void AddCasePart(SheetGroup& group, PartRole role, const CutStock& stock) const {
    if (const PlacedPart* piece = assembly_.Find(role, {})) AddPiece(group, *piece, stock);
  }

  void DrawCaseBody(SheetGroup& group, const CaseBuild& c) const {
    const PaperBox side = Map().Box({c.front_in, -c.base, c.depth, c.height});
    group.primitives.push_back(SideOutline(bank_, Map()));
    const PaperBox box = view_.outline;
    const double ground = side.bottom + Map().Size(c.feet);
    group.primitives.push_back(
        LineOf({box.left - 4, ground}, {box.right + 4, ground}, Pen::kGround));
    AddCasePart(group, PartRole::kCaseBottom, {});
    AddPiecesInSection(group, bank_, assembly_, plane_.x, Map());
    AddCasePart(group, PartRole::kCaseTop, {});
    if (c.top_none && (!c.worktop || c.worktop->width.IsZero())) {
      group.primitives.push_back(
          LineOf({box.left - 4, side.top}, {box.right + 4, side.top}, Pen::kOutline));
    }
    AddCasePart(group, PartRole::kCaseBack, {.grain = CutGrain::kUpright, .tilt = -45});
  }

  // --- One drawer -------------------------------------------------------------------------------

  void DrawSpace(std::size_t index) {
    const Space& space = bank_.spaces[index];
    const std::string id = ToText(space.id);
    SheetGroup& group = AddViewGroup(view_, id, space.name.empty() ? id : id + " " + space.name, 0);
    const PartOwner owner{PartOwner::Kind::kSpace, static_cast<int>(index)};
    if (space.HasBox()) DrawBox(group, space, owner);
    if (space.HasFront()) DrawFace(group, space.front, *assembly_.Find(PartRole::kFront, owner));
  }

  void DrawFace(SheetGroup& group, const Front& front, const PlacedPart& piece) const {
    const CutGrain grain = front.grain == Grain::kVertical ? CutGrain::kUpright : CutGrain::kAcross;
    AddPiece(group, piece, {.grain = grain, .inset = true});
  }

  void DrawBox(SheetGroup& group, const Space& space, PartOwner owner) const {
    const auto box_of = [&](PartRole role) { return BoxOf(*assembly_.Find(role, owner)); };
    const PaperBox side = box_of(PartRole::kBoxSide);
    group.primitives.push_back(BoxOutline(side, Pen::kThin));
    const PaperBox panel = box_of(PartRole::kBoxBottom);
    for (const PartRole end : {PartRole::kBoxFront, PartRole::kBoxBack}) {
      AddPiece(group, *assembly_.Find(end, owner), {.tilt = -45, .hole = panel});
    }
    group.primitives.push_back(BoxFill(panel, Tone::kPaper));
    AddPiece(group, *assembly_.Find(PartRole::kBoxBottom, owner), {});
    const bool applied = !Facts(space.box.build.fit).cut;
    const PaperBox room{box_of(PartRole::kBoxFront).right, side.top,
                        box_of(PartRole::kBoxBack).left, applied ? side.bottom : panel.top};
    DrawBoxText(group, space, room);
    DrawSlide(group, space);
  }

  // Number, size and slide inside the box, as far as they fit.
  void DrawBoxText(SheetGroup& group, const Space& space, const PaperBox& room) const {
    const std::string id = ToText(space.id);
    struct Choice {
      double cap;
      bool slide;
    };
    for (const auto [cap, slide] :
         {Choice{2.2, true}, Choice{1.8, true}, Choice{2.0, false}, Choice{1.6, false}}) {
      SheetGroup text;
      const LabelStyle bold{.cap_height = cap, .weight = TextWeight::kBold};
      const Label number = MakePlainLabel(metrics_, id, bold, {0, 0});
      text.primitives.push_back(number);
      if (options_.all_dimensions)
        AddBoxSize(text, space, cap, number.box.right + 0.8 * cap, slide);
      if (PlaceText(group, text, room)) return;
    }
    SheetGroup text;
    text.primitives.push_back(
        MakePlainLabel(metrics_, id, {.cap_height = 1.8, .weight = TextWeight::kBold}, {0, 0}));
    PlaceText(group, text, room);
  }

  void AddBoxSize(SheetGroup& text, const Space& space, double cap, double x, bool slide) const {
    const std::string id = ToText(space.id);
    const Box& box = space.box;
    const Unit unit = bank_.units;
    const LabelStyle style{.cap_height = cap};
    const Label size = MakeLabel(
        metrics_,
        FormatLength(box.height, unit) + " H \u00d7 " + FormatLength(box.depth, unit) + " D", style,
        {x, 0}, id + ".box.height " + id + ".box.depth");
    text.primitives.push_back(size);
    if (!slide) return;
    text.primitives.push_back(MakeLabel(metrics_, "SLIDE " + FormatLength(space.slide.length, unit),
                                        style, {size.box.right + 2 * cap, 0},
                                        id + ".slide.length"));
  }

  // Centers the text in the room; false when it is too large.
  static bool PlaceText(SheetGroup& group, SheetGroup& text, const PaperBox& room) {
    const PaperBox box = Bounds(text);
    if (box.Width() + 2.4 > room.Width() || box.Height() + 1.6 > room.Height()) return false;
    Shift(text, room.Center().x - box.Center().x, room.Center().y - box.Center().y);
    std::ranges::move(text.primitives, std::back_inserter(group.primitives));
    return true;
  }

  // The line that the slide is mounted to, as long as the slide.
  void DrawSlide(SheetGroup& group, const Space& space) const {
    const Slide& slide = space.slide;
    const Box& box = space.box;
    const double y = Map().Y(slide.line_y);
    const std::vector<PaperBox> texts = LabelBoxes(std::span(&group, 1));
    AddBroken(group, LineOf({Map().X(box.z), y}, {Map().X(box.z + slide.length), y}, Pen::kCenter),
              texts);
  }

  // --- Dimensions -------------------------------------------------------------------------------

  void AddTier(DimensionStack& stack, SizeChain chain) const {
    static constexpr std::array<std::string_view, 1> kLesser{".clear."};
    AddTierWithRoom(stack, std::move(chain), Map(), bank_.units, {.lesser = kLesser}, metrics_);
  }

  void DrawDimensions(SheetGroup& group) const {
    DimensionStack right{.side = PaperSide::kRight, .edge = view_.outline.right};
    if (options_.all_dimensions) AddTier(right, Boxes());
    AddTier(right, Upright());
    const PaperBox beside = AddDimensionStack(group, right, DimensionStyle(), metrics_);
    DimensionStack below{.side = PaperSide::kBelow,
                         .edge = std::max(view_.outline.bottom + 1, beside.bottom - 4)};
    for (const SizeChain& chain : Depths()) AddTier(below, chain);
    for (const DimensionChain& tier : below.tiers) {
      for (const double station : tier.stations) {
        below.starts.push_back({station, view_.outline.bottom});
      }
    }
    AddDimensionStack(group, below, DimensionStyle(), metrics_);
  }

  // Boxes with what is left below and above them in their cells.
  SizeChain Boxes() const {
    SizeChain chain;
    constexpr std::size_t kMost = 250;  // more find no room on paper
    if (plane_.spaces.size() > kMost) return chain;
    for (auto i = plane_.spaces.rbegin(); i != plane_.spaces.rend(); ++i) {
      const Space& space = bank_.spaces[*i];
      if (!space.HasBox()) continue;
      const std::string id = ToText(space.id);
      const Length top = space.box.y + space.box.height;
      chain.Add(space.cell.y, space.box.y, id + ".clear.below");
      chain.Add(space.box.y, top, id + ".box.height");
      chain.Add(top, space.cell.Top(), id + ".clear.above");
    }
    return chain;
  }

  // Bottom, opening and top of the case.
  SizeChain Upright() const {
    SizeChain chain;
    const Length high = bank_.opening_height;
    if (bank_.casework) {
      const CaseBuild& c = *bank_.casework;
      const Length edge = c.EdgeAt(Edge::kBottom);
      chain.Add(-c.base, -edge, "case.raise");
      chain.Add(-edge, Length(), c.frame ? "case.face_frame.bottom_rail" : "case.bottom");
    }
    chain.Add(Length(), high, "opening.height");
    if (bank_.casework) {
      const CaseBuild& c = *bank_.casework;
      chain.Add(high, high + c.EdgeAt(Edge::kTop), c.frame ? "case.face_frame.rail" : "case.top");
    }
    return chain;
  }

  // From the front: the lowest drawer's front, box and the room behind it; opening; case.
  std::vector<SizeChain> Depths() const {
    std::vector<SizeChain> chains(3);
    const auto lowest = std::find_if(plane_.spaces.rbegin(), plane_.spaces.rend(),
                                     [&](std::size_t i) { return bank_.spaces[i].HasBox(); });
    if (lowest != plane_.spaces.rend() && options_.all_dimensions) {
      const Space& space = bank_.spaces[*lowest];
      const std::string id = ToText(space.id);
      const Length t = space.front.thickness;
      const Length z = IsOverlay() ? -t : Length();
      const Length rear = space.box.z + space.box.depth;
      chains[0].Add(z, z + t, id + ".front.thickness");
      chains[0].Add(space.box.z, rear, id + ".box.depth");
      chains[0].Add(rear, bank_.opening_depth, id + ".clear.behind");
      if (bank_.casework && rear <= bank_.opening_depth) {
        chains[0].Add(bank_.opening_depth, bank_.opening_depth + bank_.casework->back_allowance,
                      "case.back_allowance");
      }
    }
    chains[1].Add(Length(), bank_.opening_depth, "opening.depth");
    if (bank_.casework && bank_.casework->depth != bank_.opening_depth) {
      const CaseBuild& c = *bank_.casework;
      chains[2].Add(c.front_in, c.front_in + c.depth, "case.depth");
    }
    return chains;
  }

  const Bank& bank_;
  Assembly assembly_;
  const ViewOptions& options_;
  const TextMetrics& metrics_;
  SectionPlane plane_;
  View view_;
};

}  // namespace

View SideSection(const Bank& bank, const Scale& scale, const ViewOptions& options,
                 const TextMetrics& metrics) {
  return SideDrawing(bank, scale, options, metrics).Draw();
}

}  // namespace tillwright
