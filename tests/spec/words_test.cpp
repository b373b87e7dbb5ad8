// The words of every choice: one for each value of its enumeration, none twice, as the contract has
// them.
#include "tillwright/words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace tillwright {
namespace {

using ::testing::ElementsAre;

template <class E>
void ExpectWords(E last) {
  const std::span<const std::string_view> words = Words<E>();
  EXPECT_EQ(words.size(), static_cast<std::size_t>(last) + 1);
  EXPECT_EQ(std::set<std::string_view>(words.begin(), words.end()).size(), words.size());
}

TEST(Words, EveryValueHasOne) {
  ExpectWords(Unit::kMillimeter);
  ExpectWords(FrontStyle::kInset);
  ExpectWords(Grain::kNone);
  ExpectWords(SlideType::kWoodRunner);
  ExpectWords(CornerJoint::kFinger);
  ExpectWords(BottomFit::kApplied);
  ExpectWords(Graduation::kGeometric);
  ExpectWords(CaseJoint::kGroove);
  ExpectWords(CaseFixing::kGlue);
  ExpectWords(BackFit::kNone);
  ExpectWords(Setting::kCenterd);
  ExpectWords(SawnCut::kQuarter);
  ExpectWords(Held::kBottom);
  ExpectWords(FrontMatch::kStack);
  ExpectWords(Edge::kRight);
}

TEST(Words, StandInTheOrderOfTheirEnumerations) {
  EXPECT_THAT(Words<Unit>(), ElementsAre("in", "mm"));
  EXPECT_EQ(Word(FrontStyle::kInset), "inset");
  EXPECT_EQ(Word(Grain::kVertical), "vertical");
  EXPECT_THAT(Words<SlideType>(),
              ElementsAre("side-mount", "undermount", "center-mount", "wood-runner"));
  EXPECT_THAT(Words<CornerJoint>(), ElementsAre("butt", "rabbet", "dado", "half-blind-dovetail",
                                                "through-dovetail", "finger"));
  EXPECT_THAT(Words<BottomFit>(), ElementsAre("groove", "rabbet", "applied"));
  EXPECT_THAT(Words<Graduation>(), ElementsAre("equal", "shares", "arithmetic", "geometric"));
  EXPECT_THAT(Words<CaseJoint>(), ElementsAre("butt", "dado", "rabbet", "tongue-and-dado"));
  EXPECT_THAT(Words<BackFit>(), ElementsAre("rabbet", "groove", "applied", "none"));
  EXPECT_EQ(Word(Setting::kSpaced), "spaced");
  EXPECT_EQ(Word(SawnCut::kQuarter), "quarter");
  EXPECT_EQ(Word(Held::kMiddle), "middle");
  EXPECT_THAT(Words<Edge>(), ElementsAre("top", "bottom", "left", "right"));
}

}  // namespace
}  // namespace tillwright
