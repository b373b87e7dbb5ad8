#include "draw/bank/dimension_paths.h"

#include <algorithm>
#include <charconv>
#include <span>

#include "stock/part_seats.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

using Found = std::optional<Length>;

// One dimension of a thing: its name below the thing's own, and how it is read.
template <class Thing>
struct Row {
  std::string_view name;
  Length (*value)(const Thing&);
};

template <class Thing, std::size_t N>
Found Look(const Row<Thing> (&rows)[N], const Thing& thing, std::string_view name) {
  for (const Row<Thing>& row : rows) {
    if (row.name == name) return row.value(thing);
  }
  return std::nullopt;
}

// A whole number of at least 1, or 0.
int NumberIn(std::string_view text) {
  int number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  return error == std::errc() && end == text.data() + text.size() && number > 0 ? number : 0;
}

// Takes what stands before the next dot off the front of `text`.
std::string_view TakeWord(std::string_view& text) {
  const std::size_t dot = text.find('.');
  const std::string_view word = text.substr(0, dot);
  text = dot == std::string_view::npos ? std::string_view() : text.substr(dot + 1);
  return word;
}

bool TakePrefix(std::string_view& text, std::string_view prefix) {
  if (!text.starts_with(prefix)) return false;
  text.remove_prefix(prefix.size());
  return true;
}

// --- The opening, the case and the bank
// -----------------------------------------------------------

constexpr Row<Bank> kBankRows[] = {
    {"round", [](const Bank& b) { return b.round; }},
    {"opening.width", [](const Bank& b) { return b.opening_width; }},
    {"opening.height", [](const Bank& b) { return b.opening_height; }},
    {"opening.depth", [](const Bank& b) { return b.opening_depth; }},
    {"overlay.top", [](const Bank& b) { return b.overlay[0]; }},
    {"overlay.bottom", [](const Bank& b) { return b.overlay[1]; }},
    {"overlay.left", [](const Bank& b) { return b.overlay[2]; }},
    {"overlay.right", [](const Bank& b) { return b.overlay[3]; }},
};

constexpr Row<CaseBuild> kCaseRows[] = {
    {"width", [](const CaseBuild& c) { return c.width; }},
    {"height", [](const CaseBuild& c) { return c.height; }},
    {"depth", [](const CaseBuild& c) { return c.depth; }},
    {"side", [](const CaseBuild& c) { return c.side; }},
    {"bottom", [](const CaseBuild& c) { return c.bottom; }},
    {"top", [](const CaseBuild& c) { return c.top; }},
    {"raise", [](const CaseBuild& c) { return c.raise; }},
    {"floor", [](const CaseBuild& c) { return c.base; }},
    {"feet", [](const CaseBuild& c) { return c.feet; }},
    {"side_in", [](const CaseBuild& c) { return c.side_in; }},
    {"high_in", [](const CaseBuild& c) { return c.high_in; }},
    {"stretcher", [](const CaseBuild& c) { return c.stretcher_width; }},
    {"toe_kick.setback", [](const CaseBuild& c) { return c.kick_setback; }},
    {"frame.stile", [](const CaseBuild& c) { return c.frame ? c.frame->stile : Length(); }},
    {"frame.rail", [](const CaseBuild& c) { return c.frame ? c.frame->rail : Length(); }},
    {"frame.bottom_rail",
     [](const CaseBuild& c) { return c.frame ? c.frame->bottom_rail : Length(); }},
    {"frame.thickness", [](const CaseBuild& c) { return c.front_in; }},
    {"worktop.thickness",
     [](const CaseBuild& c) { return c.worktop ? c.worktop->thickness : Length(); }},
    {"joint.depth", [](const CaseBuild& c) { return c.joint_depth; }},
    {"joint.tongue", [](const CaseBuild& c) { return c.tongue; }},
    {"back", [](const CaseBuild& c) { return c.back_thickness; }},
    {"back.lap", [](const CaseBuild& c) { return c.back_lap; }},
    {"back.inset", [](const CaseBuild& c) { return c.back_inset; }},
    {"back.depth", [](const CaseBuild& c) { return c.back_depth; }},
    {"back.play", [](const CaseBuild& c) { return c.back_play; }},
    {"back.allowance", [](const CaseBuild& c) { return c.back_allowance; }},
    {"back.panel_width", [](const CaseBuild& c) { return c.panel_width; }},
    {"back.panel_height", [](const CaseBuild& c) { return c.panel_height; }},
    {"member_length", [](const CaseBuild& c) { return c.member_length; }},
};

