#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>
#include <string>

#include "render/demo_sheet.h"
#include "render/tools.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

using testing::HasSubstr;

Sheet Shapes() {
  Sheet sheet{.width = 25.4, .height = 25.4, .name = "shapes"};
  AddGroup(sheet, "g", "G", 0).primitives = {
      BoxFill({2.54, 2.54, 12.7, 12.7}, Tone::kInk),
      BoxFill({5.08, 5.08, 10.16, 10.16}, Tone::kPaper),
      BoxFill({12.7, 12.7, 22.86, 22.86}, Tone::kShade),
      Circle{{17.78, 17.78}, 2.54, Pen::kNone, Tone::kPaper}};
  return sheet;
}

TEST(RenderPng, LaysShadeAndPaperOverInk) {
  const Rendered png = RenderPng(Shapes(), 100);
  ASSERT_TRUE(png.ok()) << png.fault;
  const GrayPicture picture = DecodePng(png.bytes);
  ASSERT_EQ(picture.width, 100U);
  EXPECT_EQ(picture.At(2, 2), 255);
  EXPECT_EQ(picture.At(15, 15), 0);
  EXPECT_EQ(picture.At(30, 30), 255) << "paper covers ink";
  EXPECT_NEAR(picture.At(55, 55), 0xb4, 1);
  EXPECT_EQ(picture.At(70, 70), 255);
}

TEST(RenderPng, IsGrayAndKnowsItsResolution) {
  const std::string bytes = RenderPng(Shapes(), 300).bytes;
  EXPECT_EQ(bytes[24], 8) << "bits a sample";
  EXPECT_EQ(bytes[25], 0) << "grey";
  const std::size_t at = bytes.find("pHYs");
  ASSERT_NE(at, std::string::npos);
  EXPECT_EQ(bytes.substr(at + 4, 9), std::string("\0\0\x2e\x23\0\0\x2e\x23\1", 9))
      << "11811 a metre";
}

TEST(RenderPng, RoundsPagesUpToWholePixels) {
  const GrayPicture picture =
      DecodePng(RenderPng(Sheet{.width = 297, .height = 210, .name = "a4"}, 300).bytes);
  EXPECT_EQ(picture.width, 3508U);
  EXPECT_EQ(picture.height, 2481U);
}

TEST(RenderPng, LooksLikeTheSvg) {
  TILLWRIGHT_NEEDS_TOOL("rsvg-convert");
  const Sheet sheet = DemoSheet(Paper::kLetter, DrawingFontMetrics());
  const TempFile svg(".svg", RenderSvg(sheet).bytes);
  const TempFile png(".png", "");
  ASSERT_EQ(RunTool("rsvg-convert -z 3 -b white " + svg.path() + " -o " + png.path()).status, 0);
  const GrayPicture theirs = DecodePng(png.Read());
  const GrayPicture ours = DecodePng(RenderPng(sheet, 288).bytes);
  ASSERT_EQ(theirs.width, ours.width);
  ASSERT_EQ(theirs.height, ours.height);
  // The two draw edges with grays of their own; not one pixel may be ink here and paper there.
  int opposite = 0;
  for (std::size_t i = 0; i < ours.pixels.size(); ++i) {
    if (std::abs(static_cast<int>(ours.pixels[i]) - theirs.pixels[i]) > 160) ++opposite;
  }
  EXPECT_LT(opposite, 20);
}

TEST(RenderPng, GivesTheSameBytesEveryTime) {
  const Sheet sheet = DemoSheet(Paper::kA4, DrawingFontMetrics());
  const std::string first = RenderPng(sheet, 60).bytes;
  static_cast<void>(RenderPdf({&sheet, 1}, {}));
  EXPECT_EQ(RenderPng(sheet, 60).bytes, first);
}

TEST(RenderPng, RefusesWhatIsTooLargeAndOddResolutions) {
  EXPECT_THAT(RenderPng(Sheet{.width = 2500, .height = 100, .name = "stick"}, 600).fault,
              HasSubstr("too many pixels"));
  for (const double dpi : {0.0, 9.0, 2401.0, std::numeric_limits<double>::quiet_NaN()}) {
    EXPECT_FALSE(RenderPng(Shapes(), dpi).ok());
  }
}

}  // namespace
}  // namespace tillwright
