#include <algorithm>
#include <cmath>

#include "bank/id_list.h"
#include "check/figures.h"
#include "text/utf8_width.h"
#include "tillwright/words.h"
#include "tillwright/write.h"
#include "write/page_text.h"
#include "write/text_table.h"

namespace tillwright {
namespace {

// "2,000"
std::string Grouped(int count) {
  std::string text = std::to_string(count);
  for (std::size_t at = text.size(); at > 3;) text.insert(at -= 3, ",");
  return text;
}

class CheckPage {
 public:
  CheckPage(const Spec& spec, const Bank& bank, const GapCheck& check, TextStyle style)
      : spec_(spec), bank_(bank), check_(check), page_(style) {}

  std::string Run(const std::vector<Finding>& findings) {
    page_.Head(bank_);
    Gaps(false, "Gaps");
    Gaps(true, "Overlays");
    Chance();
    if (check_.has_season) Season();
    if (check_.has_measured) Measured();
    for (const GivenLayout& layout : check_.layouts) Given(layout);
    FittingOrder();
    if (check_.refit) RefitTable(*check_.refit);
    Advice();
    page_.Checks(findings);
    page_.Cautions();
    return page_.Take();
  }

 private:
  std::string In(Length length) const { return FormatLength(length, bank_.units); }
  std::string WithUnit(Length length) const { return FormatWithUnit(length, bank_.units); }
  std::string About(double mm) const { return AboutText(mm, bank_.units); }
  std::string IdOf(int space) const {
    return ToText(bank_.spaces[static_cast<std::size_t>(space)].id);
  }

  // --- The gap table -----------------------------------------------------------------------------

  std::vector<std::string> CellsOf(const StackUp& stack) const {
    const double nominal = ToMillimeters(stack.nominal);
    const double spread = stack.spread.Millimeters();
    std::string most;
    for (const Contributor* c : Biggest(stack, 2)) {
      most += (most.empty() ? "" : ", ") + ContributorName(bank_, stack, *c);
    }
    return {In(stack.nominal),
            About(nominal - spread),
            About(nominal + spread),
            check_.has_season ? About(stack.dry_mm) : "",
            check_.has_season ? About(stack.humid_mm) : "",
            check_.has_measured ? About(stack.measured.Millimeters()) : "",
            std::string(ToText(stack.verdict)),
            most};
  }

  // Gaps that are alike in every figure stand in one row.
  void Gaps(bool overlaps, std::string_view heading) {
    TextTable table({{"", false, true},
                     {"planned"},
                     {"min"},
                     {"max"},
                     {"dry"},
                     {"humid"},
                     {"measured"},
                     {"verdict", false},
                     {"most affected by", false, true}});
    std::vector<std::pair<IdList, std::vector<std::string>>> rows;
    for (const StackUp& stack : check_.stacks) {
      if (stack.is_overlap != overlaps) continue;
      std::vector<std::string> cells = CellsOf(stack);
      rows.emplace_back().first.Add(SubjectOf(bank_, stack));
      rows.back().second = std::move(cells);
    }
    for (auto& [ids, cells] : rows) {
      cells.insert(cells.begin(), ids.ToText());
      table.Row(std::move(cells));
    }
    if (table.empty()) return;
    page_.Heading(heading, overlaps
                               ? "beyond the opening's edge; worst case"
                               : "bottom up, then left to right; min and max in the worst case");
    page_.Put(table.ToText());
  }

  void Chance() {
    page_.Heading("Chance");
    const auto percent = [](double share, double scale) {
      const auto units = static_cast<std::int64_t>(std::floor(share * 100 * scale + 0.5));
      const auto whole = static_cast<std::int64_t>(scale);
      std::string text = std::to_string(units / whole);
      std::string rest = std::to_string(units % whole);
      rest.insert(0, std::to_string(whole).size() - 1 - rest.size(), '0');
      return text + "." + rest + " %";
    };
    std::string text = "All gaps stay between " + In(check_.least) + " and " +
                       WithUnit(check_.greatest) + ": " + percent(check_.chance, 100);
    text += check_.chance_samples == 0
                ? ", exactly"
                : ", from " + Grouped(check_.chance_samples) + " simulated cases, standard error " +
                      percent(check_.chance_error, 100);
    page_.Line(text + ". Fronts cut to +/- " + In(check_.cut) + " and set to +/- " +
               In(check_.place) + ", the opening accurate to +/- " + WithUnit(check_.opening) +
               ", each taken as three standard deviations; fronts " +
               (check_.setting == Setting::kSpaced ? "set from the bottom up with spacers."
                                                   : "each set to its own line."));
  }

  void Season() {
    page_.Heading("Season", "an estimate: boards differ");
    page_.Line("Fronts made at " + PercentText(check_.made) + " moisture, " +
               PercentText(check_.dry) + " in the dry season, " + PercentText(check_.humid) +
               " in the humid one.");
    TextTable table({{"", false, true}, {"closes by"}, {"minimum gap today"}, {"binds", false}});
    for (const StackUp& stack : check_.stacks) {
      const double closes = ToMillimeters(stack.nominal) - stack.humid_mm;
      if (stack.is_overlap || std::abs(closes) < 1e-9) continue;
      table.Row({SubjectOf(bank_, stack), About(closes), About(stack.least_to_leave_mm),
                 stack.humid_mm <= 0 ? "yes" : "no"});
    }
    if (table.empty()) {
      page_.Line("No gap changes with the season.");
    } else {
      page_.Put(table.ToText());
    }
  }

  // --- What was measured -------------------------------------------------------------------------

