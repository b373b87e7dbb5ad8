#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>
#include <regex>
#include <set>
#include <string>

#include "render/demo_sheet.h"
#include "render/tools.h"
#include "sheet/rich_text.h"
#include "support/layout_faults.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

using testing::HasSubstr;
using testing::Not;

Sheet OnA4(std::vector<Primitive> primitives) {
  Sheet sheet{.width = 297, .height = 210, .title = "T", .name = "one"};
  AddGroup(sheet, "g", "Group", 0).primitives = std::move(primitives);
  return sheet;
}

std::string Svg(const Sheet& sheet) {
  const Rendered rendered = RenderSvg(sheet);
  EXPECT_EQ(rendered.fault, "");
  return rendered.bytes;
}

TEST(DemoSheet, HasNoLayoutFaultsWithTheRealFont) {
  for (const Paper paper : {Paper::kA4, Paper::kLetter}) {
    const auto faults =
        FindLayoutFaults(DemoSheet(paper, DrawingFontMetrics()), DrawingFontMetrics());
    EXPECT_TRUE(faults.empty()) << DescribeFaults(faults);
  }
}

TEST(RenderSvg, ValidatesAgainstTheDtd) {
  TILLWRIGHT_NEEDS_TOOL("xmllint");
  Sheet sheet = DemoSheet(Paper::kA4, DrawingFontMetrics());
  sheet.title = "<&\"'> \x01\xff 引";
  sheet.description = "]]> & -->";
  LabelStyle style;
  sheet.groups[0].primitives.emplace_back(
      MakeLabel(DrawingFontMetrics(), "a<b&c>\"d\" 引", style, {50, 50}, "<path&\">"));
  const TempFile file(".svg", Svg(sheet));
  const ToolRun run = RunTool("xmllint --nonet --noout --valid " + file.path());
  EXPECT_EQ(run.status, 0) << run.output;
}

TEST(RenderSvg, IsAWholeNumberOfCssPixelsWithMatchingViewBoxAndTruePage) {
  EXPECT_THAT(Svg(OnA4({})), HasSubstr("width=\"1122\" height=\"793\" viewBox=\"0 0 296.8625 "
                                       "209.814583333\""));
  EXPECT_THAT(Svg(OnA4({})), HasSubstr("@page{size:297mm 210mm;margin:0}"));
  Sheet letter{.width = 279.4, .height = 215.9, .name = "l"};
  EXPECT_THAT(Svg(letter), HasSubstr("width=\"1056\" height=\"816\" viewBox=\"0 0 279.4 215.9\""));
}

TEST(RenderSvg, WritesExactNumbersAndRealShapes) {
  const std::string svg = Svg(
      OnA4({LineOf({10.01, 20}, {30.1234, 20}, Pen::kOutline), LineOf({1, 2}, {3, 4}, Pen::kHidden),
            Circle{{50, 60}, 5, Pen::kCallout, Tone::kPaper}, Arc{{50, 60}, 5, 0, 90, Pen::kThin},
            Arc{{50, 60}, 5, 0, -200, Pen::kThin}, BoxFill({1, 1, 2, 2}, Tone::kShade),
            HatchLines{{{{0, 0}, {1, 1}}, {{1, 1}, {2, 1}}, {{5, 5}, {5, 9}}}, Pen::kHatch}}));
  EXPECT_THAT(svg, HasSubstr("<path d=\"M10.01 20H30.123\" stroke-width=\"0.35\"/>"));
  EXPECT_THAT(svg, HasSubstr("<path d=\"M1 2L3 4\" stroke-width=\"0.18\" "
                             "stroke-dasharray=\"2.16 0.72\"/>"));
  EXPECT_THAT(svg, HasSubstr("<circle cx=\"50\" cy=\"60\" r=\"5\" fill=\"#fff\""));
  EXPECT_THAT(svg, HasSubstr("M55 60A5 5 0 0 0 50 55"));
  EXPECT_THAT(svg, HasSubstr("M55 60A5 5 0 1 1 "));
  EXPECT_THAT(svg, HasSubstr("fill=\"#b4b4b4\" stroke=\"none\""));
  EXPECT_THAT(svg, HasSubstr("d=\"M0 0L1 1H2M5 5V9\""));
}

TEST(RenderSvg, HoldsOneTransparentTextALabelWithItsPlainTextAndPath) {
  LabelStyle style;
  const std::string svg =
      Svg(OnA4({MakeLabel(DrawingFontMetrics(), "5 15/32", style, {50, 60}, "D2.front.height")}));
  EXPECT_THAT(svg, HasSubstr("<title>D2.front.height</title>"));
  EXPECT_THAT(svg, HasSubstr("fill-opacity=\"0\" xml:space=\"preserve\">5 15/32</text>"));
  EXPECT_THAT(svg, HasSubstr("textLength="));
  EXPECT_THAT(svg, HasSubstr("xlink:href=\"#one.r"));
}

TEST(RenderSvg, DrawsUpwardTextTurned) {
  LabelStyle style;
  style.turn = TextTurn::kUpward;
  style.level = TextLevel::kBaseline;
  const std::string svg = Svg(OnA4({MakeLabel(DrawingFontMetrics(), "8", style, {50, 60}, "")}));
  EXPECT_THAT(svg, HasSubstr("<text transform=\"matrix(0 -1 1 0 50 60)\""));
}

