#include "check/finding_list.h"

namespace tillwright {

// Half is a warning only: published work cuts 1/4 into 3/8 in (H. H. Windsor, Mission Furniture,
// part III, 1912, sewing table).
void FindingList::Groove(const std::string& subject, std::string_view what, Length depth,
                         Length part) {
  const Length half = HalfBelow(part);
  if (depth <= half) {
    return Pass(CheckCode::kGrooveDepth, subject, "no groove or dado is deeper than half the part",
                depth, half, kCommon);
  }
  const bool through = depth >= part;
  Add(CheckCode::kGrooveDepth, through ? Level::kFail : Level::kWarn, subject,
      std::string(what) + " cuts " + In(depth) + " into a part " + In(part) + " thick: make it " +
          In(depth - half) + " shallower",
      depth, half, kCommon);
}

void FindingList::Rabbet(const std::string& subject, std::string_view what, Length depth,
                         Length part) {
  const Length most = PartBelow(2 * part, 3);
  if (depth <= most) {
    return Pass(CheckCode::kRabbetDepth, subject, "no rabbet is deeper than two thirds of the part",
                depth, most, kCommon);
  }
  Add(CheckCode::kRabbetDepth, Level::kFail, subject,
      std::string(what) + " cuts " + In(depth) + " into a part " + In(part) + " thick: make it " +
          In(depth - most) + " shallower",
      depth, most, kCommon);
}

}  // namespace tillwright
