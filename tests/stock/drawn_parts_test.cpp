// Every part of the cut list shows up in a drawing under the same label.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

#include "support/files.h"
#include "support/random_case.h"
#include "support/specs.h"
#include "tillwright/draw.h"
#include "tillwright/parts.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

using testing::MustSolve;
using testing::RandomCase;
using testing::Solved;

std::set<std::string> TitlesOf(const Bank& bank) {
  DrawOptions options;
  options.views = {ViewKind::kParts};
  std::set<std::string> titles;
  for (const Sheet& view : DrawBank(bank, options, DrawingFontMetrics()).views) {
    const std::string head = (bank.title.empty() ? "Drawer bank" : bank.title) + ": ";
    EXPECT_TRUE(view.title.starts_with(head));
    titles.insert(view.title.substr(head.size()));
  }
  return titles;
}

void ExpectDrawn(const Solved& solved) {
  const std::set<std::string> titles = TitlesOf(solved.bank);
  for (const CutLine& line : CutList(solved.spec, solved.bank)) {
    EXPECT_TRUE(titles.contains(line.label)) << line.label;
  }
}

TEST(DrawnParts, OfEveryCuratedSpec) {
  for (const auto& path : testing::CuratedSpecs()) {
    SCOPED_TRACE(path);
    ExpectDrawn(MustSolve(testing::ReadFile(path)));
  }
}

TEST(DrawnParts, OfRandomCases) {
  const std::uint32_t seed = testing::TestSeed();
  for (std::uint32_t i = 0; i < 12; ++i) {
    const std::string text = RandomCase(seed + i).Text();
    SCOPED_TRACE(text);
    const Spec spec = testing::MustRead(text);
    const Outcome<Bank> bank = SolveBank(spec);
    if (bank.ok()) ExpectDrawn({spec, bank.value()});
  }
}

}  // namespace
}  // namespace tillwright
