#include "tillwright/bank.h"

#include "bank/part_roles.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

std::string Numbered(char letter, int number) {
  std::string text(1, letter);
  text += std::to_string(number);
  return text;
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

std::string_view ToText(PartRole role) { return Facts(role).word; }

const std::string& CaseMaterial(const CaseBuild& build, const CasePiece& piece) {
  switch (Facts(piece.role).group) {
    case PartGroup::kFaceFrame:
      return build.frame->material;
    case PartGroup::kWebFrame:
      return piece.ahead ? *build.web->front : build.web->material;
    case PartGroup::kWorktop:
      return build.worktop->material;
    case PartGroup::kFront:
    case PartGroup::kBox:
    case PartGroup::kCarcass:
    case PartGroup::kMember:
    case PartGroup::kCrosspiece:
    case PartGroup::kBlocking:
      break;
  }
  return build.material;
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
      return "rear end";
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
  // Overlay fronts end beyond the opening's edges; only a worktop is over them.
  if (bank.style == FrontStyle::kOverlay) return "worktop";
  return "opening." + std::string(Word(static_cast<Edge>(end.index)));
}

std::string PartFor(const Bank& bank, const Part& part) {
  if (part.space >= 0) return ToText(bank.spaces[static_cast<std::size_t>(part.space)].id);
  if (part.divider >= 0) return ToText(bank.dividers[static_cast<std::size_t>(part.divider)]);
  return "case";
}

std::string PartId(const Bank& bank, const Part& part) {
  std::string id = PartFor(bank, part);
  id += Facts(part.role).suffix;
  if (part.ahead) id += "_front";
  if (part.takes >= 0) id += "_" + ToText(bank.dividers[static_cast<std::size_t>(part.takes)]);
  return id;
}

}  // namespace tillwright
