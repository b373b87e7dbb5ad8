#include <gtest/gtest.h>

#include <string>

#include "sheet/rich_text.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

TEST(DrawingFont, HasEverySignThatDrawingsUse) {
  const TextMetrics& metrics = DrawingFontMetrics();
  for (const char32_t c :
       std::u32string_view(U"0123456789/.,:;×÷±−–—°′″≈…‹›⌀ØøäßéλЖ½⅞→↔\"'#%&()")) {
    for (const TextWeight weight : {TextWeight::kRegular, TextWeight::kBold}) {
      EXPECT_TRUE(metrics.HasGlyph(c, weight)) << static_cast<std::uint32_t>(c);
    }
  }
  EXPECT_FALSE(metrics.HasGlyph(U'引', TextWeight::kRegular));
}

TEST(DrawingFont, CapitalsAreAsHighAsAskedFor) {
  const TextExtent h = DrawingFontMetrics().Measure("H", TextWeight::kRegular, 2.5);
  EXPECT_DOUBLE_EQ(h.ascent, 2.5);
  EXPECT_DOUBLE_EQ(h.descent, 0);
  EXPECT_GT(DrawingFontMetrics().Measure("g", TextWeight::kRegular, 2.5).descent, 0.4);
}

TEST(DrawingFont, DigitsAreAllOfOneWidth) {
  const TextMetrics& metrics = DrawingFontMetrics();
  const double zero = metrics.Measure("0", TextWeight::kRegular, 2.5).advance;
  EXPECT_NEAR(zero, 2.5 * 0.636 / 0.729 * 0.9, 0.005) << "DejaVu Sans at 90 % of its width";
  for (const char* digit : {"1", "4", "7", "9"}) {
    EXPECT_DOUBLE_EQ(metrics.Measure(digit, TextWeight::kRegular, 2.5).advance, zero);
  }
}

TEST(DrawingFont, WidthsAddUpAndScale) {
  const TextMetrics& metrics = DrawingFontMetrics();
  const double whole = metrics.Measure("AVATo.", TextWeight::kBold, 2).advance;
  double sum = 0;
  for (const char* c : {"A", "V", "A", "T", "o", "."}) {
    sum += metrics.Measure(c, TextWeight::kBold, 2).advance;
  }
  EXPECT_NEAR(whole, sum, 1e-12) << "no kerning";
  EXPECT_NEAR(metrics.Measure("AVATo.", TextWeight::kBold, 10).advance, 5 * whole, 1e-12);
}

TEST(DrawingFont, NoLabelIsDrawnWithAnEmptyBox) {
  for (const char* name :
       {"Schublade 3", "Ящик стола", "Συρτάρι", "引き出し", "درج", "दराज", "🗄"}) {
    const Label label = MakeLabel(DrawingFontMetrics(), name, LabelStyle(), {0, 0}, "");
    for (const TextRun& run : label.text) {
      EXPECT_GT(DrawingFontMetrics().Measure(run.text, TextWeight::kRegular, 1).advance, 0.5)
          << name;
    }
    EXPECT_EQ(label.plain, name);
  }
  EXPECT_FALSE(HasReplacedCharacters(
      MakeLabel(DrawingFontMetrics(), "Ящик стола", LabelStyle(), {0, 0}, "")));
}

}  // namespace
}  // namespace tillwright