// The same bytes in whatever order: a picture with turned text leaves the library's face turned,
// and an outline that is first asked for afterwards must not be.
TEST(RenderSvg, OutlinesStandUprightAfterAPictureWithTurnedText) {
  LabelStyle turned;
  turned.turn = TextTurn::kUpward;
  const Sheet page = OnA4({MakeLabel(DrawingFontMetrics(), "7", turned, {50, 50}, {})});
  ASSERT_EQ(RenderPng(page, 100).fault, "");
  // A broken bar is asked for nowhere else; taller than wide when it stands.
  const std::string svg =
      Svg(OnA4({MakeLabel(DrawingFontMetrics(), "\u00a6", LabelStyle(), {50, 50}, {})}));
  const std::regex start("<path id=\"[^\"]*\" d=\"M(-?[0-9]+)-?[0-9]+L");
  std::smatch found;
  ASSERT_TRUE(std::regex_search(svg, found, start)) << svg;
  EXPECT_GT(std::stoi(found[1]), 0) << "turned, it would begin left of its origin";
}

TEST(RenderSvg, NestsGroupsByDepthWithTitlesAndUniqueIds) {
  Sheet sheet{.width = 100, .height = 100, .name = "front view"};
  AddGroup(sheet, "a", "First", 0).desc = "More";
  AddGroup(sheet, "b", "Inner", 1);
  AddGroup(sheet, "a", "Second", 0);
  const std::string svg = Svg(sheet);
  EXPECT_THAT(svg, HasSubstr("<g id=\"front-view_a\"><title>First</title><desc>More</desc>\n"
                             "<g id=\"front-view_b\"><title>Inner</title>\n</g>\n</g>\n"
                             "<g id=\"front-view_a_2\"><title>Second</title>\n</g>\n"));
}

std::set<std::string> IdsOf(const std::string& svg) {
  std::set<std::string> ids;
  const std::regex id("id=\"([^\"]*)\"");
  for (std::sregex_iterator it(svg.begin(), svg.end(), id), end; it != end; ++it) {
    EXPECT_TRUE(ids.insert((*it)[1]).second) << (*it)[1];
  }
  return ids;
}

TEST(RenderSvg, IdsOfTwoSheetsNeverMeet) {
  Sheet one = DemoSheet(Paper::kA4, DrawingFontMetrics());
  Sheet two = one;
  two.name = "other";
  const std::set<std::string> first = IdsOf(Svg(one));
  for (const std::string& id : IdsOf(Svg(two))) EXPECT_EQ(first.count(id), 0U) << id;
}

TEST(RenderSvg, UsesEveryGlyphItDefinesAndDefinesEveryGlyphItUses) {
  const std::string svg = Svg(DemoSheet(Paper::kA4, DrawingFontMetrics()));
  std::set<std::string> used;
  const std::regex use("<use xlink:href=\"#([^\"]*)\"");
  for (std::sregex_iterator it(svg.begin(), svg.end(), use), end; it != end; ++it) {
    used.insert((*it)[1]);
  }
  std::set<std::string> defined;
  const std::regex def("<path id=\"([^\"]*)\"");
  for (std::sregex_iterator it(svg.begin(), svg.end(), def), end; it != end; ++it) {
    defined.insert((*it)[1]);
  }
  EXPECT_EQ(used, defined);
}

TEST(RenderSvg, HasColorsForDarkScreensOnly) {
  const std::string svg = Svg(OnA4({}));
  EXPECT_THAT(svg, HasSubstr("@media screen and (prefers-color-scheme:dark)"));
  EXPECT_THAT(svg, Not(HasSubstr("class=")));
}

TEST(RenderSvg, GivesTheSameBytesWhateverWasDrawnBefore) {
  const Sheet sheet = DemoSheet(Paper::kLetter, DrawingFontMetrics());
  const std::string first = Svg(sheet);
  static_cast<void>(RenderPng(sheet, 50));
  static_cast<void>(RenderPdf({&sheet, 1}, {}));
  EXPECT_EQ(Svg(sheet), first);
}

TEST(RenderSvg, RefusesWhatCannotBeDrawn) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  for (const Primitive& bad :
       {Primitive(LineOf({nan, 1}, {2, 2}, Pen::kThin)),
        Primitive(Circle{{1, 1}, -1, Pen::kThin, {}}),
        Primitive(HatchLines{{{{1, 1}, {1e300, 1}}}, Pen::kHatch}),
        Primitive(Arc{{1, 1}, 1, 0, 720, {}}), Primitive(Tick{{nan, 1}, 1, Pen::kTick}),
        Primitive(Arrowhead{{1, 1}, nan, 1})}) {
    const Rendered rendered = RenderSvg(OnA4({bad}));
    EXPECT_TRUE(rendered.bytes.empty());
    EXPECT_THAT(rendered.fault, HasSubstr("\"g\""));
  }
  EXPECT_FALSE(RenderSvg(Sheet{.width = nan, .height = 10}).ok());
  EXPECT_FALSE(RenderSvg(Sheet{.width = 10, .height = 1e9}).ok());
}

}  // namespace
}  // namespace tillwright
