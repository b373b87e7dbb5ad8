#include <algorithm>
#include <array>

#include "check/movement_checks.h"
#include "check/strength_checks.h"
#include "spec/box_rules.h"
#include "spec/defaults.h"
#include "tillwright/check.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

constexpr std::string_view kCommon = "common practice, no source";
constexpr std::string_view kSpecSource = "the spec";
constexpr std::string_view kGeometry = "geometry";

constexpr std::array<std::string_view, 4> kLevels{"pass", "note", "warn", "fail"};
constexpr std::array<std::string_view, 39> kCodes{"closure",        "gap",
                                                  "overlay",        "meet",
                                                  "out-of-line",    "graduation",
                                                  "support",        "box-width",
                                                  "box-height",     "box-depth",
                                                  "least-height",   "slide-depth",
                                                  "slide-box",      "slide-clearance",
                                                  "side-thickness", "bottom-fit",
                                                  "groove-depth",   "groove-under",
                                                  "groove-joint",   "rabbet-depth",
                                                  "front-screw",    "slide-screw",
                                                  "pocket-screw",   "bottom-sag",
                                                  "slide-load",     "bottom-moves",
                                                  "front-moves",    "tipping",
                                                  "gap-tolerance",  "gap-season",
                                                  "gap-measured",   "gap-taper",
                                                  "cover",          "moisture",
                                                  "limits",         "box-measured",
                                                  "depth-measured", "shims",
                                                  "refit"};
static_assert(kCodes.size() == static_cast<std::size_t>(kLastCheckCode) + 1);

// How far a side-mount slide's space may exceed its rule: +1/32 in, -0 (common practice).
constexpr Default kClearanceOver{Length::Inches(1, 32), defaults::TenthMm(8)};
// Wood that must stay in front of a screw's point.
constexpr Default kAheadOfScrew{Length::Inches(1, 8), Length::Millimeters(3)};
// Height of side above the bottom: room for one tail or finger, or for glue.
constexpr Default kLeastForTails{Length::Inches(1), Length::Millimeters(25)};
constexpr Default kLeastForGlue{Length::Inches(1, 2), Length::Millimeters(12)};

struct PocketRow {
  Length from, to, screw;  // stock within [from, to)
};
constexpr std::array kPocketRows{
    PocketRow{Length::Inches(7, 16), Length::Inches(5, 8), Length::Inches(1)},
    PocketRow{Length::Inches(5, 8), Length::Inches(13, 16), Length::Inches(5, 4)},
    PocketRow{Length::Inches(13, 16), Length::Inches(9, 8), Length::Inches(3, 2)},
    PocketRow{Length::Inches(11, 8), Length::Inches(7, 4), Length::Inches(5, 2)},
};

class Checks {
 public:
  Checks(const Spec& spec, const Bank& bank) : spec_(spec), bank_(bank), unit_(bank.units) {}

  std::vector<Finding> Run() {
    findings_.reserve(bank_.spaces.size() * 13 + bank_.gaps.size() + bank_.overlaps.size() + 8);
    Closing();
    Gaps();
    Overlays();
    Notes();
    for (const Space& space : bank_.spaces) {
      if (space.HasBox()) Drawer(space);
    }
    if (bank_.casework) Case(*bank_.casework);
    return std::move(findings_);
  }

 private:
  std::string In(Length length) const { return FormatWithUnit(length, unit_); }

  void Pass(CheckCode code, const std::string& subject, const char* message, Length value,
            Length limit, std::string_view source) {
    findings_.push_back({code, Level::kPass, subject, message, value, limit, source});
  }
  void Add(CheckCode code, Level level, std::string subject, std::string message,
           std::optional<Length> value, std::optional<Length> limit, std::string_view source) {
    findings_.push_back(
        {code, level, std::move(subject), std::move(message), value, limit, source});
  }

  // --- The bank ---------------------------------------------------------------------------------

  void Closing() {
    bool closes = true;
    for (const SolveNote& note : bank_.notes) {
      if (note.kind != SolveNote::Kind::kDoesNotClose) continue;
      closes = false;
      const bool too_long = note.amount < Length();
      const std::string amount = In(too_long ? -note.amount : note.amount);
      Add(CheckCode::kClosure, Level::kFail, note.subject,
          "fronts and gaps of " + note.subject + " are " + amount +
              (too_long ? " too long together: make one front "
                        : " too short together: make one front ") +
              amount + (too_long ? " smaller" : " larger") + ", or leave one size free",
          note.amount, Length(), kGeometry);
    }
    if (closes) {
      Pass(CheckCode::kClosure, "bank", "fronts and gaps close exactly", Length(), Length(),
           kGeometry);
    }
  }

