#include "tillwright/bank.h"

#include "tillwright/words.h"

namespace tillwright {
namespace {

std::string Numbered(char letter, int number) {
  std::string text(1, letter);
  text += std::to_string(number);
  return text;
}

// What a part is called after its owner: ".side", or nothing for a member that is its own part.
std::string_view PartSuffix(PartRole role) {
  switch (role) {
    case PartRole::kFront:
      return ".front";
    case PartRole::kBoxSide:
    case PartRole::kCaseSide:
      return ".side";
    case PartRole::kBoxFront:
      return ".box_front";
    case PartRole::kBoxBack:
      return ".box_back";
    case PartRole::kBoxBottom:
    case PartRole::kCaseBottom:
      return ".bottom";
    case PartRole::kCaseTop:
      return ".top";
    case PartRole::kCaseBack:
      return ".back";
    case PartRole::kDivider:
    case PartRole::kPartition:
      return "";
    case PartRole::kStretcher:
      return ".stretcher";
    case PartRole::kToeKick:
      return ".toe_kick";
    case PartRole::kFrameStile:
      return ".stile";
    case PartRole::kFrameTopRail:
      return ".top_rail";
    case PartRole::kFrameBottomRail:
      return ".bottom_rail";
    case PartRole::kFrameRail:
      return ".rail";
    case PartRole::kBlocking:
      return ".blocking";
    case PartRole::kWebRail:
      return ".web_rail";
    case PartRole::kWebRunner:
      return ".web_runner";
    case PartRole::kWorktop:
      return ".worktop";
  }
  return "";
}

}  // namespace

std::string ToText(SpaceId id) {
  switch (id.kind) {
    case SpaceKind::kDrawer:
      return Numbered('D', id.number);
    case SpaceKind::kBlank:
      return Numbered('B', id.number);
    case SpaceKind::kOpen:
      return Numbered('O', id.number);
  }
  return {};
}

std::string ToText(const Divider& divider) {
  return Numbered(divider.partition ? 'V' : 'H', divider.number);
}

std::string_view ToText(PartRole role) {
  switch (role) {
    case PartRole::kFront:
      return "front";
    case PartRole::kBoxSide:
      return "box side";
    case PartRole::kBoxFront:
      return "box front";
    case PartRole::kBoxBack:
      return "box back";
    case PartRole::kBoxBottom:
      return "box bottom";
    case PartRole::kCaseSide:
      return "case side";
    case PartRole::kCaseBottom:
      return "case bottom";
    case PartRole::kCaseTop:
      return "case top";
    case PartRole::kCaseBack:
      return "case back";
    case PartRole::kDivider:
      return "divider";
    case PartRole::kPartition:
      return "partition";
    case PartRole::kStretcher:
      return "stretcher";
    case PartRole::kToeKick:
      return "toe kick";
    case PartRole::kFrameStile:
      return "stile";
    case PartRole::kFrameTopRail:
      return "top rail";
    case PartRole::kFrameBottomRail:
      return "bottom rail";
    case PartRole::kFrameRail:
      return "rail";
    case PartRole::kBlocking:
      return "blocking";
    case PartRole::kWebRail:
      return "web rail";
    case PartRole::kWebRunner:
      return "web runner";
    case PartRole::kWorktop:
      return "worktop";
  }
  return "";
}

std::string_view ToText(CutKind kind) {
  switch (kind) {
    case CutKind::kGroove:
      return "groove";
    case CutKind::kRabbet:
      return "rabbet";
    case CutKind::kDado:
      return "dado";
    case CutKind::kHalfBlindDovetail:
      return "half-blind-dovetail";
    case CutKind::kThroughDovetail:
      return "through-dovetail";
    case CutKind::kFinger:
      return "finger";
    case CutKind::kTenon:
      return "tenon";
  }
  return "";
}

std::string_view ToText(CutFrom from) {
  switch (from) {
    case CutFrom::kLowerEdge:
      return "lower edge";
    case CutFrom::kFrontEnd:
      return "front end";
    case CutFrom::kBackEnd:
      return "back end";
    case CutFrom::kEachEnd:
      return "each end";
    case CutFrom::kRearEdge:
      return "rear edge";
    case CutFrom::kUpperFace:
      return "upper face";
    case CutFrom::kLeftEdge:
      return "left edge";
  }
  return "";
}

std::string_view ToText(CutOn face) {
  switch (face) {
    case CutOn::kInside:
      return "inside";
    case CutOn::kInnerEdge:
      return "inner edge";
    case CutOn::kBothFaces:
      return "both faces";
    case CutOn::kOutside:
      return "outside";
    case CutOn::kUpperFace:
      return "upper face";
    case CutOn::kLowerFace:
      return "lower face";
    case CutOn::kRightFace:
      return "right face";
  }
  return "";
}

Length CaseBuild::EdgeAt(Edge edge) const {
  switch (edge) {
    case Edge::kTop:
      return frame ? frame->rail : top;
    case Edge::kBottom:
      return frame ? frame->bottom_rail : bottom;
    case Edge::kLeft:
    case Edge::kRight:
      break;
  }
  return frame ? frame->stile : side;
}

std::string ToText(const Bank& bank, const GapEnd& end) {
  const auto index = static_cast<std::size_t>(end.index);
  switch (end.kind) {
    case GapEnd::Kind::kSpace:
      return ToText(bank.spaces[index].id);
    case GapEnd::Kind::kDivider:
      return ToText(bank.dividers[index]);
    case GapEnd::Kind::kOpening:
      break;
  }
  return "opening." + std::string(Word(static_cast<Edge>(end.index)));
}

std::string PartFor(const Bank& bank, const Part& part) {
  if (part.space >= 0) return ToText(bank.spaces[static_cast<std::size_t>(part.space)].id);
  if (part.divider >= 0) return ToText(bank.dividers[static_cast<std::size_t>(part.divider)]);
  return "case";
}

std::string PartId(const Bank& bank, const Part& part) {
  std::string id = PartFor(bank, part);
  id += PartSuffix(part.role);
  if (part.takes >= 0) id += "_" + ToText(bank.dividers[static_cast<std::size_t>(part.takes)]);
  return id;
}

}  // namespace tillwright
