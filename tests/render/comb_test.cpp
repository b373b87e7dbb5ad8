// Rulers: in PDF files their graduations are the dashes of a broad line. Each must be where a line
// would be, as long and as thick, on what poppler draws at 600 dpi.
#include "render/comb.h"

#include <gtest/gtest.h>

#include <cmath>

#include "render/tools.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

constexpr double kDpi = 600;
constexpr double kLimit = 0.02;       // mm
constexpr double kEighth = 25.4 / 8;  // mm
constexpr int kTeeth = 80;            // ten inches

// Up the page from (20, 265), to the left; level from (30, 10), downwards.
HatchLines UprightTeeth() {
  HatchLines teeth{{}, Pen::kRuler};
  for (int i = 0; i <= kTeeth; ++i) {
    teeth.segments.push_back({{20, 265 - i * kEighth}, {16.5, 265 - i * kEighth}});
  }
  return teeth;
}
HatchLines LevelTeeth() {
  HatchLines teeth{{}, Pen::kRuler};
  for (int i = 0; i <= 150; ++i) teeth.segments.push_back({{30.0 + i, 10}, {30.0 + i, 14.6}});
  return teeth;
}

TEST(Comb, IsTheLineThroughTheMiddleOfItsTeeth) {
  const std::optional<Comb> comb = CombOf(LevelTeeth());
  ASSERT_TRUE(comb);
  const double pen = StyleOf(Pen::kRuler).width;
  EXPECT_NEAR(comb->from.x, 30 - pen / 2, 1e-9);
  EXPECT_NEAR(comb->to.x, 180 + pen / 2, 1e-9);
  EXPECT_NEAR(comb->from.y, 12.3, 1e-9);
  EXPECT_NEAR(comb->to.y, 12.3, 1e-9);
  EXPECT_NEAR(comb->width, 4.6, 1e-9);
  EXPECT_NEAR(comb->dashes[0], pen, 1e-9);
  EXPECT_NEAR(comb->dashes[0] + comb->dashes[1], 1, 1e-9);
}

TEST(Comb, IsNotWhatOnlyLooksLikeOne) {
  EXPECT_FALSE(CombOf({}));
  HatchLines teeth = LevelTeeth();
  teeth.segments[70].to.y += 0.01;  // longer
  EXPECT_FALSE(CombOf(teeth));
  teeth = LevelTeeth();
  teeth.segments[70].from.x += 0.01;  // leans
  EXPECT_FALSE(CombOf(teeth));
  teeth = LevelTeeth();
  teeth.segments.erase(teeth.segments.begin() + 70);  // a gap
  EXPECT_FALSE(CombOf(teeth));
  teeth = LevelTeeth();
  for (PaperSegment& s : teeth.segments) s.to.x += 1;  // a hatch
  EXPECT_FALSE(CombOf(teeth));
  teeth = LevelTeeth();
  teeth.segments.resize(4);
  EXPECT_FALSE(CombOf(teeth));
}

// Darkness of a stretch of pixels, in black pixels.
template <class Grey>
double Ink(double from, double to, const Grey& grey) {
  double ink = 0;
  for (auto i = static_cast<unsigned>(from * kDpi / 25.4); i < to * kDpi / 25.4; ++i) {
    ink += (255.0 - grey(i)) / 255.0;
  }
  return ink;
}

TEST(Comb, EveryToothIsTrueInThePdf) {
  TILLWRIGHT_NEEDS_TOOL("pdftocairo");
  Sheet sheet{.width = 210, .height = 280, .title = "Rulers", .name = "rulers"};
  AddGroup(sheet, "r", "R", 0).primitives = {UprightTeeth(), LevelTeeth()};
  const TempFile pdf(".pdf", RenderPdf({&sheet, 1}, {}).bytes);
  const TempFile png("", "");
  const std::string path = png.path() + ".png";
  ASSERT_EQ(
      RunTool("pdftocairo -r 600 -gray -png -singlefile " + pdf.path() + " " + png.path()).status,
      0);
  const GreyPicture picture = DecodePng(RunTool("cat " + path).output);
  EXPECT_EQ(RunTool("rm " + path).status, 0);
  const auto pixel = [](double mm) { return static_cast<unsigned>(mm * kDpi / 25.4); };
  const double pen = StyleOf(Pen::kRuler).width * kDpi / 25.4;
  const auto column = [&](unsigned i) { return picture.At(pixel(18), i); };
  for (int i = 0; i <= kTeeth; ++i) {
    const double y = 265 - i * kEighth;
    EXPECT_NEAR(CentreOfLine(y, kDpi, picture.height, column), y, kLimit) << i;
    EXPECT_NEAR(Ink(y - 0.5, y + 0.5, column), pen, 0.3) << i;
    // As long as its line, and no longer.
    const auto row = [&](unsigned x) { return picture.At(x, pixel(y)); };
    EXPECT_NEAR(Ink(15, 21, row), 3.5 * kDpi / 25.4, 1.5) << i;
  }
  const auto row = [&](unsigned x) { return picture.At(x, pixel(12)); };
  for (int i = 0; i <= 150; ++i) {
    EXPECT_NEAR(Ink(29.6 + i, 30.4 + i, row), pen, 0.3) << i;
  }
  EXPECT_NEAR(CentreOfLine(30, kDpi, pixel(30.5), row), 30, kLimit);
}

}  // namespace
}  // namespace tillwright
