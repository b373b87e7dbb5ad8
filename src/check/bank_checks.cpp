#include <algorithm>
#include <array>

#include "check/box_movement.h"
#include "check/case_checks.h"
#include "check/drawer_checks.h"
#include "check/finding_list.h"
#include "check/fit_checks.h"
#include "check/movement_checks.h"
#include "check/strength_checks.h"
#include "check/tipping.h"
#include "spec/defaults.h"
#include "spec/kinds.h"
#include "tillwright/check.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

constexpr std::array<std::string_view, 4> kLevels{"pass", "note", "warn", "fail"};
static_assert(InOrder(kChecks));

class BankChecks {
 public:
  BankChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out)
      : spec_(spec),
        bank_(bank),
        list_(bank.units, out),
        least_(LengthOr(spec.limits.least, defaults::kLeastGap, bank.units)),
        most_(LengthOr(spec.limits.greatest, defaults::kGreatestGap, bank.units)) {}

  void Run() {
    Closing();
    Gaps();
    Overlays();
    Bare();
    if (bank_.casework && bank_.casework->web && bank_.casework->web->open) OpenRails();
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
    for (const Gap& gap : bank_.gaps) {
      const std::string subject = ToText(bank_, gap.from) + " to " + ToText(bank_, gap.to);
      const bool neighbors = gap.to.kind == GapEnd::Kind::kSpace;
      if (bank_.style == FrontStyle::kOverlay && neighbors && gap.size <= Length()) {
        list_.Add(CheckCode::kMeet, Level::kFail, subject,
                  "the fronts collide over the edge they share: widen the gap by at least " +
                      list_.In(least_ - gap.size),
                  gap.size, Length(), kGeometry);
      }
      Within(gap, subject);
    }
  }

  // A gap with the edge of a member in it may be as wide as that: it is the look of the piece.
  void Within(const Gap& gap, const std::string& subject) {
    const std::string_view source =
        spec_.limits.least.typed || spec_.limits.greatest.typed ? kSpecSource : kCommon;
    const bool worktop =
        bank_.style == FrontStyle::kOverlay && gap.to.kind == GapEnd::Kind::kOpening;
    if (gap.size < least_ || (worktop && gap.size <= Length())) {
      const Length wanted = least_.IsZero() ? defaults::kGap.In(list_.unit()) : least_;
      list_.Add(CheckCode::kGap, Level::kFail, subject,
                "the gap of " + list_.In(gap.size) + " is " + list_.In(wanted - gap.size) +
                    " below the minimum: widen it by that much",
                gap.size, least_, source);
    } else if (gap.behind < 0 && gap.size > most_) {
      list_.Add(CheckCode::kGap, Level::kFail, subject,
                "the gap of " + list_.In(gap.size) + " is " + list_.In(gap.size - most_) +
                    " above the maximum: narrow it by that much, or raise \"limits\"",
                gap.size, most_, source);
    } else if (gap.behind < 0) {
      list_.Pass(CheckCode::kGap, subject, "the gap is within its limits", gap.size, most_, source);
    } else {
      list_.Pass(CheckCode::kGap, subject, "the gap is not below the minimum", gap.size, least_,
                 source);
    }
  }

  // Nothing but wood or a gap between fronts is to be seen from the front.
  void Bare() {
    for (const Gap& gap : bank_.gaps) {
      if (gap.behind >= 0) Shows(gap);
    }
    for (const Overlap& overlap : bank_.overlaps) {
      if (overlap.size >= Length()) continue;
      const Length slot = -overlap.size;
      list_.Add(CheckCode::kBare, Level::kFail, SubjectOf(overlap),
                "the front stops " + list_.In(slot) +
                    " short of the opening's edge and leaves a slot into the case: make "
                    "\"fronts.overlay." +
                    std::string(Word(overlap.edge)) + "\" at least " + list_.In(slot) + " more",
                overlap.size, Length(), kGeometry);
    }
  }

  void Shows(const Gap& gap) {
    const Divider& member = bank_.dividers[static_cast<std::size_t>(gap.behind)];
    const Length thick = member.partition ? member.rect.width : member.rect.height;
    const std::string subject = ToText(bank_, gap.from) + " to " + ToText(bank_, gap.to);
    if (gap.size <= thick) {
      return list_.Pass(CheckCode::kBare, subject, "the gap shows nothing but the edge behind it",
                        gap.size, thick, kGeometry);
    }
    const char* what = member.partition ? "partition" : "divider";
    const char* sides = member.partition ? " left and right of it" : " above and below it";
    list_.Add(CheckCode::kBare, Level::kFail, subject,
              "the gap of " + list_.In(gap.size) + " is wider than the " + what +
                  " behind it is thick, " + list_.In(thick) + ", and leaves slots of " +
                  list_.In(HalfAbove(gap.size - thick)) + " into the case" + sides +
                  ": make \"gap\" " + list_.In(thick) + " or less, or \"divider\" " +
                  list_.In(gap.size) + " or more",
              gap.size, thick, kGeometry);
  }

  // Rails without runners carry nothing: drawers over them must hang on their slides.
  void OpenRails() {
    for (const Space& space : bank_.spaces) {
      const bool over_rails = space.HasBox() && space.cell.y > Length();
      if (!over_rails || !Facts(space.slide.type).beneath) continue;
      list_.Add(CheckCode::kSupport, Level::kWarn, ToText(space.id),
                "open rails leave the drawer nothing to rest on: remove \"rails\" from "
                "\"web_frame\", or choose slides that mount on the sides",
                std::nullopt, std::nullopt, kCommon);
    }
  }

  std::string SubjectOf(const Overlap& overlap) const {
    return ToText(bank_.spaces[static_cast<std::size_t>(overlap.space)].id) + " " +
           std::string(Word(overlap.edge));
  }

  void Overlays() {
    for (const Overlap& overlap : bank_.overlaps) {
      std::string subject = SubjectOf(overlap);
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
        case SolveNote::Kind::kTwoSizes:
          list_.Add(CheckCode::kGraduation, Level::kNote, note.subject,
                    "equal fronts work out to two sizes; \"alike\": true in \"graduate\" makes "
                    "them one, with a remainder of " +
                        list_.In(note.amount),
                    note.amount, std::nullopt, kGeometry);
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
  Length least_, most_;  // what any gap may become
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
  AddBoxMovement(spec, bank, findings);
  AddFitChecks(spec, bank, findings);
  return findings;
}

bool HasFailure(const std::vector<Finding>& findings) {
  return std::ranges::any_of(findings, [](const Finding& f) { return f.level == Level::kFail; });
}

}  // namespace tillwright
