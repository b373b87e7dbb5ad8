#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <regex>
#include <string>
#include <vector>

#include "render/demo_sheet.h"
#include "render/pdf_catalog.h"
#include "render/tools.h"
#include "sheet/rich_text.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

using testing::HasSubstr;

std::vector<Sheet> ThreeSheets() {
  std::vector<Sheet> sheets{DemoSheet(Paper::kA4, DrawingFontMetrics()),
                            DemoSheet(Paper::kLetter, DrawingFontMetrics())};
  Sheet stick{.width = 100, .height = 2500, .title = "Story stick", .name = "stick"};
  AddGroup(stick, "g", "G", 0).primitives = {LineOf({10, 10}, {10, 2490}, Pen::kCutLine)};
  sheets.push_back(std::move(stick));
  return sheets;
}

std::string Pdf(const std::vector<Sheet>& sheets) {
  const Rendered rendered = RenderPdf(sheets, PdfInfo{.title = "Paper cabinet ½ ⌀"});
  EXPECT_EQ(rendered.fault, "");
  return rendered.bytes;
}

TEST(RenderPdf, PassesAStrictCheck) {
  TILLWRIGHT_NEEDS_TOOL("qpdf");
  const TempFile file(".pdf", Pdf(ThreeSheets()));
  const ToolRun run = RunTool("qpdf --check " + file.path());
  EXPECT_EQ(run.status, 0) << run.output;
}

TEST(RenderPdf, AsksForActualSizeOneSided) {
  TILLWRIGHT_NEEDS_TOOL("qpdf");
  const TempFile file(".pdf", Pdf(ThreeSheets()));
  const ToolRun run = RunTool("qpdf --qdf --object-streams=disable " + file.path() + " -");
  EXPECT_EQ(run.status, 0);
  EXPECT_THAT(run.output, HasSubstr("/PrintScaling /None"));
  EXPECT_THAT(run.output, HasSubstr("/Duplex /Simplex"));
  EXPECT_THAT(run.output, HasSubstr("/DisplayDocTitle true"));
}

TEST(RenderPdf, HasTruePagesTitleAndFixedDate) {
  TILLWRIGHT_NEEDS_TOOL("pdfinfo");
  const TempFile file(".pdf", Pdf(ThreeSheets()));
  const std::string info = RunTool("TZ=UTC pdfinfo -f 1 -l 3 -isodates " + file.path()).output;
  EXPECT_THAT(info, HasSubstr("Paper cabinet ½ ⌀"));
  EXPECT_THAT(info, HasSubstr("2000-01-01T00:00:00"));
  EXPECT_THAT(info, HasSubstr("841.89 x 595.276 pts (A4)"));
  EXPECT_THAT(info, HasSubstr("792 x 612 pts (letter)"));
  EXPECT_THAT(info, HasSubstr("283.465 x 7086.61 pts"));
}

TEST(RenderPdf, HasABookmarkASheet) {
  TILLWRIGHT_NEEDS_TOOL("qpdf");
  const TempFile file(".pdf", Pdf(ThreeSheets()));
  const std::string json = RunTool("qpdf --json --json-key=outlines " + file.path()).output;
  EXPECT_THAT(json, HasSubstr("Story stick"));
  EXPECT_THAT(json, HasSubstr("\"destpageposfrom1\": 3"));
}

TEST(RenderPdf, EmbedsEveryFontAndNoPicture) {
  TILLWRIGHT_NEEDS_TOOL("pdffonts");
  const TempFile file(".pdf", Pdf(ThreeSheets()));
  const std::string fonts = RunTool("pdffonts " + file.path() + " | tail -n +3").output;
  EXPECT_THAT(fonts, HasSubstr("DejaVuSans-Bold"));
  EXPECT_EQ(fonts.find(" no "), std::string::npos) << "embedded, subset, with unicode map\n"
                                                   << fonts;
  EXPECT_EQ(RunTool("pdfimages -list " + file.path() + " | tail -n +3").output, "");
}

struct Word {
  double left = 0;
  double top = 0;
  double right = 0;
  double bottom = 0;
  std::string text;
};

std::vector<Word> WordsOf(const std::string& path) {
  const std::string html = RunTool("pdftotext -bbox " + path + " -").output;
  const std::regex word(
      "<word xMin=\"([^\"]*)\" yMin=\"([^\"]*)\" xMax=\"([^\"]*)\" yMax=\"([^\"]*)\">([^<]*)<");
  std::vector<Word> words;
  for (std::sregex_iterator it(html.begin(), html.end(), word), end; it != end; ++it) {
    const auto mm = [&](std::size_t i) { return std::stod((*it)[i]) * 25.4 / 72; };
    words.push_back({mm(1), mm(2), mm(3), mm(4), (*it)[5]});
  }
  return words;
}