  void Measured() {
    page_.Heading("The opening as measured");
    if (check_.lean) {
      const Length lean = *check_.lean;
      page_.Line(lean.IsZero()
                     ? "It is square."
                     : "It leans " + About(ToMillimeters(Max(lean, -lean))) + " to the " +
                           (lean > Length() ? "right" : "left") + " over its full height.");
    }
    TextTable cells({{"", false},
                     {"opening width"},
                     {"box width"},
                     {"shim behind left slide"},
                     {"right slide"},
                     {"", false}});
    for (const MeasuredCell& cell : check_.cells) {
      cells.Row({IdOf(cell.space), About(ToMillimeters(cell.width)), In(cell.box_width),
                 About(ToMillimeters(cell.shim_left)), About(ToMillimeters(cell.shim_right)),
                 cell.made ? "made" : ""});
    }
    if (!cells.empty()) page_.Put(cells.ToText());
    Tapers();
  }

  void Tapers() {
    TextTable table({{"", false, true}, {"tapers by"}, {"wider at", false}});
    for (const StackUp& stack : check_.stacks) {
      if (stack.taper.IsZero()) continue;
      const bool high = stack.taper > Length();
      const bool upright = stack.axis == Axis::kX;  // a side gap runs up
      table.Row({SubjectOf(bank_, stack), About(ToMillimeters(Max(stack.taper, -stack.taper))),
                 upright ? (high ? "top" : "bottom") : (high ? "right" : "left")});
    }
    if (table.empty()) return;
    page_.Heading("Tapering gaps", "with fronts cut square");
    page_.Put(table.ToText());
  }

  // --- Sizes that were all given -----------------------------------------------------------------

  void Given(const GivenLayout& layout) {
    const std::string name = IdOf(layout.first) + " to " + IdOf(layout.last);
    page_.Heading("Sizes given", name);
    const Length left = layout.left_over;
    if (left.IsZero()) return page_.Line("Fronts and gaps fill their length exactly.");
    page_.Line("Fronts and gaps together are " + WithUnit(Max(left, -left)) +
               (left < Length() ? " too long." : " too short."));
    if (layout.gap_count > 0) {
      page_.Line("Spread evenly: every gap works out to " +
                 About(ToMillimeters(layout.spread_gap)) + ", planned " + In(layout.gap) + ".");
    }
    page_.Line(std::string(layout.rows ? "Bottom" : "Left") +
               " as planned: " + (bank_.style == FrontStyle::kInset ? "the gap " : "the overlay ") +
               (layout.rows ? "at the top" : "at the right") + " works out to " +
               In(layout.flush_end) + ".");
    if (layout.front >= 0) {
      page_.Line("Smallest change: make " + IdOf(layout.front) + " " + WithUnit(Max(left, -left)) +
                 (left < Length() ? " smaller." : " larger."));
    }
  }

  // --- Fitting -----------------------------------------------------------------------------------

  std::string Pieces(const ShimSet& set) const {
    std::string text;
    for (const Shim& shim : set.pieces) {
      text +=
          (text.empty() ? "" : " + ") + std::to_string(shim.count) + " x " +
          Printable(SpacerName(spec_.spacers[static_cast<std::size_t>(shim.spacer)], bank_.units));
    }
    return text.empty() ? "none" : text;
  }

  // As on the fitting sheet: fronts in the order they are hung, and what sets each gap.
  void FittingOrder() {
    page_.Heading("Fitting order", "from the bottom up, then from the left");
    std::string fronts;
    for (const int space : HangingOrder(bank_)) {
      fronts += (fronts.empty() ? "" : ", ") + IdOf(space);
    }
    if (!fronts.empty()) page_.Line("Fit " + fronts + ".");
    TextTable table({{"", false},
                     {"gap", false, true},
                     {"wanted"},
                     {"spacers", false, true},
                     {"off by"},
                     {"measured"}});
    int step = 0;
    for (const StackUp& stack : check_.stacks) {
      if (stack.is_overlap) continue;
      const bool off = stack.shims && !stack.shims->error.IsZero();
      table.Row({std::to_string(++step), SubjectOf(bank_, stack), In(stack.nominal),
                 stack.shims ? Pieces(*stack.shims) : "",
                 off ? About(ToMillimeters(stack.shims->error)) : "", "________"});
    }
    if (!table.empty()) page_.Put(table.ToText());
  }

  void RefitTable(const Refit& refit) {
    TextTable table({{"", false, true}, {"planned"}, {"now"}});
    for (const Refit::Change& change : refit.changes) {
      table.Row(
          {change.path, About(ToMillimeters(change.planned)), About(ToMillimeters(change.now))});
    }
    page_.Heading("Refit", "parts already made keep their size; the rest is adjusted to suit");
    if (!table.empty()) page_.Put(table.ToText());
    for (const std::string& unmet : refit.unmet) page_.Line("Not met: " + Printable(unmet) + ".");
    if (table.empty() && refit.unmet.empty()) page_.Line("Nothing changes.");
  }

  void Advice() {
    if (check_.advice.empty()) return;
    page_.Heading("Advice", "with all these changes, no gap fails");
    for (const SpecChange& change : check_.advice) page_.Line(Printable(change.text));
  }

  const Spec& spec_;
  const Bank& bank_;
  const GapCheck& check_;
  PageText page_;
};

}  // namespace

std::string CheckTables(const Spec& spec, const Bank& bank, const GapCheck& check,
                        const std::vector<Finding>& findings, TextStyle style) {
  return CheckPage(spec, bank, check, style).Run(findings);
}

}  // namespace tillwright
