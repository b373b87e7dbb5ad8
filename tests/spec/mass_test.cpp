#include "spec/mass.h"

#include <gtest/gtest.h>

namespace tillwright {
namespace {

TEST(Mass, ReadsWhatAMakerTypes) {
  // 1 lb = 0.45359237 kg by definition (international yard and pound agreement, 1959; from memory).
  EXPECT_DOUBLE_EQ(ParseMass("20 lb", Unit::kMillimeter).value(), 9.0718474);
  EXPECT_DOUBLE_EQ(ParseMass("2lbs", Unit::kInch).value(), 0.90718474);
  EXPECT_DOUBLE_EQ(ParseMass(" 8 OZ ", Unit::kInch).value(), 0.226796185);
  EXPECT_DOUBLE_EQ(ParseMass("9.5 kg", Unit::kInch).value(), 9.5);
  EXPECT_DOUBLE_EQ(ParseMass("1500 g", Unit::kInch).value(), 1.5);
  EXPECT_DOUBLE_EQ(ParseMass("10", Unit::kInch).value(), 4.5359237);
  EXPECT_DOUBLE_EQ(ParseMass("10", Unit::kMillimeter).value(), 10);
}

TEST(Mass, RefusesWhatIsNoWeight) {
  for (const char* text : {"", "heavy", "0 kg", "-3 lb", "3 stone", "nan", "inf kg", "1e3 kg",
                           "7,5 kg", "999999999 kg"}) {
    EXPECT_FALSE(ParseMass(text, Unit::kInch).has_value()) << text;
  }
}

TEST(Mass, ShowsTenthsOnlyBelowTen) {
  EXPECT_EQ(FormatMass(3.86, Unit::kMillimeter), "3.9 kg");
  EXPECT_EQ(FormatMass(32.4, Unit::kMillimeter), "32 kg");
  EXPECT_EQ(FormatMass(9.0718474, Unit::kInch), "20 lb");
}

}  // namespace
}  // namespace tillwright