// Every word of every label is found where the label is, fractions as one word with their slash.
TEST(RenderPdf, TextIsTextWhereItsLabelIs) {
  TILLWRIGHT_NEEDS_TOOL("pdftotext");
  const Sheet sheet = DemoSheet(Paper::kA4, DrawingFontMetrics());
  const TempFile file(".pdf", Pdf({sheet}));
  std::vector<Word> words = WordsOf(file.path());
  int checked = 0;
  for (const SheetGroup& group : sheet.groups) {
    for (const Primitive& primitive : group.primitives) {
      const Label* label = std::get_if<Label>(&primitive);
      if (label == nullptr) continue;
      const PaperBox near = Grow(label->box, 1.2);
      for (const TextRun& run : label->text) {
        if (run.kind != TextRun::Kind::kFraction) continue;
        const std::string text = run.text + "/" + run.denominator;
        EXPECT_TRUE(std::any_of(words.begin(), words.end(), [&](const Word& w) {
          return w.text.find(text) == 0 && w.left > near.left && w.right < near.right &&
                 w.bottom > near.top && w.top < near.bottom;
        })) << label->plain;
        ++checked;
      }
    }
  }
  EXPECT_GT(checked, 40);
}

TEST(RenderPdf, NamesThatCannotBeDrawnOrWereCutStillReadInFull) {
  TILLWRIGHT_NEEDS_TOOL("pdftotext");
  Sheet sheet{.width = 100, .height = 50, .name = "s"};
  LabelStyle style;
  style.max_width = 20;
  AddGroup(sheet, "g", "G", 0).primitives = {
      MakePlainLabel(DrawingFontMetrics(), "引き出し", style, {10, 10}),
      MakePlainLabel(DrawingFontMetrics(), "Magazine and portfolio drawer", style, {10, 20})};
  const TempFile file(".pdf", Pdf({sheet}));
  const std::string text = RunTool("pdftotext " + file.path() + " -").output;
  EXPECT_THAT(text, HasSubstr("引き出し"));
  EXPECT_THAT(text, HasSubstr("Magazine and portfolio drawer"));
}

TEST(RenderPdf, GivesTheSameBytesWhateverWasDrawnBefore) {
  const std::vector<Sheet> sheets = ThreeSheets();
  const std::string first = Pdf(sheets);
  static_cast<void>(RenderPng(sheets[1], 50));
  static_cast<void>(Pdf({sheets[1]}));
  EXPECT_EQ(Pdf(sheets), first);
}

TEST(RenderPdf, TakesATimeAndRefusesWhatIsNotOne) {
  const std::vector<Sheet> sheets = ThreeSheets();
  EXPECT_TRUE(RenderPdf(sheets, PdfInfo{.created = "2026-03-14T09:00:00Z"}).ok());
  EXPECT_THAT(RenderPdf(sheets, PdfInfo{.created = "yesterday"}).fault, HasSubstr("yesterday"));
  EXPECT_FALSE(RenderPdf(sheets, PdfInfo{.created = ""}).ok());
}

TEST(RenderPdf, RefusesNothingAndWhatIsTooLarge) {
  EXPECT_FALSE(RenderPdf({}, {}).ok());
  const Sheet roll{.width = 100, .height = 5081, .name = "roll"};
  EXPECT_THAT(RenderPdf({&roll, 1}, {}).fault, HasSubstr("5080"));
  Sheet odd{.width = 100, .height = 100, .title = std::string("a\xff\0b", 4), .name = "odd"};
  EXPECT_TRUE(RenderPdf({&odd, 1}, PdfInfo{.title = "\xff\x01"}).ok());
}

TEST(AskForActualSize, LeavesUnknownFormsAlone) {
  const std::vector<Sheet> sheets = ThreeSheets();
  const std::string good = Pdf(sheets);
  std::string twice = good;
  EXPECT_FALSE(AskForActualSize(twice)) << "has preferences already";
  EXPECT_EQ(twice, good);
  for (const std::string bad :
       {"", "%PDF-1.5", "startxref\n", "startxref\n12\n%%EOF\n", "x\nstartxref\n0\n%%EOF\n",
        "1 0 obj\n<< /Type /Page >>\nendobj\nxref\nstartxref\n36\n"}) {
    std::string bytes = bad;
    EXPECT_FALSE(AskForActualSize(bytes)) << bad;
    EXPECT_EQ(bytes, bad);
  }
  std::string form =
      "1 0 obj\n<< /Type /Catalog\n>>\nendobj\nxref\n0 2\ntrailer\nstartxref\n36\n%%EOF\n";
  ASSERT_EQ(form.find("xref\n0 2"), 36U);
  ASSERT_TRUE(AskForActualSize(form));
  const std::size_t table = form.find("xref\n0 2");
  EXPECT_THAT(form, HasSubstr("startxref\n" + std::to_string(table) + "\n"));
}

}  // namespace
}  // namespace tillwright