  void Gaps() {
    const LimitsSpec& limits = spec_.limits;
    const Length least = limits.least.typed ? limits.least.value : defaults::kLeastGap.In(unit_);
    const Length most =
        limits.greatest.typed ? limits.greatest.value : defaults::kGreatestGap.In(unit_);
    const std::string_view source =
        limits.least.typed || limits.greatest.typed ? kSpecSource : kCommon;
    for (const Gap& gap : bank_.gaps) {
      std::string subject = ToText(bank_, gap.from);
      subject += " to ";
      subject += ToText(bank_, gap.to);
      if (bank_.style == FrontStyle::kOverlay && gap.size <= Length()) {
        Add(CheckCode::kMeet, Level::kFail, subject,
            "the fronts meet over the edge they share: widen the gap by at least " +
                In(least - gap.size),
            gap.size, Length(), kGeometry);
      }
      if (gap.size < least) {
        Add(CheckCode::kGap, Level::kFail, subject,
            "the gap of " + In(gap.size) + " is " + In(least - gap.size) +
                " under the least: widen it by that much",
            gap.size, least, source);
      } else if (gap.size > most) {
        Add(CheckCode::kGap, Level::kFail, subject,
            "the gap of " + In(gap.size) + " is " + In(gap.size - most) +
                " over the greatest: narrow it by that much, or raise \"limits\"",
            gap.size, most, source);
      } else {
        Pass(CheckCode::kGap, subject, "the gap is within its limits", gap.size, most, source);
      }
    }
  }

  Length EdgeThickness(const CaseBuild& build, Edge edge) const {
    switch (edge) {
      case Edge::kTop:
        return build.top;
      case Edge::kBottom:
        return build.bottom;
      case Edge::kLeft:
      case Edge::kRight:
        break;
    }
    return build.side;
  }

  void Overlays() {
    for (const Overlap& overlap : bank_.overlaps) {
      std::string subject = ToText(bank_.spaces[static_cast<std::size_t>(overlap.space)].id);
      subject += ' ';
      subject += Word(overlap.edge);
      if (!bank_.casework) {
        UnknownEdge(overlap, std::move(subject));
        continue;
      }
      const Length edge = EdgeThickness(*bank_.casework, overlap.edge);
      if (overlap.size > edge) {
        Add(CheckCode::kOverlay, Level::kFail, std::move(subject),
            "the front covers " + In(overlap.size) + " of an edge " + In(edge) +
                " thick: lessen the overlay by " + In(overlap.size - edge),
            overlap.size, edge, kGeometry);
      } else {
        Pass(CheckCode::kOverlay, subject, "the overlay is within the case edge", overlap.size,
             edge, kGeometry);
      }
    }
  }

  // With only an opening given nobody knows the case's edge; say what it must be when that is more
  // than the usual stock.
  void UnknownEdge(const Overlap& overlap, std::string subject) {
    const Length usual = defaults::kCaseStock.In(unit_);
    if (overlap.size <= usual) return;
    Add(CheckCode::kOverlay, Level::kNote, std::move(subject),
        "the case's edge must be at least " + In(overlap.size) + " thick to carry this overlay",
        overlap.size, usual, kCommon);
  }

  void Notes() {
    for (const SolveNote& note : bank_.notes) {
      switch (note.kind) {
        case SolveNote::Kind::kDoesNotClose:
          break;  // a failing closure
        case SolveNote::Kind::kFirstMoved:
          Add(CheckCode::kGraduation, Level::kNote, note.subject,
              "bounds move the first size to " + In(note.amount), note.amount, std::nullopt,
              kSpecSource);
          break;
        case SolveNote::Kind::kOutOfLine:
          Add(CheckCode::kOutOfLine, Level::kNote, note.subject,
              "rounding puts outer edges of fronts above one another " + In(note.amount) +
                  " out of line; a finer \"round\" lessens it",
              note.amount, bank_.round, kGeometry);
          break;
        case SolveNote::Kind::kNoDivider:
          Add(CheckCode::kSupport, Level::kWarn, note.subject,
              "\"divider\": \"none\" leaves drawers with nothing to hang on or stand on: give a "
              "thickness, or choose slides that need none",
              std::nullopt, std::nullopt, kCommon);
          break;
      }
    }
  }

