#include <algorithm>
#include <array>

#include "bank/part_roles.h"
#include "spec/kinds.h"
#include "spec/materials.h"
#include "spec/trade_sizes.h"
#include "stock/hardware_rules.h"
#include "stock/hardware_tally.h"
#include "tillwright/check.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

using namespace std::string_view_literals;

constexpr std::array kKinds{"slide"sv,     "screw"sv, "dowel"sv,  "pull"sv,
                            "edge band"sv, "glue"sv,  "anchor"sv, "foot"sv};
constexpr std::array kUnits{"pairs"sv, "pieces"sv, "mm"sv, "in"sv, "ml"sv};

HardwareLine Line(HardwareKind kind, std::string what, Length length, std::int64_t amount,
                  HardwareUnit unit = HardwareUnit::kPieces) {
  HardwareLine line;
  line.kind = kind;
  line.what = std::move(what);
  line.length = length;
  line.amount = amount;
  line.unit = unit;
  return line;
}

class HardwareRule {
 public:
  HardwareRule(const Spec& spec, const Bank& bank, const std::vector<CutLine>& cuts)
      : spec_(spec), bank_(bank), cuts_(cuts), unit_(bank.units) {}

  std::vector<HardwareLine> Run() {
    for (const Space& space : bank_.spaces) {
      if (space.HasBox()) Slides(space);
    }
    for (const Space& space : bank_.spaces) {
      if (space.HasFront()) Pulls(space);
      if (space.HasBox()) BoxScrews(space);
    }
    if (bank_.casework) Case(*bank_.casework);
    Bands();
    Glue();
    HardwareLine anchor = Line(HardwareKind::kAnchor, "anti-tip anchor", Length(), 1);
    anchor.remark = "to the wall: furniture with drawers can tip over";
    tally_.Add(std::move(anchor));
    return tally_.Take();
  }

 private:
  // A screw as the spec types it, or the one that suits.
  void Screws(std::string what, const Entry<Length>& typed, Length suits, std::int64_t amount,
              const std::string& id) {
    HardwareLine line =
        Line(HardwareKind::kScrew, std::move(what), typed.typed ? typed.value : suits, amount);
    line.suggested = !typed.typed;
    tally_.Add(std::move(line), id);
  }
  void Screws(std::string what, Length suits, std::int64_t amount, const std::string& id) {
    Screws(std::move(what), Entry<Length>(), suits, amount, id);
  }

  // --- Drawers ----------------------------------------------------------------------------------

  void Slides(const Space& space) {
    const Slide& slide = space.slide;
    const SoldAs sold = Facts(slide.type).sold;
    if (sold == SoldAs::kNot) return;
    const std::string id = ToText(space.id);
    const bool pair = sold == SoldAs::kPair;
    tally_.Add(Line(HardwareKind::kSlide, std::string(Word(slide.type)) + " slide", slide.length, 1,
                    pair ? HardwareUnit::kPairs : HardwareUnit::kPieces),
               id);
    const int each = hardware::kSlideScrews + (slide.length >= hardware::kLongSlide.In(unit_));
    // Its point must not come through the side.
    const Length most = Min(space.box.build.side, CaseStock()) - Length::Picometers(1);
    Screws("slide screw", spec_.screws.slide, LongestScrew(most, unit_), each * (pair ? 4 : 2), id);
  }

  // What slides are screwed to; as thick as can be when only the opening is known.
  Length CaseStock() const { return bank_.casework ? bank_.casework->side : kMaxTyped; }

  void Pulls(const Space& space) {
    const Front& front = space.front;
    if (front.pulls.empty()) return;
    const std::string id = ToText(space.id);
    const auto holes = static_cast<std::int64_t>(front.pulls.size());
    if (front.pull_centers.IsZero()) {
      tally_.Add(Line(HardwareKind::kPull, "knob", Length(), holes), id);
    } else {
      HardwareLine pull =
          Line(HardwareKind::kPull, "pull between centers", front.pull_centers, holes / 2);
      tally_.Add(std::move(pull), id);
    }
    HardwareLine screws = Line(HardwareKind::kScrew, "pull screw", Length(), holes);
    screws.remark = "length to suit the pull and the thickness it passes through";
    tally_.Add(std::move(screws), id);
  }

