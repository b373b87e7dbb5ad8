#include "check/case_checks.h"

#include <algorithm>
#include <array>

#include "check/finding_list.h"
#include "spec/kinds.h"

namespace tillwright {
namespace {

struct PocketRow {
  Length from, to, screw;  // stock within [from, to)
};
constexpr std::array kPocketRows{
    PocketRow{Length::Inches(7, 16), Length::Inches(5, 8), Length::Inches(1)},
    PocketRow{Length::Inches(5, 8), Length::Inches(13, 16), Length::Inches(5, 4)},
    PocketRow{Length::Inches(13, 16), Length::Inches(9, 8), Length::Inches(3, 2)},
    PocketRow{Length::Inches(11, 8), Length::Inches(7, 4), Length::Inches(5, 2)},
};

class CaseChecks {
 public:
  CaseChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out)
      : spec_(spec), bank_(bank), build_(*bank.casework), list_(bank.units, out) {}

  void Run() {
    Back();
    Joint();
    if (Facts(build_.joint).cut) Seats();
    if (build_.fixing == CaseFixing::kPocketScrews) PocketScrews(build_, id_);
  }

 private:
  void Back() {
    const BackFacts& back = Facts(build_.back);
    if (back.lap) {
      list_.Rabbet(id_, "the back's rabbet", build_.back_lap, build_.side);
    }
    if (!back.inset) return;
    list_.Groove(id_, "the back's groove", build_.back_depth, build_.side);
    if (build_.back_inset >= build_.back_depth) return;
    list_.Add(CheckCode::kGrooveUnder, build_.back_inset.IsZero() ? Level::kFail : Level::kWarn,
              id_,
              "only " + list_.In(build_.back_inset) +
                  " of wood is left behind the back groove: move it forward " +
                  list_.In(build_.back_depth - build_.back_inset) + "",
              build_.back_inset, build_.back_depth, kCommon);
  }

  void Joint() {
    const CaseJointFacts& joint = Facts(build_.joint);
    if (!joint.cut) return;
    if (joint.at_end) return list_.Rabbet(id_, joint.what, build_.joint_depth, build_.side);
    list_.Groove(id_, joint.what, build_.joint_depth, build_.side);
    if (!joint.tongue) return;
    BesideGroove("below the bottom's dado", build_.raise + build_.bottom - build_.tongue);
    if (!build_.top_none) BesideGroove("above the top's dado", build_.top - build_.tongue);
    Tongue();
  }

  // Between a groove and the side's end the grain is short.
  void BesideGroove(const std::string& where, Length wood) {
    if (wood >= build_.joint_depth) {
      return list_.Pass(CheckCode::kGrooveUnder, id_, "there is enough wood beside the dadoes",
                        wood, build_.joint_depth, kCommon);
    }
    list_.Add(CheckCode::kGrooveUnder, Level::kWarn, id_,
              "only " + list_.In(wood) + " of wood is left in the sides " + where +
                  ": make the tongue " + list_.In(build_.joint_depth - wood) +
                  " thinner, or the dado shallower",
              wood, build_.joint_depth, kCommon);
  }

  void Tongue() {
    const Length least = defaults::kLeastTongue.In(list_.unit());
    if (build_.tongue >= least) {
      return list_.Pass(CheckCode::kTongue, id_, "the tongues are thick enough to hold",
                        build_.tongue, least, kCommon);
    }
    list_.Add(CheckCode::kTongue, Level::kFail, id_,
              "tongues " + list_.In(build_.tongue) + " thick will break off: make them " +
                  list_.In(least - build_.tongue) + " thicker",
              build_.tongue, least, kCommon);
  }

  // --- Members that take members ----------------------------------------------------------------

  // Where a member ends on another: at `at` along its own run, on one face of what takes it.
  struct End {
    Length at, from, to;
    bool partition = false;
    friend auto operator<=>(const End&, const End&) = default;
  };

