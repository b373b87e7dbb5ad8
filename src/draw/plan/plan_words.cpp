#include "draw/plan/plan_words.h"

namespace tillwright {

std::string CornerWords(CornerJoint joint) {
  switch (joint) {
    case CornerJoint::kButt:
      return "BUTT JOINT";
    case CornerJoint::kRabbet:
      return "RABBET JOINT";
    case CornerJoint::kDado:
      return "DADO JOINT";
    case CornerJoint::kHalfBlindDovetail:
      return "HALF-BLIND DOVETAIL";
    case CornerJoint::kThroughDovetail:
      return "THROUGH DOVETAIL";
    case CornerJoint::kFinger:
      break;
  }
  return "FINGER JOINT";
}

std::string BottomWords(const BoxBuild& build) {
  switch (build.fit) {
    case BottomFit::kGroove:
      return build.open_back ? "BOTTOM IN GROOVE, OPEN BACK" : "BOTTOM IN GROOVE";
    case BottomFit::kRabbet:
      return "BOTTOM IN RABBET";
    case BottomFit::kApplied:
      break;
  }
  return "BOTTOM APPLIED BELOW";
}

std::string SlideWords(SlideType type) {
  switch (type) {
    case SlideType::kSideMount:
      return "SIDE-MOUNT SLIDE";
    case SlideType::kUndermount:
      return "UNDERMOUNT SLIDE";
    case SlideType::kCenterMount:
      return "CENTER-MOUNT SLIDE";
    case SlideType::kWoodRunner:
      break;
  }
  return "WOOD RUNNER";
}

std::string Lowered(std::string_view text) {
  std::string out(text);
  for (char& c : out) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return out;
}

}  // namespace tillwright