  void BoxScrews(const Space& space) {
    const std::string id = ToText(space.id);
    const Box& box = space.box;
    const BoxBuild& build = box.build;
    const bool wide = space.front.rect.width > hardware::kWideFront.In(unit_);
    const Length most = build.end + space.front.thickness - hardware::kWoodAhead.In(unit_);
    Screws("front screw", spec_.screws.front, LongestScrew(most, unit_),
           hardware::kFrontScrews + (wide ? 2 : 0), id);
    const Length pitch = hardware::kBottomPitch.In(unit_);
    const Length in = hardware::kFromEdge.In(unit_);
    const Length through = ShortestScrew(build.bottom + hardware::kIntoWood.In(unit_), unit_);
    if (!Facts(build.joint).cut) {
      const int corner =
          hardware::CountAlong(box.back_height, hardware::kCornerPitch.In(unit_), build.bottom);
      Screws("box corner screw", LongestScrew(PartBelow(5 * build.side, 2), unit_), 4 * corner, id);
    }
    if (!Facts(build.fit).set_up) {
      const int round = hardware::CountAlong(box.panel_width, pitch, in) +
                        hardware::CountAlong(box.panel_depth, pitch, in);
      Screws("box bottom screw", through, 2 * round, id);
    } else if (build.open_back) {
      Screws("box bottom screw", through, hardware::CountAlong(box.panel_width, pitch, in), id);
    }
  }

  // --- The case ---------------------------------------------------------------------------------

  void Case(const CaseBuild& build) {
    for (const Part& part : bank_.parts) {
      if (Facts(part.role).joined) Joints(build, part, 2 * part.count);
    }
    if (build.feet_count > 0) {
      tally_.Add(Line(HardwareKind::kFoot, "foot", build.feet, build.feet_count));
    }
    if (build.frame) FrameJoints(build);
    if (build.worktop) WorktopScrews(build);
    if (!Facts(build.back).screwed) return;
    const Length pitch = hardware::kScrewPitch.In(unit_);
    const Length in = hardware::kFromEdge.In(unit_);
    const int round = hardware::CountAlong(build.panel_width, pitch, in) +
                      hardware::CountAlong(build.panel_height, pitch, in);
    Screws("back screw", ShortestScrew(build.back_thickness + hardware::kIntoWood.In(unit_), unit_),
           2 * round, {});
  }

  // Two at each end of each rail; three in each block behind the stiles.
  void FrameJoints(const CaseBuild& build) {
    std::int64_t ends = 0;
    for (const Part& part : bank_.parts) {
      const PartRoleFacts& facts = Facts(part.role);
      // All but the outer stiles.
      const bool rail = facts.grain == Grain::kHorizontal;
      if (facts.group == PartGroup::kFaceFrame && (rail || part.divider >= 0)) {
        ends += 2 * part.count;
      }
      if (facts.group != PartGroup::kBlocking) continue;
      Screws("blocking screw",
             LongestScrew(part.thickness + build.side - Length::Picometers(1), unit_),
             hardware::kBlockScrews * part.count, PartFor(bank_, part));
    }
    FrameFixing(build, hardware::kFrameFixings * ends);
  }

  void FrameFixing(const CaseBuild& build, std::int64_t amount) {
    const Length stock = build.frame->thickness;
    if (build.fixing != CaseFixing::kDowels) {
      return Screws("pocket screw", spec_.screws.pocket, PocketScrewFor(stock).value_or(Length()),
                    amount, {});
    }
    Dowels(stock, amount);
  }

  void Dowels(Length stock, std::int64_t amount) {
    const hardware::Dowel dowel = hardware::DowelFor(stock, unit_);
    HardwareLine line =
        Line(HardwareKind::kDowel, "dowel of " + FormatWithUnit(dowel.diameter, unit_),
             dowel.length, amount);
    line.suggested = true;
    tally_.Add(std::move(line));
  }

  // Up through top or stretchers into the worktop; where there is neither, brackets.
  void WorktopScrews(const CaseBuild& build) {
    const std::int64_t amount = build.width > defaults::kSixFeet.In(unit_) ? 6 : 4;
    if (build.top_none) {
      return tally_.Add(
          Line(HardwareKind::kScrew, "worktop bracket, with its screws", Length(), amount));
    }
    const Length most = build.top + build.worktop->thickness - hardware::kWoodAhead.In(unit_);
    Screws("worktop screw",
           Min(LongestScrew(most, unit_),
               ShortestScrew(build.top + hardware::kIntoWood.In(unit_), unit_)),
           amount, {});
  }

