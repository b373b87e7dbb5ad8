#include <algorithm>

#include "bank/part_roles.h"
#include "draw/overview/overview.h"
#include "draw/overview/overview_parts.h"
#include "sheet/annotation.h"
#include "sheet/rich_text.h"
#include "sheet/solid_ink.h"
#include "sheet/view_tools.h"

namespace tillwright {
namespace {

// How far parts stand apart.
struct Spacing {
  Length across, down, along;
};
Spacing SpacingOf(const Box& box) {
  return {PartBelow(box.width, 6), box.height + PartBelow(box.depth, 4), PartBelow(box.depth, 3)};
}

// Moves a part out of the drawer, the way it goes in. The front goes twice as far as the front end.
Cuboid MovedOut(const SolidPart& part, const Spacing& by) {
  Cuboid box = part.box;
  const PartRoleFacts& facts = Facts(part.piece->role);
  const std::int64_t left = facts.in_pairs && !part.piece->mirrored ? -1 : 1;
  const std::int64_t steps = left * facts.out;
  switch (facts.frame.into.axis) {
    case JobAxis::kX:
      box.at.x += steps * by.across;
      break;
    case JobAxis::kY:
      box.at.y += steps * by.down;
      break;
    case JobAxis::kZ:
      box.at.z += steps * by.along;
      break;
  }
  return box;
}

std::string NameOf(const SolidPart& part) {
  const PartRoleFacts& facts = Facts(part.piece->role);
  const std::string name(facts.apart);
  if (!facts.in_pairs) return name;
  return (part.piece->mirrored ? "Right " : "Left ") + name;
}

class ExplodedDrawing {
 public:
  ExplodedDrawing(const Bank& bank, std::size_t space, const Scale& scale,
                  const TextMetrics& metrics)
      : bank_(bank),
        assembly_(Assemble(bank)),
        space_(bank.spaces[space]),
        scale_(scale),
        metrics_(metrics),
        axes_(scale),
        picture_(axes_),
        parts_(DrawerSolids(assembly_, space)) {}

  View Draw() {
    view_.scale = scale_;
    view_.map = {{0, 0}, scale_};
    const std::string id = ToText(space_.id);
    view_.name = "drawer-d" + std::to_string(space_.id.number);
    view_.title = "DRAWER " + id + " EXPLODED";
    const Spacing by = SpacingOf(space_.box);
    std::vector<Cuboid> moved;
    for (const SolidPart& part : parts_) moved.push_back(MovedOut(part, by));
    const std::vector<std::size_t> places = picture_.AddLayer(moved);
    AddPaths(moved);
    AddParts(places);
    view_.outline = picture_.Covered();
    AddNotes(places);
    AddTitle();
    view_.box = Bounds(std::span(view_.groups));
    return std::move(view_);
  }

 private:
  SheetGroup& Group(const std::string& id, std::string title, int depth) {
    return AddViewGroup(view_, id, std::move(title), depth);
  }

  // Assembly lines, below everything: from two corners of each to where they belong.
  void AddPaths(const std::vector<Cuboid>& moved) {
    SheetGroup& group = Group("paths", "Assembly lines", 0);
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      const Cuboid& home = parts_[i].box;
      for (const bool second : {false, true}) {
        const Place3 corner = Corner(parts_[i], second);
        const auto at = [&](const Cuboid& box) {
          return axes_.At({box.at.x + corner.x, box.at.y + corner.y, box.at.z + corner.z});
        };
        group.primitives.emplace_back(LineOf(at(moved[i]), at(home), Pen::kCenter));
      }
    }
  }

  // One of two upper corners of a part, from its own corner: of a side its ends, else left and
  // right.
  static Place3 Corner(const SolidPart& part, bool second) {
    const Cuboid& box = part.box;
    if (part.piece->role == PartRole::kBoxSide) {
      return {part.piece->mirrored ? Length() : box.width, box.height,
              second ? box.depth : Length()};
    }
    const bool back = part.piece->role == PartRole::kBoxBack;
    return {second ? box.width : Length(), box.height, back ? Length() : box.depth};
  }

