#include <algorithm>
#include <array>

#include "check/case_checks.h"
#include "check/drawer_checks.h"
#include "check/finding_list.h"
#include "check/fit_checks.h"
#include "check/movement_checks.h"
#include "check/strength_checks.h"
#include "check/tipping.h"
#include "spec/defaults.h"
#include "spec/kind_table.h"
#include "tillwright/check.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

constexpr std::array<std::string_view, 4> kLevels{"pass", "note", "warn", "fail"};
static_assert(InOrder(kChecks));

class BankChecks {
 public:
  BankChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out)
      : spec_(spec), bank_(bank), list_(bank.units, out) {}

  void Run() {
    Closing();
    Gaps();
    Overlays();
    Notes();
  }

 private:
  void Closing() {
    bool closes = true;
    for (const SolveNote& note : bank_.notes) {
      if (note.kind != SolveNote::Kind::kDoesNotClose) continue;
      closes = false;
      const bool too_long = note.amount < Length();
      const std::string amount = list_.In(too_long ? -note.amount : note.amount);
      list_.Add(CheckCode::kClosure, Level::kFail, note.subject,
                "fronts and gaps of " + note.subject + " are " + amount +
                    (too_long ? " too long in all: make one front "
                              : " too short in all: make one front ") +
                    amount + (too_long ? " smaller" : " larger") + ", or leave one size open",
                note.amount, Length(), kGeometry);
    }
    if (closes) {
      list_.Pass(CheckCode::kClosure, "bank", "fronts and gaps close exactly", Length(), Length(),
                 kGeometry);
    }
  }

  void Gaps() {
    const LimitsSpec& limits = spec_.limits;
    const Length least = LengthOr(limits.least, defaults::kLeastGap, list_.unit());
    const Length most = LengthOr(limits.greatest, defaults::kGreatestGap, list_.unit());
    const std::string_view source =
        limits.least.typed || limits.greatest.typed ? kSpecSource : kCommon;
    for (const Gap& gap : bank_.gaps) {
      std::string subject = ToText(bank_, gap.from);
      subject += " to ";
      subject += ToText(bank_, gap.to);
      if (bank_.style == FrontStyle::kOverlay && gap.size <= Length()) {
        list_.Add(CheckCode::kMeet, Level::kFail, subject,
                  "the fronts collide over the edge they share: widen the gap by at least " +
                      list_.In(least - gap.size),
                  gap.size, Length(), kGeometry);
      }
      if (gap.size < least) {
        list_.Add(CheckCode::kGap, Level::kFail, subject,
                  "the gap of " + list_.In(gap.size) + " is " + list_.In(least - gap.size) +
                      " below the minimum: widen it by that much",
                  gap.size, least, source);
      } else if (gap.size > most) {
        list_.Add(CheckCode::kGap, Level::kFail, subject,
                  "the gap of " + list_.In(gap.size) + " is " + list_.In(gap.size - most) +
                      " above the maximum: narrow it by that much, or raise \"limits\"",
                  gap.size, most, source);
      } else {
        list_.Pass(CheckCode::kGap, subject, "the gap is within its limits", gap.size, most,
                   source);
      }
    }
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
      const Length edge = bank_.casework->EdgeAt(overlap.edge);
      if (overlap.size > edge) {
        list_.Add(CheckCode::kOverlay, Level::kFail, std::move(subject),
                  "the front covers " + list_.In(overlap.size) + " of an edge " + list_.In(edge) +
                      " thick: reduce the overlay by " + list_.In(overlap.size - edge),
                  overlap.size, edge, kGeometry);
      } else {
        list_.Pass(CheckCode::kOverlay, subject, "the overlay is within the case edge",
                   overlap.size, edge, kGeometry);
      }
    }
  }

  // With only an opening given nobody knows the case's edge; say what it must be when that is more
  // than the usual stock.
  void UnknownEdge(const Overlap& overlap, std::string subject) {
    const Length usual = defaults::kCaseStock.In(list_.unit());
    if (overlap.size <= usual) return;
    list_.Add(CheckCode::kOverlay, Level::kNote, std::move(subject),
              "the case's edge must be at least " + list_.In(overlap.size) +
                  " thick to carry this overlay",
              overlap.size, usual, kCommon);
  }

  void Notes() {
    for (const SolveNote& note : bank_.notes) {
      switch (note.kind) {
        case SolveNote::Kind::kDoesNotClose:
          break;  // a failing closure
        case SolveNote::Kind::kFirstMoved:
          list_.Add(CheckCode::kGraduation, Level::kNote, note.subject,
                    "\"min\" or \"max\" moves the first size to " + list_.In(note.amount),
                    note.amount, std::nullopt, kSpecSource);
          break;
        case SolveNote::Kind::kOutOfLine:
          list_.Add(CheckCode::kOutOfLine, Level::kNote, note.subject,
                    "rounding puts the outer edges of stacked fronts " + list_.In(note.amount) +
                        " out of line; a finer \"round\" reduces it",
                    note.amount, bank_.round, kGeometry);
          break;
        case SolveNote::Kind::kNoDivider:
          list_.Add(CheckCode::kSupport, Level::kWarn, note.subject,
                    "\"divider\": \"none\" leaves drawers with nothing to mount on or rest on: "
                    "give a thickness, or choose slides that need no divider",
                    std::nullopt, std::nullopt, kCommon);
          break;
      }
    }
  }

  const Spec& spec_;
  const Bank& bank_;
  FindingList list_;
};

}  // namespace

std::string_view ToText(Level level) { return kLevels[static_cast<std::size_t>(level)]; }

std::string_view ToText(CheckCode code) { return kChecks[static_cast<std::size_t>(code)].word; }

std::vector<Finding> CheckBank(const Spec& spec, const Bank& bank) {
  std::vector<Finding> findings;
  findings.reserve(bank.spaces.size() * 13 + bank.gaps.size() + bank.overlaps.size() + 8);
  BankChecks(spec, bank, findings).Run();
  AddDrawerChecks(spec, bank, findings);
  AddCaseChecks(spec, bank, findings);
  AddStrengthChecks(spec, bank, findings);
  AddTippingCheck(spec, bank, findings);
  AddMovementChecks(spec, bank, findings);
  AddFitChecks(spec, bank, findings);
  return findings;
}

bool HasFailure(const std::vector<Finding>& findings) {
  return std::ranges::any_of(findings, [](const Finding& f) { return f.level == Level::kFail; });
}

}  // namespace tillwright
