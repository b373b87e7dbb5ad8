// Nothing on any sheet or view touches what it should not, and every number is a solved dimension.
#include <gtest/gtest.h>

#include <set>

#include "draw/view_cases.h"
#include "draw/view_numbers.h"
#include "support/every.h"
#include "support/files.h"
#include "support/layout_faults.h"
#include "tillwright/dimensions.h"
#include "tillwright/draw.h"
#include "tillwright/render.h"
#include "tillwright/words.h"

namespace tillwright::testing {
namespace {

template <class Visit>
void ForEachLabel(const Sheet& sheet, Visit visit) {
  for (const SheetGroup& group : sheet.groups) {
    for (const Primitive& primitive : group.primitives) {
      if (const Label* label = std::get_if<Label>(&primitive)) visit(group, *label);
    }
  }
}

void ExpectNoFaults(const std::vector<Sheet>& sheets, const std::string& name) {
  for (const Sheet& sheet : sheets) {
    const std::vector<LayoutFault> faults = FindLayoutFaults(sheet, DrawingFontMetrics());
    EXPECT_TRUE(faults.empty()) << name << ", " << sheet.name << ":\n" << DescribeFaults(faults);
  }
}

void ExpectTrueNumbers(const Bank& bank, const std::vector<Sheet>& sheets,
                       const std::string& name) {
  for (const Sheet& sheet : sheets) {
    ForEachLabel(sheet, [&](const SheetGroup&, const Label& label) {
      if (label.path.empty()) return;
      const std::string fault = FaultOf(bank, label);
      EXPECT_TRUE(fault.empty()) << name << ", " << sheet.name << ": " << fault;
    });
  }
}

// Every front's sizes, every gap and every overlap are shown by some label.
void ExpectEverySize(const Bank& bank, const std::vector<Sheet>& sheets, const std::string& name) {
  std::set<std::string> shown;
  for (const Sheet& sheet : sheets) {
    ForEachLabel(sheet, [&](const SheetGroup&, const Label& label) {
      for (std::string& path : PathsOf(label)) shown.insert(std::move(path));
    });
  }
  const auto expect = [&](const std::string& path) {
    EXPECT_TRUE(shown.contains(path)) << name << ": " << path << " is nowhere";
  };
  for (const Space& space : bank.spaces) {
    if (!space.HasFront()) continue;
    expect(ToText(space.id) + ".front.width");
    expect(ToText(space.id) + ".front.height");
  }
  for (const Gap& gap : bank.gaps) expect(GapPath(bank, gap));
  for (const Overlap& overlap : bank.overlaps) {
    const Space& space = bank.spaces[static_cast<std::size_t>(overlap.space)];
    expect("overlap." + ToText(space.id) + "." + std::string(Word(overlap.edge)));
  }
  expect("opening.width");
  expect("opening.height");
  expect("opening.depth");
}

void ExpectGoodDrawings(const BankCase& c, const DrawOptions& options) {
  const Drawings drawings = DrawBank(c.bank, options, DrawingFontMetrics());
  ASSERT_EQ(drawings.fault, "") << c.name;
  ASSERT_FALSE(drawings.sheets.empty()) << c.name;
  ExpectNoFaults(drawings.sheets, c.name);
  ExpectNoFaults(drawings.views, c.name);
  ExpectTrueNumbers(c.bank, drawings.sheets, c.name);
  if (options.all_sizes && options.views.empty()) {
    ExpectEverySize(c.bank, drawings.views, c.name);
  }
}

TEST(ViewLayoutTest, CuratedSpecs) {
  for (const BankCase& c : CuratedBanks()) ExpectGoodDrawings(c, {});
}

TEST(ViewLayoutTest, CuratedSpecsOnEveryPaper) {
  for (const BankCase& c : CuratedBanks()) {
    for (const Paper paper : Every<Paper>()) {
      DrawOptions options;
      options.paper = paper;
      options.date = "2026-03-14";
      ExpectGoodDrawings(c, options);
    }
  }
}

TEST(ViewLayoutTest, CuratedSpecsWithKeySizesOrHiddenBoxes) {
  for (const BankCase& c : CuratedBanks()) {
    DrawOptions options;
    options.all_sizes = false;
    ExpectGoodDrawings(c, options);
    options.all_sizes = true;
    options.hidden_boxes = true;
    ExpectGoodDrawings(c, options);
  }
}

TEST(ViewLayoutTest, HardCases) {
  for (const BankCase& c : HardBanks()) ExpectGoodDrawings(c, {});
}

TEST(ViewLayoutTest, RandomSpecs) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  for (const BankCase& c : RandomBanks(seed, 200)) ExpectGoodDrawings(c, {});
}

// The check must see a wrong number.
TEST(ViewLayoutTest, FindsWrongNumbers) {
  const Bank bank = CuratedBanks().front().bank;
  Label label;
  label.path = "opening.width";
  label.plain = FormatLength(bank.opening_width, bank.units);
  EXPECT_EQ(FaultOf(bank, label), "");
  label.plain = FormatLength(bank.opening_width + Length::Millimeters(1), bank.units);
  EXPECT_NE(FaultOf(bank, label), "");
  label.path = "opening.breadth";
  EXPECT_NE(FaultOf(bank, label), "");
  label.path = "";
  label.plain = "D1 14 5/8 \u00d7 -5/8, \u2248 1/64 H";
  EXPECT_EQ(NumbersIn(label.plain), (std::vector<std::string>{"14 5/8", "-5/8", "\u2248 1/64"}));
}

// Numbers without a path stand only where they are no sizes: titles, scale bars, names.
TEST(ViewLayoutTest, NumbersWithoutPathAreNoSizes) {
  DrawOptions options;
  options.views = {ViewKind::kFront, ViewKind::kSide};
  for (const BankCase& c : CuratedBanks()) {
    for (const Sheet& sheet : DrawBank(c.bank, options, DrawingFontMetrics()).views) {
      ForEachLabel(sheet, [&](const SheetGroup& group, const Label& label) {
        const bool title = group.id == sheet.name + "-title";
        const bool name = std::any_of(c.bank.spaces.begin(), c.bank.spaces.end(),
                                      [&](const Space& s) { return s.name == label.plain; });
        if (title || name || !label.path.empty()) return;
        EXPECT_TRUE(NumbersIn(label.plain).empty()) << c.name << ": " << label.plain;
      });
    }
  }
}

}  // namespace
}  // namespace tillwright::testing