  // --- One drawer -------------------------------------------------------------------------------

  void Drawer(const Space& space) {
    const std::string id = ToText(space.id);
    InCell(space, id);
    LeastHeight(space, id);
    SlideFits(space, id);
    SlideRules(space, id);
    BottomRules(space.box.build, id);
    JointRules(space.box.build, id);
    Screws(space, id);
  }

  void Within(CheckCode code, const std::string& id, Length value, Length limit, const char* pass,
              const char* what, const char* advice) {
    if (value <= limit) return Pass(code, id, pass, value, limit, kGeometry);
    Add(code, Level::kFail, id,
        std::string(what) + " by " + In(value - limit) + ": " + advice + " by that much", value,
        limit, kGeometry);
  }

  void InCell(const Space& space, const std::string& id) {
    const Box& box = space.box;
    Within(CheckCode::kBoxWidth, id, box.width, space.cell.width,
           "the box is narrower than its cell", "the box is wider than its cell",
           "narrow the box or widen the cell");
    const Length high = box.y + box.height;
    const bool low_enough = box.y >= space.cell.y;
    if (low_enough) {
      Within(CheckCode::kBoxHeight, id, high, space.cell.Top(), "the box is lower than its cell",
             "the box is taller than its cell", "lower the box or make its front taller");
    } else {
      Add(CheckCode::kBoxHeight, Level::kFail, id, "the box stands below its cell", box.y,
          space.cell.y, kGeometry);
    }
    Within(CheckCode::kBoxDepth, id, box.z + box.depth, bank_.opening_depth,
           "the box is shallower than the opening", "the box is deeper than the opening",
           "shorten the box or deepen the case");
  }

  void LeastHeight(const Space& space, const std::string& id) {
    const BoxBuild& build = space.box.build;
    const bool tails = !HasSetback(build.joint);
    const Length least =
        build.up + build.bottom + (tails ? kLeastForTails : kLeastForGlue).In(unit_);
    if (space.box.height >= least) {
      return Pass(CheckCode::kLeastHeight, id, "the box is tall enough for its joint and bottom",
                  space.box.height, least, kCommon);
    }
    Add(CheckCode::kLeastHeight, Level::kFail, id,
        "the box is too low for its " + std::string(Word(build.joint)) +
            " joint and bottom: make its front " + In(least - space.box.height) + " taller",
        space.box.height, least, kCommon);
  }

  void SlideFits(const Space& space, const std::string& id) {
    const Slide& slide = space.slide;
    const Length usable = bank_.opening_depth - space.box.z;
    Within(CheckCode::kSlideDepth, id, slide.length + slide.behind, usable,
           "the slide fits the depth", "slide and the space behind it exceed the depth",
           "take a shorter slide or deepen the case");
    if (slide.type == SlideType::kWoodRunner) return;  // a runner may be longer than its box
    Within(CheckCode::kSlideBox, id, slide.length, space.box.depth,
           "the slide is no longer than the box", "the slide is longer than the box",
           "take a shorter slide or a deeper box");
  }

  void SlideRules(const Space& space, const std::string& id) {
    const Slide& slide = space.slide;
    if (slide.type == SlideType::kSideMount) SideMount(space, id);
    if (slide.type != SlideType::kUndermount) return;
    const Length side = space.box.build.side;
    if (side <= slide.side_max) {
      Pass(CheckCode::kSideThickness, id, "the slide takes the side's thickness", side,
           slide.side_max, kCommon);
    } else {
      Add(CheckCode::kSideThickness, Level::kFail, id,
          "box sides of " + In(side) + " are too thick for the slide: make them at least " +
              In(side - slide.side_max) + " thinner",
          side, slide.side_max, kCommon);
    }
    if (space.box.build.fit == BottomFit::kApplied) {
      Add(CheckCode::kBottomFit, Level::kFail, id,
          "undermount slides need a bottom that is set up: use a groove, with \"up\" 1/2 in "
          "(13 mm)",
          std::nullopt, std::nullopt, kCommon);
    }
  }

