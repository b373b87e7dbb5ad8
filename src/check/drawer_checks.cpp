#include "check/drawer_checks.h"

#include "check/finding_list.h"
#include "spec/defaults.h"
#include "spec/kinds.h"
#include "spec/trade_sizes.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

// How far a side-mount slide's space may exceed its rule: +1/32 in, -0 (common practice).
constexpr Default kClearanceOver{Length::Inches(1, 32), defaults::TenthMm(8)};
// Wood that must stay in front of a screw's point.
constexpr Default kAheadOfScrew{Length::Inches(1, 8), Length::Millimeters(3)};
// Height of side above the bottom: room for one tail or finger, or for glue.
constexpr Default kLeastForTails{Length::Inches(1), Length::Millimeters(25)};
constexpr Default kLeastForGlue{Length::Inches(1, 2), Length::Millimeters(12)};

// Thin sides are for low drawers: one tail half as wide again as they are thick, or glue as high as
// they are thick, is enough there (common practice).
Length LeastAbove(const BoxBuild& build, Unit unit) {
  if (!Facts(build.joint).tailed) return Min(kLeastForGlue.In(unit), build.side);
  return Min(kLeastForTails.In(unit), build.side + HalfBelow(build.side));
}

class DrawerChecks {
 public:
  DrawerChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out)
      : spec_(spec), bank_(bank), list_(bank.units, out) {}

  void Check(const Space& space) {
    const std::string id = ToText(space.id);
    InCell(space, id);
    LeastHeight(space, id);
    SlideFits(space, id);
    SlideRules(space, id);
    BottomRules(space.box.build, id);
    JointRules(space.box.build, id);
    Screws(space, id);
  }

 private:
  void Within(CheckCode code, const std::string& id, Length value, Length limit, const char* pass,
              const char* what, const char* advice) {
    if (value <= limit) return list_.Pass(code, id, pass, value, limit, kGeometry);
    list_.Add(
        code, Level::kFail, id,
        std::string(what) + " by " + list_.In(value - limit) + ": " + advice + " by that much",
        value, limit, kGeometry);
  }

  void InCell(const Space& space, const std::string& id) {
    const Box& box = space.box;
    Within(CheckCode::kBoxWidth, id, box.width, space.cell.width,
           "the box fits the width of its opening", "the box is too wide for its opening",
           "make the box narrower or the opening wider");
    const Length high = box.y + box.height;
    const bool low_enough = box.y >= space.cell.y;
    if (low_enough) {
      Within(CheckCode::kBoxHeight, id, high, space.cell.Top(),
             "the box fits the height of its opening", "the box is too tall for its opening",
             "make the box shorter or its front taller");
    } else {
      list_.Add(CheckCode::kBoxHeight, Level::kFail, id, "the box starts below its opening", box.y,
                space.cell.y, kGeometry);
    }
    Within(CheckCode::kBoxDepth, id, box.z + box.depth, bank_.opening_depth,
           "the box fits the depth of the case", "the box is too deep for the case",
           "make the box shallower or the case deeper");
  }

  void LeastHeight(const Space& space, const std::string& id) {
    const BoxBuild& build = space.box.build;
    const Length least = build.up + build.bottom + LeastAbove(build, list_.unit());
    if (space.box.height >= least) {
      return list_.Pass(CheckCode::kLeastHeight, id,
                        "the box is tall enough for its joint and bottom", space.box.height, least,
                        kCommon);
    }
    list_.Add(CheckCode::kLeastHeight, Level::kFail, id,
              "the box is not tall enough for its " + std::string(Word(build.joint)) +
                  " joint and bottom: make its front " + list_.In(least - space.box.height) +
                  " taller",
              space.box.height, least, kCommon);
  }

  void SlideFits(const Space& space, const std::string& id) {
    const Slide& slide = space.slide;
    const Length usable = bank_.opening_depth - space.box.z;
    Within(CheckCode::kSlideDepth, id, slide.length + slide.behind, usable,
           "the slide fits the depth", "the slide plus rear clearance is too long",
           "use a shorter slide or make the case deeper");
    if (Facts(slide.type).sold == SoldAs::kNot) return;  // a runner may be longer than its box
    Within(CheckCode::kSlideBox, id, slide.length, space.box.depth,
           "the slide is no longer than the box", "the slide is longer than the box",
           "use a shorter slide or a deeper box");
  }

  void SlideRules(const Space& space, const std::string& id) {
    const SlideFacts& facts = Facts(space.slide.type);
    if (facts.exact) ExactSpace(space, id);
    if (facts.width == WidthRule::kInside) SideThickness(space, id);
    if (facts.bottom_set_up && !Facts(space.box.build.fit).cut) {
      list_.Add(CheckCode::kBottomFit, Level::kFail, id,
                "undermount slides need a raised bottom: use a groove, with \"up\" 1/2 in (13 mm)",
                std::nullopt, std::nullopt, kCommon);
    }
  }

  void SideThickness(const Space& space, const std::string& id) {
    const Slide& slide = space.slide;
    const Length side = space.box.build.side;
    if (side <= slide.side_max) {
      list_.Pass(CheckCode::kSideThickness, id, "the box sides are thin enough for the slide", side,
                 slide.side_max, kCommon);
    } else {
      list_.Add(CheckCode::kSideThickness, Level::kFail, id,
                "box sides of " + list_.In(side) +
                    " are too thick for the slide: make them at least " +
                    list_.In(side - slide.side_max) + " thinner",
                side, slide.side_max, kCommon);
    }
  }

  void ExactSpace(const Space& space, const std::string& id) {
    const Length over =
        space.cell.width - space.box.width - 2 * space.slide.clearance;  // both sides together
    const Length allowed = 2 * kClearanceOver.In(list_.unit());
    const Length each = space.slide.clearance + HalfBelow(over);
    const Length limit = space.slide.clearance + kClearanceOver.In(list_.unit());
    if (over >= Length() && over <= allowed) {
      return list_.Pass(CheckCode::kSlideClearance, id, "the slides have the clearance they need",
                        each, limit, kCommon);
    }
    const bool tight = over < Length();
    list_.Add(CheckCode::kSlideClearance, Level::kFail, id,
              "each slide has " + list_.In(each) + " of clearance, " +
                  (tight ? "which is too little: make the box narrower by " + list_.In(-over)
                         : "which is too much: shim the slides out or make the box wider by " +
                               list_.In(over - allowed) + " or more"),
              each, limit, kCommon);
  }

  void BottomRules(const BoxBuild& build, const std::string& id) {
    const Length part = Min(build.side, build.end);
    const BottomFacts& bottom = Facts(build.fit);
    if (!bottom.cut) return;
    if (!bottom.set_up) return list_.Rabbet(id, "the bottom's rabbet", build.groove, part);
    list_.Groove(id, "the bottom's groove", build.groove, part);
    if (build.up >= build.groove) {
      list_.Pass(CheckCode::kGrooveUnder, id, "there is enough wood below the groove", build.up,
                 build.groove, kCommon);
    } else {
      list_.Add(CheckCode::kGrooveUnder, build.up.IsZero() ? Level::kFail : Level::kWarn, id,
                "only " + list_.In(build.up) +
                    " of wood is left below the groove: raise the groove by " +
                    list_.In(build.groove - build.up),
                build.up, build.groove, kCommon);
    }
    GrooveInJoint(build, id);
  }

  void GrooveInJoint(const BoxBuild& build, const std::string& id) {
    if (Facts(build.joint).tailed) {
      return list_.Add(CheckCode::kGrooveJoint, Level::kWarn, id,
                       "a through groove shows at the ends of a " + std::string(Word(build.joint)) +
                           " corner: stop it short, or place it in a tail or finger and plug it",
                       build.groove, std::nullopt, kCommon);
    }
    if (Facts(build.joint).depth && build.groove > build.joint_depth) {
      return list_.Add(CheckCode::kGrooveJoint, Level::kNote, id,
                       "the groove is " + list_.In(build.groove - build.joint_depth) +
                           " deeper than the corner joint and shows at the sides' ends",
                       build.groove, build.joint_depth, kCommon);
    }
    list_.Pass(CheckCode::kGrooveJoint, id, "the groove is clear of the corner joint", build.groove,
               Facts(build.joint).depth ? build.joint_depth : build.side, kCommon);
  }

  void JointRules(const BoxBuild& build, const std::string& id) {
    const CornerFacts& corner = Facts(build.joint);
    if (corner.depth) {
      list_.Rabbet(id, "the corner's " + std::string(corner.word), build.joint_depth, build.side);
    }
    if (corner.lap && build.lap >= build.end) {
      list_.Add(CheckCode::kRabbetDepth, Level::kFail, id,
                "the lap of " + list_.In(build.lap) + ", in wood " + list_.In(build.end) +
                    " thick, leaves no thickness for the tails: make it " +
                    list_.In(build.lap - HalfBelow(build.end)) + " thinner",
                build.lap, build.end, kGeometry);
    }
  }

  void Screws(const Space& space, const std::string& id) {
    const ScrewSpec& screws = spec_.screws;
    const BoxBuild& build = space.box.build;
    if (screws.front.typed) {
      const Length most = build.end + space.front.thickness - kAheadOfScrew.In(list_.unit());
      Screw(CheckCode::kFrontScrew, id, "a screw through the box front into the front",
            screws.front.value, most);
    }
    if (screws.slide.typed && Facts(space.slide.type).sold != SoldAs::kNot) {
      SlideScrew(id, screws.slide.value, build.side);
    }
  }

  // Its point must not show inside; the slide's own metal takes a little of its length.
  void SlideScrew(const std::string& id, Length length, Length side) {
    if (length != side) {
      return Screw(CheckCode::kSlideScrew, id, "a slide screw", length,
                   side - Length::Picometers(1));
    }
    list_.Add(CheckCode::kSlideScrew, Level::kNote, id,
              "a slide screw as long as the side is thick stays inside only by the thickness of "
              "the slide's metal: try one first",
              length, side, kCommon);
  }

  void Screw(CheckCode code, const std::string& id, const char* what, Length length, Length most) {
    if (length <= most) {
      return list_.Pass(code, id, "the screw does not break through", length, most, kCommon);
    }
    const Length sold = LongestScrew(most, list_.unit());
    list_.Add(code, Level::kFail, id,
              std::string(what) + " " + list_.In(length) + " long would break through: " +
                  (sold.IsZero() ? "the wood is too thin for one" : "use one of " + list_.In(sold)),
              length, most, kCommon);
  }

  const Spec& spec_;
  const Bank& bank_;
  FindingList list_;
};

}  // namespace

void AddDrawerChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out) {
  DrawerChecks checks(spec, bank, out);
  for (const Space& space : bank.spaces) {
    if (space.HasBox()) checks.Check(space);
  }
}

}  // namespace tillwright
