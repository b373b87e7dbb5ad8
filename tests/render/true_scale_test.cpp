// A millimeter of a sheet is a millimeter of paper, measured on what other programs draw at 600
// dpi: the center of mass of a line's darkness repeats to 0.001 mm; 0.02 mm is asked for.
#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

#include "render/tools.h"
#include "sheet/title_block.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

constexpr double kDpi = 600;
constexpr double kLimit = 0.02;  // mm
const std::vector<double> kPlaces{12, 62, 112.5, 161.3375, 217.025, 285};

// As wide as A4 is long, upright lines at kPlaces, level lines across at 4 and 26 mm.
Sheet RulerSheet() {
  Sheet sheet{.width = 297, .height = 30, .title = "Ruler", .name = "ruler"};
  SheetGroup& group = AddGroup(sheet, "lines", "Lines", 0);
  for (const double x : kPlaces) {
    group.primitives.emplace_back(LineOf({x, 3}, {x, 27}, Pen::kDimension));
  }
  group.primitives.emplace_back(LineOf({2, 4}, {290, 4}, Pen::kDimension));
  group.primitives.emplace_back(LineOf({2, 26}, {290, 26}, Pen::kDimension));
  return sheet;
}

void ExpectTrueScale(const std::string& png) {
  const GrayPicture picture = DecodePng(png);
  ASSERT_GT(picture.width, 7000U);
  const auto row = static_cast<unsigned>(15 * kDpi / 25.4);
  for (const double x : kPlaces) {
    const double found =
        CenterOfLine(x, kDpi, picture.width, [&](unsigned i) { return picture.At(i, row); });
    EXPECT_NEAR(found, x, kLimit);
  }
  const auto column = static_cast<unsigned>(30 * kDpi / 25.4);
  for (const double y : {4.0, 26.0}) {
    const double found =
        CenterOfLine(y, kDpi, picture.height, [&](unsigned i) { return picture.At(column, i); });
    EXPECT_NEAR(found, y, kLimit);
  }
}

TEST(TrueScale, HoldsForOurOwnPng) {
  const Rendered png = RenderPng(RulerSheet(), kDpi);
  ASSERT_TRUE(png.ok()) << png.fault;
  ExpectTrueScale(png.bytes);
}

TEST(TrueScale, HoldsForSvgAsDrawnByRsvg) {
  TILLWRIGHT_NEEDS_TOOL("rsvg-convert");
  // The file's size is in CSS pixels, 96 to the inch: 6.25 x 96 = 600.
  const TempFile svg(".svg", RenderSvg(RulerSheet()).bytes);
  const TempFile png(".png", "");
  const ToolRun run = RunTool("rsvg-convert -z 6.25 -b white " + svg.path() + " -o " + png.path());
  ASSERT_EQ(run.status, 0) << run.output;
  ExpectTrueScale(png.Read());
}

TEST(TrueScale, HoldsForPdfAsDrawnByPoppler) {
  TILLWRIGHT_NEEDS_TOOL("pdftocairo");
  const Sheet sheet = RulerSheet();
  const TempFile pdf(".pdf", RenderPdf({&sheet, 1}, {}).bytes);
  const TempFile png("", "");
  const ToolRun run =
      RunTool("pdftocairo -r 600 -gray -png -singlefile " + pdf.path() + " " + png.path());
  ASSERT_EQ(run.status, 0) << run.output;
  const std::string path = png.path() + ".png";
  ExpectTrueScale(RunTool("cat " + path).output);
  EXPECT_EQ(RunTool("rm " + path).status, 0);
}

TEST(TrueScale, CirclesAreRound) {
  TILLWRIGHT_NEEDS_TOOL("pdftocairo");
  Sheet sheet{.width = 60, .height = 60, .name = "circle"};
  AddGroup(sheet, "c", "C", 0).primitives = {Circle{{30, 30}, 25, Pen::kNone, Tone::kInk}};
  const TempFile pdf(".pdf", RenderPdf({&sheet, 1}, {}).bytes);
  const TempFile png("", "");
  const std::string path = png.path() + ".png";
  ASSERT_EQ(
      RunTool("pdftocairo -r 600 -gray -png -singlefile " + pdf.path() + " " + png.path()).status,
      0);
  for (const std::string& bytes : {RunTool("cat " + path).output, RenderPng(sheet, 600).bytes}) {
    const GrayPicture picture = DecodePng(bytes);
    double area = 0;
    for (const unsigned char gray : picture.pixels) area += (255.0 - gray) / 255;
    const double mm2 = area * 25.4 * 25.4 / (kDpi * kDpi);
    EXPECT_NEAR(std::sqrt(mm2 / 3.14159265358979), 25, 0.004);
  }
  EXPECT_EQ(RunTool("rm " + path).status, 0);
}

}  // namespace
}  // namespace tillwright
