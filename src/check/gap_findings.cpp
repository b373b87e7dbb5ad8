#include "check/gap_findings.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "check/chance.h"
#include "check/figures.h"
#include "spec/defaults.h"
#include "spec/species.h"

namespace tillwright {
namespace {

constexpr std::string_view kHandbook =
    "USDA Wood Handbook, table 13-5 and eq. 13-2 (an estimate: boards differ)";
constexpr std::string_view kStack = "stack-up of the tolerances";
constexpr std::string_view kMeasuredSource = "measured";
constexpr std::string_view kCommon = "common practice, no source";
constexpr std::string_view kGeometry = "geometry";

// A gap that grows by more than this from end to end looks crooked (common practice).
constexpr Default kSeenTaper{Length::Inches(1, 32), defaults::TenthMm(8)};
// Spacers that come no nearer than this to the gap are worth a remark (common practice).
constexpr Default kShimError{Length::Inches(1, 64), defaults::TenthMm(4)};

Length Rounded(double mm) {
  return Length::Picometers(std::llround(mm * static_cast<double>(Length::kPerMillimeter)));
}

class Finder {
 public:
  Finder(const Spec& spec, const Bank& bank, const RealOpening& real, GapCheck& check)
      : spec_(spec), bank_(bank), real_(real), check_(check) {}

  void Run() {
    check_.findings.reserve(check_.stacks.size() * 3 + 8);
    Limits();
    if (check_.has_season) Moisture();
    for (StackUp& stack : check_.stacks) {
      stack.is_overlap ? Overlap_(stack) : Gap_(stack);
    }
    if (check_.has_measured) Measured();
    if (!spec_.spacers.empty()) Shims();
  }

 private:
  std::string In(Length length) const { return FormatWithUnit(length, bank_.units); }
  std::string About(double mm) const { return In(NearestShown(mm, bank_.units)); }

  void Add(CheckCode code, Level level, std::string subject, std::string message,
           std::optional<Length> value, std::optional<Length> limit, std::string_view source) {
    check_.findings.push_back(
        {code, level, std::move(subject), std::move(message), value, limit, source});
  }

  void Limits() {
    if (check_.least < check_.greatest) return;
    Add(CheckCode::kLimitsCross, Level::kFail, "bank",
        "the minimum for a gap is " + In(check_.least) + ", the maximum " + In(check_.greatest) +
            ": no gap can meet both",
        check_.greatest, check_.least, kGeometry);
  }

  // --- Moisture ----------------------------------------------------------------------------------

  void Moisture() {
    constexpr double kDriest = 6;
    constexpr double kDampest = 14;
    const double low = std::min({check_.made, check_.dry, check_.humid});
    const double high = std::max({check_.made, check_.dry, check_.humid});
    if (low < kDriest || high > kDampest) {
      Add(CheckCode::kMoisture, Level::kNote, "bank",
          "moisture goes from " + PercentText(low) + " to " + PercentText(high) +
              "; the coefficients hold from 6 to 14 %; beyond that the movement is a guess",
          std::nullopt, std::nullopt, kHandbook);
      return;
    }
    const bool moves = std::ranges::any_of(bank_.spaces, [](const Space& space) {
      return space.HasFront() && SpeciesOf(space.front.material) != nullptr;
    });
    Add(CheckCode::kMoisture, moves ? Level::kPass : Level::kNote, "bank",
        moves ? "moisture is within the range of the coefficients"
              : "no front is of a known solid wood, so no movement was calculated: if one is "
                "solid, name the wood in \"fronts.material\"",
        std::nullopt, std::nullopt, kHandbook);
  }

  // --- One gap -----------------------------------------------------------------------------------

  void Gap_(StackUp& stack) {
    const Envelope envelope = EnvelopeOf(check_, stack);
    const std::string subject = SubjectOf(bank_, stack);
    Tolerance(stack, envelope, subject);
    if (check_.has_season) Season(stack, envelope, subject);
    if (check_.has_measured) {
      AsMeasured(stack, envelope, subject);
      if (!stack.taper.IsZero()) Taper(stack, envelope, subject);
    }
  }