  // Each in a group of its own, in the order in which they were placed.
  void AddParts(const std::vector<std::size_t>& places) {
    std::vector<std::size_t> order(parts_.size());
    for (std::size_t i = 0; i < parts_.size(); ++i) order[places[i]] = i;
    for (const std::size_t i : order) {
      const Cuboid& box = picture_.boxes()[places[i]];
      SheetGroup& group = Group("part-" + std::to_string(i + 1), NameOf(parts_[i]), 0);
      AddCuboid(group, box, axes_, Pen::kFront);
      AddGrooves(group, parts_[i], box);
      if (Facts(parts_[i].piece->role).group == PartGroup::kFront) AddHoles(group, box);
    }
  }

  // The groove or rabbet for the bottom, where the inside face is seen: on the left side's right
  // face and the back end's front face.
  void AddGrooves(SheetGroup& group, const SolidPart& part, const Cuboid& box) const {
    const bool side = part.piece->role == PartRole::kBoxSide && !part.piece->mirrored;
    if (!side && part.piece->role != PartRole::kBoxBack) return;
    for (const PlacedCut& cut : part.piece->cuts) {
      if (cut.purpose != CutPurpose::kBoxBottom) continue;
      for (const Length up : {cut.low, cut.high}) {
        if (up <= Length() || up >= box.height) continue;
        const Length y = box.at.y + up;
        const Place3 from = side ? Place3{box.Right(), y, box.at.z} : Place3{box.at.x, y, box.at.z};
        const Place3 to =
            side ? Place3{box.Right(), y, box.Rear()} : Place3{box.Right(), y, box.at.z};
        group.primitives.emplace_back(LineOf(axes_.At(from), axes_.At(to), Pen::kThin));
      }
    }
  }

  void AddHoles(SheetGroup& group, const Cuboid& box) const {
    for (const PullHole& hole : space_.front.pulls) {
      group.primitives.emplace_back(
          Circle{axes_.At({hole.x, hole.y, box.at.z}), 0.5, Pen::kThin, Tone::kNone});
    }
  }

  void AddNotes(const std::vector<std::size_t>& places) {
    std::vector<PartNote> notes;
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      const bool left = IsLeft(parts_[i]);
      const auto tip = picture_.PointInSight(places[i], left ? 0.08 : 0.8);
      if (!tip) continue;
      PartNote note{*tip, NameOf(parts_[i]), "", "", left};
      const Part& part = bank_.parts[parts_[i].piece->part];
      const std::string path = "part." + PartId(bank_, part) + ".";
      note.sizes = In(part.length) + " × " + In(part.width) + " × " + In(part.thickness);
      note.path = path + "length " + path + "width " + path + "thickness";
      notes.push_back(std::move(note));
    }
    AddPartNotes(Group("names", "Names of the parts", 0), notes, view_.outline, metrics_);
  }

  // The front parts stand to the lower left.
  static bool IsLeft(const SolidPart& part) {
    return Facts(part.piece->role).group == PartGroup::kFront ||
           part.piece->role == PartRole::kBoxFront ||
           (part.piece->role == PartRole::kBoxSide && !part.piece->mirrored);
  }

  std::string In(Length length) const { return FormatLength(length, bank_.units); }

  void AddTitle() {
    const PaperBox below = Bounds(std::span(view_.groups));
    SheetGroup& group = Group("title", view_.title, 0);
    const PaperPoint at{below.left, below.bottom + 9};
    const std::string scale(scale_.name);
    const PaperBox head = AddViewTitle(
        group, {.at = at, .title = view_.title, .caption = "SCALE " + scale + ", DEPTHS HALVED"},
        metrics_);
    if (space_.name.empty()) return;
    LabelStyle style;
    style.cap_height = 2;
    style.level = TextLevel::kBaseline;
    style.max_width = std::max(below.Width(), 60.0);
    group.primitives.emplace_back(
        MakePlainLabel(metrics_, space_.name, style, {at.x, head.bottom + 4}));
  }

  const Bank& bank_;
  Assembly assembly_;
  const Space& space_;
  Scale scale_;
  const TextMetrics& metrics_;
  Axonometry axes_;
  SolidPicture picture_;
  std::vector<SolidPart> parts_;
  View view_;
};

}  // namespace

View DrawerExploded(const Bank& bank, std::size_t space, const Scale& scale,
                    const ViewOptions& /*options*/, const TextMetrics& metrics) {
  return ExplodedDrawing(bank, space, scale, metrics).Draw();
}

}  // namespace tillwright
