// A full-size detail of a real bank measures true in renderers that have nothing to do with the
// library the program draws with: Chromium's engine for the SVG, poppler's Splash for the PDF. At
// 600 dpi every known distance must be right within one pixel.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "render/tools.h"
#include "tillwright/draw.h"
#include "tillwright/read.h"
#include "tillwright/render.h"
#include "tillwright/solve.h"

namespace tillwright {
namespace {

constexpr double kDpi = 600;
constexpr double kPixel = 25.4 / kDpi;  // mm

// Two drawers with overlay fronts. Where they meet, by hand: fronts 3/4 in thick, box ends 1/2, the
// gap 1/8. The cells meet in the middle of the gap; the upper box stands 1/4 above that, 3/16 above
// its front's lower edge; the lower box ends 1/2 below it, 7/16 below its front's upper edge.
const char* const kSpec = R"({"opening": {"width": 15, "height": 14, "depth": 20},
  "fronts": {"thickness": "3/4", "gap": "1/8"}, "box": {"side": {"thickness": "1/2"},
  "clear_below": "1/4", "clear_above": "1/2"}, "drawers": [{}, {}]})";
const std::vector<double> kAcross{0.75 * 25.4, 0.5 * 25.4};
const std::vector<double> kUpright{0.125 * 25.4, 0.125 * 25.4, 0.1875 * 25.4, 0.4375 * 25.4};

Drawings DetailOfGap() {
  DrawOptions options;
  options.views = {ViewKind::kDetails};
  return DrawBank(SolveBank(ReadSpec(kSpec).value()).value(), options, DrawingFontMetrics());
}

bool ShowsGap(const Sheet& sheet) {
  return std::ranges::any_of(
      sheet.groups, [](const SheetGroup& group) { return group.title == "GAP BETWEEN FRONTS"; });
}

// The ticks of the detail's dimensions.
std::vector<PaperPoint> TicksOfGap(const Sheet& sheet) {
  std::vector<PaperPoint> ticks;
  std::string inside;
  for (const SheetGroup& group : sheet.groups) {
    if (group.title == "GAP BETWEEN FRONTS") inside = group.id.substr(0, group.id.find("-parts"));
    if (inside.empty() || group.id != inside + "-dimensions") continue;
    for (const Primitive& primitive : group.primitives) {
      if (const auto* tick = std::get_if<Tick>(&primitive)) ticks.push_back(tick->at);
    }
  }
  return ticks;
}

// Neighboring ticks of one chain.
struct Distance {
  PaperPoint from, to;
};

std::vector<Distance> Neighbors(std::vector<PaperPoint> ticks, double PaperPoint::*along,
                                double PaperPoint::*across) {
  std::ranges::sort(ticks, [&](const PaperPoint& a, const PaperPoint& b) {
    if (std::abs(a.*across - b.*across) > 1e-6) return a.*across < b.*across;
    return a.*along < b.*along;
  });
  std::vector<Distance> out;
  for (std::size_t i = 1; i < ticks.size(); ++i) {
    const bool one_chain = std::abs(ticks[i].*across - ticks[i - 1].*across) < 1e-6;
    if (one_chain && ticks[i].*along - ticks[i - 1].*along > 1e-6) {
      out.push_back({ticks[i - 1], ticks[i]});
    }
  }
  return out;
}

// Extension lines cross each chain at right angles; they are looked for this far beside it, where
// neither ticks nor numbers are.
constexpr double kBeside = 2.6;  // mm

// What the picture shows between two ticks of a level chain above the piece.
double FoundAcross(const GrayPicture& picture, const Distance& d) {
  const auto row = static_cast<unsigned>((d.from.y + kBeside) / kPixel);
  const auto gray = [&](unsigned i) { return picture.At(i, row); };
  return CenterOfLine(d.to.x, kDpi, picture.width, gray) -
         CenterOfLine(d.from.x, kDpi, picture.width, gray);
}