  void Raise(StackUp& stack, Level level) { stack.verdict = std::max(stack.verdict, level); }

  // The figure that is further out of the limits, and the limit.
  std::pair<double, Length> Worse(const StackUp& stack, double low, double high) const {
    if (!stack.greatest) return {low, check_.least};
    const double under = ToMillimeters(check_.least) - low;
    const double over = high - ToMillimeters(*stack.greatest);
    return under >= over ? std::pair{low, check_.least} : std::pair{high, *stack.greatest};
  }

  std::string Outside(const StackUp& stack, double low, double high) const {
    const auto [figure, limit] = Worse(stack, low, high);
    return figure < ToMillimeters(limit)
               ? About(ToMillimeters(limit) - figure) + " below the minimum"
               : About(figure - ToMillimeters(limit)) + " above the maximum";
  }

  void Tolerance(StackUp& stack, const Envelope& envelope, const std::string& subject) {
    const double nominal = ToMillimeters(stack.nominal);
    const double spread = stack.spread.Millimeters();
    const auto [figure, limit] = Worse(stack, nominal - spread, nominal + spread);
    Level level = Level::kPass;
    std::string message = "the gap stays within its limits in the worst case";
    if (envelope.tolerance_worst) {
      level = Level::kWarn;
      message = "in the worst case the gap goes from " + About(nominal - spread) + " to " +
                About(nominal + spread) + ", " +
                Outside(stack, nominal - spread, nominal + spread) + "; it stays within them in " +
                ChanceText(stack) + " of cases" + PlanedToFit(stack);
    }
    Raise(stack, level);
    Add(CheckCode::kGapTolerance, level, subject, std::move(message), Rounded(figure), limit,
        kStack);
  }

  // By itself, each tolerance three standard deviations.
  std::string ChanceText(const StackUp& stack) const {
    const double most =
        stack.greatest ? ToMillimeters(*stack.greatest) : std::numeric_limits<double>::infinity();
    const double chance = ChanceWithin(ToMillimeters(stack.nominal), stack.rss_mm / 3,
                                       ToMillimeters(check_.least), most);
    return PercentText(std::min(100 * chance, 99.9));
  }

  std::string PlanedToFit(const StackUp& stack) const {
    if (bank_.style != FrontStyle::kInset) return {};
    const Gap& gap = bank_.gaps[static_cast<std::size_t>(stack.index)];
    const bool between =
        gap.from.kind == GapEnd::Kind::kSpace && gap.to.kind == GapEnd::Kind::kSpace;
    return between ? "" : "; an inset front is planed to fit when it is set";
  }

  void Season(StackUp& stack, const Envelope& envelope, const std::string& subject) {
    const double low = std::min(stack.dry_mm, stack.humid_mm);
    const double high = std::max(stack.dry_mm, stack.humid_mm);
    const auto [figure, limit] = Worse(stack, low, high);
    const double closes = ToMillimeters(stack.nominal) - stack.humid_mm;
    std::string message =
        "the gap stays within its limits all year; in the humid season it closes by " +
        About(closes);
    if (envelope.season) {
      message = "in the humid season the gap is " + About(stack.humid_mm) + ", in the dry season " +
                About(stack.dry_mm) + ": " + Outside(stack, low, high) +
                (stack.humid_mm <= 0 ? ", and the fronts bind" : "") + "; leave at least " +
                About(stack.least_to_leave_mm) + " when the fronts are made";
    }
    const Level level = envelope.season ? Level::kFail : Level::kPass;
    Raise(stack, level);
    Add(CheckCode::kGapSeason, level, subject, std::move(message), Rounded(figure), limit,
        kHandbook);
  }