  void SideMount(const Space& space, const std::string& id) {
    const Length over =
        space.cell.width - space.box.width - 2 * space.slide.clearance;  // both sides together
    const Length allowed = 2 * kClearanceOver.In(unit_);
    const Length each = space.slide.clearance + HalfBelow(over);
    const Length limit = space.slide.clearance + kClearanceOver.In(unit_);
    if (over >= Length() && over <= allowed) {
      return Pass(CheckCode::kSlideClearance, id, "the slides have their space", each, limit,
                  kCommon);
    }
    const bool tight = over < Length();
    Add(CheckCode::kSlideClearance, Level::kFail, id,
        "each slide has " + In(each) + ", " +
            (tight ? "less than its rule: narrow the box by " + In(-over)
                   : "too much: pack the slides out or widen the box by " + In(over - allowed) +
                         " or more"),
        each, limit, kCommon);
  }

  void BottomRules(const BoxBuild& build, const std::string& id) {
    const Length part = Min(build.side, build.end);
    if (build.fit == BottomFit::kRabbet) {
      return Rabbet(id, "the bottom's rabbet", build.groove, part);
    }
    if (build.fit != BottomFit::kGroove) return;
    Groove(id, "the bottom's groove", build.groove, part);
    if (build.up >= build.groove) {
      Pass(CheckCode::kGrooveUnder, id, "there is wood enough under the groove", build.up,
           build.groove, kCommon);
    } else {
      Add(CheckCode::kGrooveUnder, build.up.IsZero() ? Level::kFail : Level::kWarn, id,
          "only " + In(build.up) + " of wood stands under the groove: set the bottom up by " +
              In(build.groove - build.up) + " more",
          build.up, build.groove, kCommon);
    }
    GrooveInJoint(build, id);
  }

  void GrooveInJoint(const BoxBuild& build, const std::string& id) {
    if (!HasSetback(build.joint)) {
      return Add(CheckCode::kGrooveJoint, Level::kWarn, id,
                 "a through groove shows at the ends of a " + std::string(Word(build.joint)) +
                     " corner: stop it short, or lay it in a tail or finger and plug it",
                 build.groove, std::nullopt, kCommon);
    }
    if (HasJointDepth(build.joint) && build.groove > build.joint_depth) {
      return Add(CheckCode::kGrooveJoint, Level::kNote, id,
                 "the groove is " + In(build.groove - build.joint_depth) +
                     " deeper than the corner joint and shows at the sides' ends",
                 build.groove, build.joint_depth, kCommon);
    }
    Pass(CheckCode::kGrooveJoint, id, "the groove is clear of the corner joint", build.groove,
         HasJointDepth(build.joint) ? build.joint_depth : build.side, kCommon);
  }

  // A groove or dado: not through (fail), and no deeper than half the part (a warning: published
  // work cuts 1/4 into 3/8 in: H. H. Windsor, Mission Furniture, part III, 1912, sewing table).
  void Groove(const std::string& id, const char* what, Length depth, Length part) {
    const Length half = HalfBelow(part);
    if (depth <= half) {
      return Pass(CheckCode::kGrooveDepth, id, "no groove is deeper than half the part", depth,
                  half, kCommon);
    }
    const bool through = depth >= part;
    Add(CheckCode::kGrooveDepth, through ? Level::kFail : Level::kWarn, id,
        std::string(what) + " takes " + In(depth) + " of a part " + In(part) + " thick: make it " +
            In(depth - half) + " shallower",
        depth, half, kCommon);
  }

  void Rabbet(const std::string& id, const char* what, Length depth, Length part) {
    const Length most = PartBelow(2 * part, 3);
    if (depth <= most) {
      return Pass(CheckCode::kRabbetDepth, id, "no rabbet is deeper than two thirds of the part",
                  depth, most, kCommon);
    }
    Add(CheckCode::kRabbetDepth, Level::kFail, id,
        std::string(what) + " takes " + In(depth) + " of a part " + In(part) + " thick: make it " +
            In(depth - most) + " shallower",
        depth, most, kCommon);
  }

  void JointRules(const BoxBuild& build, const std::string& id) {
    if (HasJointDepth(build.joint)) {
      Rabbet(id, build.joint == CornerJoint::kDado ? "the corner's dado" : "the corner's rabbet",
             build.joint_depth, build.side);
    }
    if (HasLap(build.joint) && build.lap >= build.end) {
      Add(CheckCode::kRabbetDepth, Level::kFail, id,
          "the lap of " + In(build.lap) + " leaves nothing of an end " + In(build.end) +
              " thick for the tails: make it " + In(build.lap - HalfBelow(build.end)) + " thinner",
          build.lap, build.end, kGeometry);
    }
  }