// --- Spaces
// -----------------------------------------------------------------------------------------

constexpr Row<Rect> kRectRows[] = {
    {"x", [](const Rect& r) { return r.x; }},
    {"y", [](const Rect& r) { return r.y; }},
    {"width", [](const Rect& r) { return r.width; }},
    {"height", [](const Rect& r) { return r.height; }},
    {"right", [](const Rect& r) { return r.Right(); }},
    {"top", [](const Rect& r) { return r.Top(); }},
};

constexpr Row<Slide> kSlideRows[] = {
    {"length", [](const Slide& s) { return s.length; }},
    {"line_y", [](const Slide& s) { return s.line_y; }},
    {"line", [](const Slide& s) { return s.line; }},
    {"clearance", [](const Slide& s) { return s.clearance; }},
    {"deduct", [](const Slide& s) { return s.deduct; }},
    {"side_max", [](const Slide& s) { return s.side_max; }},
    {"behind", [](const Slide& s) { return s.behind; }},
};

constexpr Row<Box> kBoxRows[] = {
    {"x", [](const Box& b) { return b.x; }},
    {"y", [](const Box& b) { return b.y; }},
    {"z", [](const Box& b) { return b.z; }},
    {"width", [](const Box& b) { return b.width; }},
    {"height", [](const Box& b) { return b.height; }},
    {"depth", [](const Box& b) { return b.depth; }},
    {"right", [](const Box& b) { return b.x + b.width; }},
    {"top", [](const Box& b) { return b.y + b.height; }},
    {"rear", [](const Box& b) { return b.z + b.depth; }},
    {"inside_width", [](const Box& b) { return b.inside_width; }},
    {"inside_depth", [](const Box& b) { return b.inside_depth; }},
    {"inside_height", [](const Box& b) { return b.inside_height; }},
    {"side_length", [](const Box& b) { return b.side_length; }},
    {"end_length", [](const Box& b) { return b.end_length; }},
    {"wood_height", [](const Box& b) { return b.wood_height; }},
    {"back_height", [](const Box& b) { return b.back_height; }},
    {"panel_width", [](const Box& b) { return b.panel_width; }},
    {"panel_depth", [](const Box& b) { return b.panel_depth; }},
};

constexpr Row<BoxBuild> kBuildRows[] = {
    {"side.thickness", [](const BoxBuild& b) { return b.side; }},
    {"box_front.thickness", [](const BoxBuild& b) { return b.end; }},
    {"box_back.thickness", [](const BoxBuild& b) { return b.end; }},
    {"bottom.thickness", [](const BoxBuild& b) { return b.bottom; }},
    {"groove.depth", [](const BoxBuild& b) { return b.groove; }},
    {"groove.width", [](const BoxBuild& b) { return b.bottom; }},
    {"groove.up", [](const BoxBuild& b) { return b.up; }},
    {"bottom.play", [](const BoxBuild& b) { return b.play; }},
    {"corner.depth", [](const BoxBuild& b) { return b.joint_depth; }},
    {"corner.lap", [](const BoxBuild& b) { return b.lap; }},
    {"corner.pin", [](const BoxBuild& b) { return b.end - b.lap; }},
    {"corner.back_setback", [](const BoxBuild& b) { return b.back_setback; }},
    {"corner.left", [](const BoxBuild& b) { return b.side - b.joint_depth; }},
    {"box.clear_below", [](const BoxBuild& b) { return b.clear_below; }},
    {"box.clear_above", [](const BoxBuild& b) { return b.clear_above; }},
};