  void AsMeasured(StackUp& stack, const Envelope& envelope, const std::string& subject) {
    const double size = stack.measured.Millimeters();
    const auto [figure, limit] = Worse(stack, size, size);
    const Level level = envelope.measured ? Level::kFail : Level::kPass;
    Raise(stack, level);
    Add(CheckCode::kGapMeasured, level, subject,
        envelope.measured ? "as measured the gap works out to " + About(size) + ", " +
                                Outside(stack, size, size) + ": fit the fronts to what was measured"
                          : "as measured the gap stays within its limits",
        Rounded(figure), limit, kMeasuredSource);
  }

  void Taper(StackUp& stack, const Envelope& envelope, const std::string& subject) {
    const Length taper = Max(stack.taper, -stack.taper);
    const double half = ToMillimeters(taper) / 2;
    const double size = stack.measured.Millimeters();
    const Length seen = kSeenTaper.In(bank_.units);
    const std::string by = In(FloorTo(taper, Length::Picometers(1'000'000)));
    Level level = Level::kPass;
    std::string message = "a square front leaves a gap that tapers by " + by +
                          " from end to end; cut it square: the taper will not show";
    if (envelope.taper) {
      level = Level::kFail;
      message = "a square front leaves a gap from " + About(size - half) + " to " +
                About(size + half) + ", " + Outside(stack, size - half, size + half) +
                ": trimming the front " + by + " out of square evens the gap";
    } else if (taper > seen) {
      level = Level::kWarn;
      message = "a square front leaves a gap that tapers by " + by +
                ", which will show: trim the front " + by + " out of square";
    }
    Raise(stack, level);
    Add(CheckCode::kGapTaper, level, subject, std::move(message), taper, seen, kCommon);
  }

  // --- Overlaps ----------------------------------------------------------------------------------

  void Overlap_(StackUp& stack) {
    if (stack.nominal <= Length()) return;  // meant to stop short of the edge
    const double nominal = ToMillimeters(stack.nominal);
    double low = nominal - stack.rss_mm;
    if (check_.has_season) low = std::min({low, stack.dry_mm, stack.humid_mm});
    if (check_.has_measured) low = std::min(low, stack.measured.Millimeters());
    const bool covers = low > 0;
    Raise(stack, covers ? Level::kPass : Level::kFail);
    Add(CheckCode::kCover, stack.verdict, SubjectOf(bank_, stack),
        covers ? "the front covers the opening's edge in every case"
               : "the front may end up " + About(-low) + " short of the opening's edge",
        Rounded(low), Length(), kStack);
  }

  // --- What was measured -------------------------------------------------------------------------

  void Measured() {
    for (const MeasuredCell& cell : check_.cells) Box(cell);
    for (const Space& space : bank_.spaces) {
      if (space.HasBox() && spec_.measured.depth.typed) Depth(space);
    }
    if (check_.refit) Refit_(*check_.refit);
  }

  void Box(const MeasuredCell& cell) {
    const Space& space = bank_.spaces[static_cast<std::size_t>(cell.space)];
    const Length fits = cell.fits;
    const std::string id = ToText(space.id);
    if (cell.made && cell.box_width > fits) {
      return Add(CheckCode::kBoxMeasured, Level::kFail, id,
                 "the box is " + In(cell.box_width - fits) +
                     " too wide for the opening as measured: make it " + In(fits) + " wide",
                 cell.box_width, fits, kMeasuredSource);
    }
    const bool changed = !cell.made && cell.box_width != space.box.width;
    Add(CheckCode::kBoxMeasured, changed ? Level::kNote : Level::kPass, id,
        changed ? "make the box " + In(cell.box_width) + " wide, not " + In(space.box.width) +
                      ", to fit the opening as measured"
                : "the box fits the opening as measured",
        cell.box_width, fits, kMeasuredSource);
  }