  void Screws(const Space& space, const std::string& id) {
    const ScrewSpec& screws = spec_.screws;
    const BoxBuild& build = space.box.build;
    if (screws.front.typed) {
      const Length most = build.end + space.front.thickness - kAheadOfScrew.In(unit_);
      Screw(CheckCode::kFrontScrew, id, "a screw through the front end into the front",
            screws.front.value, most);
    }
    if (screws.slide.typed && space.slide.type != SlideType::kWoodRunner) {
      // Shorter than the side: its point must not show inside.
      Screw(CheckCode::kSlideScrew, id, "a slide screw", screws.slide.value,
            build.side - Length::Picometers(1));
    }
  }

  void Screw(CheckCode code, const std::string& id, const char* what, Length length, Length most) {
    if (length <= most) {
      return Pass(code, id, "the screw stays inside the wood", length, most, kCommon);
    }
    Add(code, Level::kFail, id,
        std::string(what) + " of " + In(length) + " would come through: take one at least " +
            In(length - most) + " shorter",
        length, most, kCommon);
  }

  // --- The case ---------------------------------------------------------------------------------

  void Case(const CaseBuild& build) {
    const std::string id = "case";
    if (build.back == BackFit::kRabbet) Rabbet(id, "the back's rabbet", build.back_lap, build.side);
    if (build.back == BackFit::kGroove) {
      Groove(id, "the back's groove", build.back_depth, build.side);
      if (build.back_inset < build.back_depth) {
        Add(CheckCode::kGrooveUnder, build.back_inset.IsZero() ? Level::kFail : Level::kWarn, id,
            "only " + In(build.back_inset) +
                " of wood stands behind the back's groove: set it in " +
                In(build.back_depth - build.back_inset) + " more",
            build.back_inset, build.back_depth, kCommon);
      }
    }
    if (build.joint == CaseJoint::kDado) Groove(id, "a dado", build.joint_depth, build.side);
    if (build.joint == CaseJoint::kRabbet) Rabbet(id, "a rabbet", build.joint_depth, build.side);
    if (build.fixing == CaseFixing::kPocketScrews) PocketScrews(build, id);
  }

  void PocketScrews(const CaseBuild& build, const std::string& id) {
    const std::optional<Length> suits = PocketScrewFor(build.bottom);
    if (!suits) return;
    const Entry<Length>& typed = spec_.screws.pocket;
    if (!typed.typed) {
      return Add(CheckCode::kPocketScrew, Level::kNote, id,
                 "pocket screws for stock of " + In(build.bottom) + ": " +
                     FormatWithUnit(*suits, Unit::kInch),
                 build.bottom, suits, kCommon);
    }
    if (typed.value == *suits) {
      return Pass(CheckCode::kPocketScrew, id, "the pocket screws suit the stock", typed.value,
                  *suits, kCommon);
    }
    Add(CheckCode::kPocketScrew, typed.value > *suits ? Level::kFail : Level::kWarn, id,
        "pocket screws of " + In(typed.value) + " do not suit stock of " + In(build.bottom) +
            ": take " + FormatWithUnit(*suits, Unit::kInch),
        typed.value, *suits, kCommon);
  }

  const Spec& spec_;
  const Bank& bank_;
  Unit unit_;
  std::vector<Finding> findings_;
};

}  // namespace

std::string_view ToText(Level level) { return kLevels[static_cast<std::size_t>(level)]; }

std::string_view ToText(CheckCode code) { return kCodes[static_cast<std::size_t>(code)]; }

std::vector<Finding> CheckBank(const Spec& spec, const Bank& bank) {
  std::vector<Finding> findings = Checks(spec, bank).Run();
  AddStrengthChecks(spec, bank, findings);
  AddMovementChecks(spec, bank, findings);
  return findings;
}

bool HasFailure(const std::vector<Finding>& findings) {
  return std::ranges::any_of(findings, [](const Finding& f) { return f.level == Level::kFail; });
}

std::optional<Length> PocketScrewFor(Length stock) {
  for (const PocketRow& row : kPocketRows) {
    if (stock >= row.from && stock < row.to) return row.screw;
  }
  return std::nullopt;
}

}  // namespace tillwright