// What is left between a box and its cell, whatever was asked for.
constexpr Row<Space> kClearRows[] = {
    {"left", [](const Space& s) { return s.box.x - s.cell.x; }},
    {"right", [](const Space& s) { return s.cell.Right() - s.box.x - s.box.width; }},
    {"below", [](const Space& s) { return s.box.y - s.cell.y; }},
    {"above", [](const Space& s) { return s.cell.Top() - s.box.y - s.box.height; }},
    {"front_below", [](const Space& s) { return s.box.y - s.front.rect.y; }},
    {"front_above", [](const Space& s) { return s.front.rect.Top() - s.box.y - s.box.height; }},
};

// "1.x", "1.left", "1.next": the place of a pull's hole, how far it is from the front's edges, and
// from the hole after it.
Found PullValue(const Front& front, std::string_view name) {
  const auto number = static_cast<std::size_t>(NumberIn(TakeWord(name)));
  if (number == 0 || number > front.pulls.size()) return std::nullopt;
  const PullHole& hole = front.pulls[number - 1];
  const Rect& r = front.rect;
  if (name == "x") return hole.x;
  if (name == "y") return hole.y;
  if (name == "left") return hole.x - r.x;
  if (name == "right") return r.Right() - hole.x;
  if (name == "below") return hole.y - r.y;
  if (name == "above") return r.Top() - hole.y;
  if (name == "next" && number < front.pulls.size()) return front.pulls[number].x - hole.x;
  return std::nullopt;
}

Found FrontValue(const Front& front, std::string_view name) {
  if (name == "thickness") return front.thickness;
  if (TakePrefix(name, "pull.")) return PullValue(front, name);
  return Look(kRectRows, front.rect, name);
}

Found DrawerValue(const Bank& bank, const Space& space, std::string_view name) {
  if (const Found found = Look(kBuildRows, space.box.build, name)) return found;
  if (name == "clear.behind") return bank.opening_depth - space.box.z - space.box.depth;
  const std::string_view thing = TakeWord(name);
  if (thing == "slide") return Look(kSlideRows, space.slide, name);
  if (thing == "box") return Look(kBoxRows, space.box, name);
  if (thing == "clear") return Look(kClearRows, space, name);
  return std::nullopt;
}

Found SpaceValue(const Bank& bank, const Space& space, std::string_view name) {
  std::string_view rest = name;
  const std::string_view thing = TakeWord(rest);
  if (thing == "cell") return Look(kRectRows, space.cell, rest);
  if (thing == "region" || thing == "space") return Look(kRectRows, space.region, rest);
  if (thing == "front" && space.HasFront()) return FrontValue(space.front, rest);
  return space.HasBox() ? DrawerValue(bank, space, name) : std::nullopt;
}

Found MemberValue(const Divider& member, std::string_view name) {
  if (name == "length") return member.length;
  if (name == "begin") return member.begin;
  if (name == "depth") return member.depth;
  if (name == "thickness") return member.partition ? member.rect.width : member.rect.height;
  return Look(kRectRows, member.rect, name);
}

// --- Gaps, overlaps and parts
// ---------------------------------------------------------------------

Found GapValue(const Bank& bank, std::string_view path) {
  for (const Gap& gap : bank.gaps) {
    if (GapPath(bank, gap) == path) return gap.size;
  }
  return std::nullopt;
}

// The thickness of the case's edge that a front covers.
Found CaseEdge(const Bank& bank, Edge edge) {
  if (!bank.casework) return std::nullopt;
  return bank.casework->EdgeAt(edge);
}

// "D1.top": the overlap, or the strip of case edge left beside it.
Found OverlapValue(const Bank& bank, std::string_view name, bool reveal) {
  const std::string_view id = TakeWord(name);
  for (const Overlap& overlap : bank.overlaps) {
    if (Word(overlap.edge) != name) continue;
    if (ToText(bank.spaces[static_cast<std::size_t>(overlap.space)].id) != id) continue;
    if (!reveal) return overlap.size;
    const Found edge = CaseEdge(bank, overlap.edge);
    return edge ? Found(*edge - overlap.size) : std::nullopt;
  }
  return std::nullopt;
}

Found CutValue(const Part& part, std::string_view name) {
  const auto number = static_cast<std::size_t>(NumberIn(TakeWord(name)));
  if (number == 0 || number > part.cuts.size()) return std::nullopt;
  const Cut& cut = part.cuts[number - 1];
  if (name == "offset") return cut.offset;
  if (name == "width") return cut.width;
  if (name == "depth") return cut.depth;
  if (name == "left") return part.thickness - cut.depth;  // wood under the cut
  return std::nullopt;
}