  // What holds `ends` joints as long as the part is deep.
  void Joints(const CaseBuild& build, const Part& part, std::int64_t ends) {
    const Length in = hardware::kFromEdge.In(unit_);
    switch (build.fixing) {
      case CaseFixing::kPocketScrews: {
        const int each = hardware::CountAlong(part.width, hardware::kScrewPitch.In(unit_), in);
        return Screws("pocket screw", spec_.screws.pocket,
                      PocketScrewFor(part.thickness).value_or(Length()), ends * each, {});
      }
      case CaseFixing::kDowels: {
        const int each = hardware::CountAlong(part.width, hardware::kDowelPitch.In(unit_), in);
        return Dowels(part.thickness, ends * each);
      }
      case CaseFixing::kGlue:
        return;
    }
  }

  // --- Bands and glue ---------------------------------------------------------------------------

  void Bands() {
    Length total;
    for (const CutLine& line : cuts_) {
      total +=
          line.kind.count * (line.banding.along * line.length + line.banding.across * line.width);
    }
    if (total.IsZero()) return;
    const Length spare = PartBelow(hardware::kSpareBand * total, 100);
    const bool inch = unit_ == Unit::kInch;  // in whole inches, or tenths of a meter
    const Length step = inch ? Length::Inches(1) : Length::Millimeters(100);
    const std::int64_t steps = CeilTo(total + spare, step).picometers() / step.picometers();
    HardwareLine line =
        Line(HardwareKind::kBand, spec_.edge_band.material.value, Length(),
             inch ? steps : 100 * steps, inch ? HardwareUnit::kInches : HardwareUnit::kMillimeters);
    if (line.what.empty()) line.what = "edge band";
    line.remark = FormatWithUnit(total, unit_) + " on the edges, plus 10 %";
    tally_.Add(std::move(line));
  }

  void Glue() {
    std::int64_t microlitres = 0;
    for (const Space& space : bank_.spaces) {
      if (space.HasBox()) microlitres += BoxGlue(space.box);
    }
    if (bank_.casework && bank_.casework->fixing != CaseFixing::kPocketScrews) {
      for (const Part& part : bank_.parts) {
        if (!Facts(part.role).joined) continue;
        microlitres += 2 * part.count * hardware::GlueMicrolitres(part.width, part.thickness);
      }
    }
    for (const CutLine& line : cuts_) {
      microlitres += (line.boards - 1) * line.kind.count *
                     hardware::GlueMicrolitres(line.rough_length, line.thickness);
    }
    constexpr std::int64_t kStep = 10'000;  // 10 ml
    const std::int64_t steps = (microlitres + kStep - 1) / kStep;
    HardwareLine line =
        Line(HardwareKind::kGlue, "wood glue", Length(), steps * 10, HardwareUnit::kMillilitres);
    line.estimate = true;
    tally_.Add(std::move(line));
  }

  // Four corners, and a bottom that is glued in a rabbet.
  static std::int64_t BoxGlue(const Box& box) {
    const BoxBuild& build = box.build;
    std::int64_t sum = 2 * (hardware::GlueMicrolitres(box.wood_height, build.end) +
                            hardware::GlueMicrolitres(box.back_height, build.end));
    if (Facts(build.fit).cut && !Facts(build.fit).set_up) {
      sum += 2 * hardware::GlueMicrolitres(box.panel_width + box.panel_depth, build.groove);
    }
    return sum;
  }

  const Spec& spec_;
  const Bank& bank_;
  const std::vector<CutLine>& cuts_;
  Unit unit_;
  HardwareTally tally_;
};

}  // namespace

std::string_view ToText(HardwareKind kind) { return kKinds[static_cast<std::size_t>(kind)]; }
std::string_view ToText(HardwareUnit unit) { return kUnits[static_cast<std::size_t>(unit)]; }

std::vector<HardwareLine> HardwareList(const Spec& spec, const Bank& bank) {
  return HardwareRule(spec, bank, CutList(spec, bank)).Run();
}

PartsLists MakePartsLists(const Spec& spec, const Bank& bank) {
  std::vector<CutLine> cuts = CutList(spec, bank);
  std::vector<FrontRun> runs = FrontRuns(spec, bank, cuts);
  std::vector<HardwareLine> hardware = HardwareRule(spec, bank, cuts).Run();
  return {std::move(cuts), std::move(hardware), std::move(runs)};
}

}  // namespace tillwright