  void Seats() {
    for (const Divider& member : bank_.dividers) {
      const Rect& r = member.rect;
      if (member.partition) {
        for (const Length y : {r.y, r.Top()}) ends_.push_back({y, r.x, r.Right(), true});
      } else {
        for (const Length x : {r.x, r.Right()}) ends_.push_back({x, r.y, r.Top(), false});
      }
    }
    std::ranges::sort(ends_);
    for (const Divider& member : bank_.dividers) SeatsOf(member);
    if (build_.top_none &&
        !EndsOn(bank_.opening_height, Length(), bank_.opening_width, true).empty()) {
      list_.Add(CheckCode::kFitHeight, Level::kNote, id_,
                "partitions project " + list_.In(build_.joint_depth) +
                    " above the case, for the same joint in the worktop's underside: cut that "
                    "joint too, or trim them flush",
                build_.joint_depth, std::nullopt, kCommon);
    }
    if (!EndsOn(Length(), Length(), bank_.opening_width, true).empty()) {
      list_.Groove(id_, "the dado for partitions in the bottom", build_.joint_depth, build_.bottom);
    }
  }

  void SeatsOf(const Divider& member) {
    const Rect& r = member.rect;
    const bool upright = member.partition;
    const Length low = upright ? r.y : r.x;
    const Length high = upright ? r.Top() : r.Right();
    const auto one = EndsOn(upright ? r.x : r.y, low, high, !upright);
    const auto other = EndsOn(upright ? r.Right() : r.Top(), low, high, !upright);
    if (one.empty() && other.empty()) return;
    const std::string id = ToText(member);
    const Length thick = upright ? r.width : r.height;
    const bool crossed = std::ranges::any_of(one, [&](const End& a) {
      return std::ranges::any_of(other,
                                 [&](const End& b) { return a.from < b.to && b.from < a.to; });
    });
    if (!crossed)
      return list_.Groove(id, "a dado for a divider or partition", build_.joint_depth, thick);
    BothFaces(id, 2 * build_.joint_depth, thick);
  }

  // Of members that end at `at` between `low` and `high`.
  [[nodiscard]] std::vector<End> EndsOn(Length at, Length low, Length high, bool partition) const {
    std::vector<End> found;
    auto end = std::ranges::lower_bound(ends_, End{at, low, Length(), false});
    for (; end != ends_.end() && end->at == at && end->from < high; ++end) {
      if (end->partition == partition) found.push_back(*end);
    }
    return found;
  }

  // Members that meet through another from both sides.
  void BothFaces(const std::string& id, Length depth, Length thick) {
    const Length most = PartBelow(2 * thick, 3);
    if (depth <= most) {
      return list_.Pass(CheckCode::kGrooveDepth, id,
                        "dadoes in opposite faces leave a third of its thickness", depth, most,
                        kCommon);
    }
    list_.Add(CheckCode::kGrooveDepth, depth >= thick ? Level::kFail : Level::kWarn, id,
              "dadoes in opposite faces remove " + list_.In(depth) + " of " + list_.In(thick) +
                  ": make each " + list_.In(HalfAbove(depth - most)) + " shallower",
              depth, most, kCommon);
  }

  // --- Screws -----------------------------------------------------------------------------------

  void PocketScrews(const CaseBuild& build, const std::string& id) {
    const std::optional<Length> suits = PocketScrewFor(build.bottom);
    if (!suits) return;
    const Entry<Length>& typed = spec_.screws.pocket;
    if (!typed.typed) {
      return list_.Add(CheckCode::kPocketScrew, Level::kNote, id,
                       "pocket screws for stock " + list_.In(build.bottom) +
                           " thick: " + FormatWithUnit(*suits, Unit::kInch),
                       build.bottom, suits, kCommon);
    }
    if (typed.value == *suits) {
      return list_.Pass(CheckCode::kPocketScrew, id,
                        "the pocket screws are the right length for the stock", typed.value, *suits,
                        kCommon);
    }
    list_.Add(CheckCode::kPocketScrew, typed.value > *suits ? Level::kFail : Level::kWarn, id,
              "pocket screws of " + list_.In(typed.value) + " are the wrong length for stock of " +
                  list_.In(build.bottom) + ": use " + FormatWithUnit(*suits, Unit::kInch),
              typed.value, *suits, kCommon);
  }

  const std::string id_ = "case";
  const Spec& spec_;
  const Bank& bank_;
  const CaseBuild& build_;
  FindingList list_;
  std::vector<End> ends_;
};

}  // namespace

void AddCaseChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out) {
  if (bank.casework) CaseChecks(spec, bank, out).Run();
}

std::optional<Length> PocketScrewFor(Length stock) {
  for (const PocketRow& row : kPocketRows) {
    if (stock >= row.from && stock < row.to) return row.screw;
  }
  return std::nullopt;
}

}  // namespace tillwright