// "D1.side.length", "case.side.cut.2.offset". Ids hold dots, so the part is sought by its id.
Found PartValue(const Bank& bank, std::string_view path) {
  for (const Part& part : bank.parts) {
    std::string_view name = path;
    if (!TakePrefix(name, PartId(bank, part)) || !TakePrefix(name, ".")) continue;
    if (name == "length") return part.length;
    if (name == "width") return part.width;
    if (name == "thickness") return part.thickness;
    if (name == "notch.width") return part.notch.width;
    if (name == "notch.height") return part.notch.height;
    if (TakePrefix(name, "cut.")) return CutValue(part, name);
    if (TakePrefix(name, "seat.")) return SeatValue(bank, part, name);
  }
  return std::nullopt;
}

// D1, B1, O1, H1, V1 and what follows.
Found NumberedValue(const Bank& bank, std::string_view path) {
  std::string_view name = path;
  const std::string_view id = TakeWord(name);
  const int number = id.empty() ? 0 : NumberIn(id.substr(1));
  if (number == 0) return std::nullopt;
  if (id[0] == 'H' || id[0] == 'V') {
    const auto at = std::ranges::find_if(bank.dividers, [&](const Divider& member) {
      return member.number == number && member.partition == (id[0] == 'V');
    });
    return at == bank.dividers.end() ? std::nullopt : MemberValue(*at, name);
  }
  const auto at = std::ranges::find_if(bank.spaces, [&](const Space& space) {
    return space.id.number == number && ToText(space.id) == id;
  });
  return at == bank.spaces.end() ? std::nullopt : SpaceValue(bank, *at, name);
}

constexpr Row<Block> kBlockRows[] = {
    {"x", [](const Block& b) { return b.x; }},
    {"y", [](const Block& b) { return b.y; }},
    {"z", [](const Block& b) { return b.z; }},
    {"width", [](const Block& b) { return b.width; }},
    {"height", [](const Block& b) { return b.height; }},
    {"depth", [](const Block& b) { return b.depth; }},
};

// "piece.3.width": pieces counted from 1.
Found PieceValue(const Bank& bank, std::string_view name) {
  const std::size_t dot = name.find('.');
  if (dot == std::string_view::npos) return std::nullopt;
  const int number = NumberIn(name.substr(0, dot));
  if (number < 1 || static_cast<std::size_t>(number) > bank.pieces.size()) return std::nullopt;
  return Look(kBlockRows, bank.pieces[static_cast<std::size_t>(number) - 1].block,
              name.substr(dot + 1));
}

// How far the opening's bottom lies above the lower edge of the case's sides.
Length FloorBelow(const Bank& bank) { return bank.casework ? bank.casework->base : Length(); }

}  // namespace

std::string GapPath(const Bank& bank, const Gap& gap) {
  std::string path = "gap.";
  path += ToText(bank, gap.from);
  path += '.';
  path += ToText(bank, gap.to);
  return path;
}

std::optional<Length> DimensionValue(const Bank& bank, std::string_view path) {
  if (path.starts_with("gap.")) return GapValue(bank, path);
  std::string_view rest = path;
  if (TakePrefix(rest, "overlap.")) return OverlapValue(bank, rest, false);
  if (TakePrefix(rest, "reveal.")) return OverlapValue(bank, rest, true);
  if (TakePrefix(rest, "part.")) return PartValue(bank, rest);
  if (TakePrefix(rest, "piece.")) return PieceValue(bank, rest);
  if (TakePrefix(rest, "floor.")) {
    const Found found = DimensionValue(bank, rest);
    return found ? Found(*found + FloorBelow(bank)) : found;
  }
  if (TakePrefix(rest, "case.") && bank.casework) {
    if (const Found found = Look(kCaseRows, *bank.casework, rest)) return found;
  }
  if (const Found found = Look(kBankRows, bank, path)) return found;
  if (const Found found = NumberedValue(bank, path)) return found;
  return PartValue(bank, path);
}

}  // namespace tillwright