// The same of an upright chain; the piece is on its right, or on its left.
double FoundUpright(const GrayPicture& picture, const Distance& d, bool piece_right) {
  const auto column =
      static_cast<unsigned>((d.from.x + (piece_right ? kBeside : -kBeside)) / kPixel);
  const auto gray = [&](unsigned i) { return picture.At(column, i); };
  return CenterOfLine(d.to.y, kDpi, picture.height, gray) -
         CenterOfLine(d.from.y, kDpi, picture.height, gray);
}

// Holds a picture of the sheet at 600 dpi against what is known of the piece.
void ExpectTrueDetail(const GrayPicture& picture, const Sheet& sheet) {
  ASSERT_GT(picture.width, 1000U);
  // One level chain, above the piece; all others are upright.
  std::vector<PaperPoint> ticks = TicksOfGap(sheet);
  ASSERT_FALSE(ticks.empty());
  const double top = std::ranges::min(ticks, {}, &PaperPoint::y).y;
  const auto others = std::partition(ticks.begin(), ticks.end(),
                                     [&](const PaperPoint& t) { return t.y < top + 1e-6; });
  const double left =
      std::min_element(others, ticks.end(), [](const PaperPoint& a, const PaperPoint& b) {
        return a.x < b.x;
      })->x;
  std::vector<double> across;
  for (const Distance& d : Neighbors({ticks.begin(), others}, &PaperPoint::x, &PaperPoint::y)) {
    across.push_back(FoundAcross(picture, d));
  }
  std::vector<double> upright;
  for (const Distance& d : Neighbors({others, ticks.end()}, &PaperPoint::y, &PaperPoint::x)) {
    upright.push_back(FoundUpright(picture, d, d.from.x < left + 1));
  }
  std::ranges::sort(upright);
  EXPECT_THAT(across, testing::Pointwise(testing::DoubleNear(kPixel), kAcross));
  EXPECT_THAT(upright, testing::Pointwise(testing::DoubleNear(kPixel), kUpright));
}

TEST(DetailScale, HoldsForSvgAsDrawnByABrowser) {
  TILLWRIGHT_NEEDS_TOOL("chromium");
  const Drawings drawings = DetailOfGap();
  const auto view = std::ranges::find_if(drawings.views, ShowsGap);
  ASSERT_NE(view, drawings.views.end()) << drawings.fault;
  const TempFile svg(".svg", RenderSvg(*view).bytes);
  const TempFile png(".png", "");
  const std::string profile = png.path() + "-profile";
  // A CSS pixel is 1/96 in: at 6.25 pixels each there are 600 to the inch.
  const ToolRun run = RunTool(
      "{ timeout 120 chromium --headless --no-sandbox --disable-gpu --disable-quic --no-first-run "
      "--disable-background-networking --disable-component-update --disable-sync "
      "--disable-dev-shm-usage --hide-scrollbars --force-device-scale-factor=6.25 "
      "--window-size=600,600 --user-data-dir=" +
      profile + " --screenshot=" + png.path() + " file://" + svg.path() + "; rm -rf " + profile +
      "; }");
  const GrayPicture picture = DecodePng(png.Read());
  ASSERT_GT(picture.width, 0U) << run.output;
  ExpectTrueDetail(picture, *view);
}

TEST(DetailScale, HoldsForPdfAsDrawnBySplash) {
  TILLWRIGHT_NEEDS_TOOL("pdftoppm");
  const Drawings drawings = DetailOfGap();
  const auto sheet = std::ranges::find_if(drawings.sheets, ShowsGap);
  ASSERT_NE(sheet, drawings.sheets.end()) << drawings.fault;
  const TempFile pdf(".pdf", RenderPdf({&*sheet, 1}, {}).bytes);
  const TempFile png("", "");
  const ToolRun run =
      RunTool("pdftoppm -r 600 -gray -png -singlefile " + pdf.path() + " " + png.path());
  ASSERT_EQ(run.status, 0) << run.output;
  const std::string path = png.path() + ".png";
  ExpectTrueDetail(DecodePng(RunTool("cat " + path).output), *sheet);
  EXPECT_EQ(RunTool("rm " + path).status, 0);
}

}  // namespace
}  // namespace tillwright