  void Depth(const Space& space) {
    const Length taken = space.box.z + space.slide.length + space.slide.behind;
    const bool fits = taken <= real_.depth();
    Add(CheckCode::kDepthMeasured, fits ? Level::kPass : Level::kFail, ToText(space.id),
        fits ? "the slide fits the depth as measured"
             : "the slide plus rear clearance is too long for the depth as measured, by " +
                   In(taken - real_.depth()) + ": use a shorter slide",
        taken, real_.depth(), kMeasuredSource);
  }

  void Refit_(const Refit& refit) {
    for (const std::string& unmet : refit.unmet) {
      Add(CheckCode::kRefit, Level::kWarn, "bank",
          (refit.solved ? "can no longer be met: "
                        : "cannot be solved with the parts already made: ") +
              unmet,
          std::nullopt, std::nullopt, kMeasuredSource);
    }
    if (!refit.unmet.empty()) return;
    const std::size_t n = refit.changes.size();
    Add(CheckCode::kRefit, n == 0 ? Level::kPass : Level::kNote, "bank",
        n == 0 ? "everything measured is as planned"
               : "the parts not yet cut can be adjusted to suit: " + std::to_string(n) +
                     (n == 1 ? " size changes" : " sizes change"),
        std::nullopt, std::nullopt, kMeasuredSource);
  }

  // --- Spacers -----------------------------------------------------------------------------------

  void Shims() {
    const Length enough = kShimError.In(bank_.units);
    for (const StackUp& stack : check_.stacks) {
      if (!stack.shims) continue;
      const Length error = stack.shims->error;
      const Length off = Max(error, -error);
      const bool near = off <= enough;
      Add(CheckCode::kShims, near ? Level::kPass : Level::kWarn, SubjectOf(bank_, stack),
          near ? "the spacers on hand set the gap"
               : "the spacers on hand cannot get closer than " + In(off) + ": plane a spacer " +
                     In(stack.nominal) + " thick",
          error, enough, kCommon);
    }
  }

  const Spec& spec_;
  const Bank& bank_;
  const RealOpening& real_;
  GapCheck& check_;
};

}  // namespace

Envelope EnvelopeOf(const GapCheck& check, const StackUp& stack) {
  Envelope out;
  const double nominal = ToMillimeters(stack.nominal);
  const double least = ToMillimeters(check.least);
  const double greatest =
      stack.greatest ? ToMillimeters(*stack.greatest) : std::numeric_limits<double>::infinity();
  out.likely_low = out.likely_high = nominal;
  // A picometer is no reason to fail: the doubles here are estimates.
  constexpr double kNothing = 1e-9;
  const auto take = [&](double low, double high) {
    out.likely_low = std::min(out.likely_low, low);
    out.likely_high = std::max(out.likely_high, high);
    return low < least - kNothing || high > greatest + kNothing;
  };
  const HalfLength low = HalfLength::Of(stack.nominal) - stack.spread;
  const HalfLength high = HalfLength::Of(stack.nominal) + stack.spread;
  out.tolerance_worst = low < HalfLength::Of(check.least) ||
                        (stack.greatest && high > HalfLength::Of(*stack.greatest));
  take(nominal - stack.rss_mm, nominal + stack.rss_mm);
  if (check.has_season) {
    out.season =
        take(std::min(stack.dry_mm, stack.humid_mm), std::max(stack.dry_mm, stack.humid_mm));
  }
  if (check.has_measured) {
    const double size = stack.measured.Millimeters();
    const double half = std::abs(ToMillimeters(stack.taper)) / 2;
    out.measured = take(size, size);
    out.taper = take(size - half, size + half) && half > 0;
  }
  out.low = std::min(out.likely_low, low.Millimeters());
  out.high = std::max(out.likely_high, high.Millimeters());
  return out;
}

void FindGaps(const Spec& spec, const Bank& bank, const RealOpening& real, GapCheck& check) {
  Finder(spec, bank, real, check).Run();
}

}  // namespace tillwright
