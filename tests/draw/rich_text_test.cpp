#include "sheet/rich_text.h"

#include <gtest/gtest.h>

#include <ostream>
#include <string>

#include "text/utf8.h"

namespace tillwright {
namespace {

// Runs as text: fractions in <a|b>, diameters as %.
std::string Show(const RichText& text) {
  std::string out;
  for (const TextRun& run : text) {
    switch (run.kind) {
      case TextRun::Kind::kPlain:
        out += '[' + run.text + ']';
        break;
      case TextRun::Kind::kFraction:
        out += '<' + run.text + '|' + run.denominator + '>';
        break;
      case TextRun::Kind::kDiameter:
        out += '%';
        break;
    }
  }
  return out;
}

struct ParseCase {
  const char* name;
  const char* text;
  const char* shown;
  const char* plain;
};
void PrintTo(const ParseCase& c, std::ostream* out) { *out << c.name; }

class ParseRichTextTest : public testing::TestWithParam<ParseCase> {};

TEST_P(ParseRichTextTest, FindsFractionsAndSignsAndLeavesOtherTextAlone) {
  const RichText text = ParseRichText(GetParam().text);
  EXPECT_EQ(Show(text), GetParam().shown);
  EXPECT_EQ(PlainText(text), GetParam().plain);
}

INSTANTIATE_TEST_SUITE_P(
    Texts, ParseRichTextTest,
    testing::Values(ParseCase{"Whole", "15", "[15]", "15"},
                    ParseCase{"Mixed", "15 15/32", "[15]<15|32>", "15 15/32"},
                    ParseCase{"Fraction", "3/4", "<3|4>", "3/4"},
                    ParseCase{"Negative", "-1/8", "[-]<1|8>", "-1/8"},
                    ParseCase{"About", "≈ 5 1/64 in", "[≈ 5]<1|64>[ in]", "≈ 5 1/64 in"},
                    ParseCase{"Product", "23 3/4 × 2 1/2", "[23]<3|4>[ × 2]<1|2>",
                              "23 3/4 × 2 1/2"},
                    ParseCase{"NameBeforeFraction", "front D2 3/4 thick",
                              "[front D2 ]<3|4>[ thick]", "front D2 3/4 thick"},
                    ParseCase{"InchMark", "1 1/2\"", "[1]<1|2>[\"]", "1 1/2\""},
                    ParseCase{"EndOfSentence", "Gaps 1/8.", "[Gaps ]<1|8>[.]", "Gaps 1/8."},
                    ParseCase{"Date", "3/14/2026", "[3/14/2026]", "3/14/2026"},
                    ParseCase{"LeadingZero", "03/4", "[03/4]", "03/4"},
                    ParseCase{"ZeroDenominator", "1/0", "[1/0]", "1/0"},
                    ParseCase{"Decimal", "1.5/8", "[1.5/8]", "1.5/8"},
                    ParseCase{"FourDigits", "1/1000", "[1/1000]", "1/1000"},
                    ParseCase{"Letters", "and/or 1/2x", "[and/or 1/2x]", "and/or 1/2x"},
                    ParseCase{"Ratio", "1:8", "[1:8]", "1:8"},
                    ParseCase{"Precomposed", "15½", "[15]<1|2>", "15 1/2"},
                    ParseCase{"PrecomposedAfterSpace", "15 ⅜", "[15]<3|8>", "15 3/8"},
                    ParseCase{"FractionSlash", "5⁄16", "<5|16>", "5/16"},
                    ParseCase{"Diameter", "ø5", "%[5]", "⌀ 5"},
                    ParseCase{"DiameterFraction", "⌀ 3/16", "%<3|16>", "⌀ 3/16"},
                    ParseCase{"DiameterOfWords", "Ø 12 deep", "%[12 deep]", "⌀ 12 deep"},
                    ParseCase{"LetterOfAName", "Ørsted brød 3", "[Ørsted brød 3]", "Ørsted brød 3"},
                    ParseCase{"Blank", "  \t ", "", ""}, ParseCase{"Trimmed", " 8 \n", "[8]", "8"},
                    ParseCase{"ControlCharacters", "a\x1b[31mb", "[a [31mb]", "a [31mb"},
                    ParseCase{"Invisible", "a\u200b\u202eb", "[ab]", "ab"},
                    ParseCase{"BadUtf8", "a\xff\x62", "[a\ufffd\x62]", "a\ufffd\x62"}),
    [](const auto& each) { return std::string(each.param.name); });

class LabelTest : public testing::Test {
 protected:
  FixedTextMetrics metrics_;
  LabelStyle style_;
};

TEST_F(LabelTest, MeasuresItsBoxFromAnchorAndLevel) {
  const Label left = MakeLabel(metrics_, "124", style_, {50, 60}, "case.width");
  EXPECT_DOUBLE_EQ(left.width, 3 * 0.85 * 2.5);
  EXPECT_DOUBLE_EQ(left.box.left, 50);
  EXPECT_DOUBLE_EQ(left.box.top, 60 - 1.25);
  EXPECT_DOUBLE_EQ(left.box.bottom, 60 + 1.25);
  EXPECT_EQ(left.path, "case.width");
  style_.anchor = TextAnchor::kRight;
  style_.level = TextLevel::kBaseline;
  const Label right = MakeLabel(metrics_, "124", style_, {50, 60}, "");
  EXPECT_DOUBLE_EQ(right.box.right, 50);
  EXPECT_DOUBLE_EQ(right.box.bottom, 60);
  style_.anchor = TextAnchor::kCenter;
  EXPECT_DOUBLE_EQ(MakeLabel(metrics_, "124", style_, {50, 60}, "").box.Center().x, 50);
}

TEST_F(LabelTest, TurnedUpwardHasItsBoxTurned) {
  style_.turn = TextTurn::kUpward;
  const Label label = MakeLabel(metrics_, "124", style_, {50, 60}, "");
  EXPECT_DOUBLE_EQ(label.box.Height(), label.width);
  EXPECT_DOUBLE_EQ(label.box.bottom, 60);
  EXPECT_DOUBLE_EQ(label.box.Center().x, 50);
}

TEST_F(LabelTest, AStackedFractionIsAsTallAsStated) {
  const Label label = MakeLabel(metrics_, "5 15/32", style_, {50, 60}, "");
  EXPECT_NEAR(label.box.Height(), 1.72 * 2.5, 1e-12);
  EXPECT_NEAR(label.box.Center().y, 60, 1e-12);
}

TEST_F(LabelTest, FractionNumeralsStandCenterdOverEachOtherClearOfTheBar) {
  const RichText text = ParseRichText("5 3/16");
  const TextLayout layout = LayoutText(metrics_, text, TextWeight::kRegular, 2.5);
  const PlacedRun& run = layout.runs.at(1);
  const double middle = (run.bar.left + run.bar.right) / 2;
  EXPECT_NEAR(run.text.x + 0.5 * 0.85 * 0.7 * 2.5, middle, 1e-12);
  EXPECT_NEAR(run.denominator.x + 0.85 * 0.7 * 2.5, middle, 1e-12);
  EXPECT_GT(run.text.y, run.bar.top);
  EXPECT_LT(run.denominator.y + run.denominator.cap_height, run.bar.bottom);
}

TEST_F(LabelTest, ReplacesRunsOfCharactersWithoutGlyphAndKeepsTheNameForSearch) {
  const Label label = MakeLabel(metrics_, "Lade 引き出し 2", style_, {0, 0}, "");
  EXPECT_EQ(PlainText(label.text), "Lade ‹?› 2");
  EXPECT_EQ(label.plain, "Lade 引き出し 2");
  EXPECT_TRUE(HasReplacedCharacters(label));
  EXPECT_FALSE(HasReplacedCharacters(MakeLabel(metrics_, "Lade 2", style_, {0, 0}, "")));
}

TEST_F(LabelTest, ReplacesScriptsThatNeedJoiningOrRunFromTheRight) {
  for (const char* name : {"درج", "מגירה", "दराज"}) {
    EXPECT_EQ(PlainText(MakeLabel(metrics_, name, style_, {0, 0}, "").text), "‹?›") << name;
  }
}

TEST_F(LabelTest, ShortensToTheWidthAndNoFurther) {
  const std::string name = "Lower drawer 3 1/2 for folded sheets";
  const double whole = MeasureLabel(metrics_, name, style_).width;
  for (double width = 4; width < whole; width += 0.7) {
    style_.max_width = width;
    const Label label = MakeLabel(metrics_, name, style_, {0, 0}, "");
    ASSERT_LE(label.width, width);
    ASSERT_EQ(label.plain, name);
    ASSERT_EQ(label.text.back().text.substr(label.text.back().text.size() - 3), "…");
  }
  style_.max_width = whole + 1e-9;
  EXPECT_EQ(PlainText(MakeLabel(metrics_, name, style_, {0, 0}, "").text), name);
}

TEST_F(LabelTest, NamesKeepTheirSlashes) {
  const Label label = MakePlainLabel(metrics_, "Sheet 1/2", style_, {0, 0});
  ASSERT_EQ(label.text.size(), 1U);
  EXPECT_EQ(label.text[0].text, "Sheet 1/2");
}

TEST_F(LabelTest, EmptyTextHasNoRunsAndNoWidth) {
  const Label label = MakeLabel(metrics_, "", style_, {5, 5}, "");
  EXPECT_TRUE(label.text.empty());
  EXPECT_DOUBLE_EQ(label.width, 0);
  EXPECT_TRUE(MakePlainLabel(metrics_, " \x01 ", style_, {5, 5}).text.empty());
}

TEST_F(LabelTest, WrapsWordsToAWidth) {
  const auto lines = WrapText(metrics_, "gaps at the case  edges 1/8", style_, 22);
  ASSERT_EQ(lines.size(), 3U);
  EXPECT_EQ(lines[0], "gaps at");
  EXPECT_EQ(lines[1], "the case");
  EXPECT_EQ(lines[2], "edges 1/8");
  EXPECT_EQ(WrapText(metrics_, "unbreakable", style_, 1).size(), 1U);
  EXPECT_TRUE(WrapText(metrics_, "", style_, 1).empty());
}

TEST(Utf8, RoundTripsEveryScalarValueAndRefusesTheRest) {
  for (char32_t c = 0; c <= 0x10ffff; c += (c < 0x3000 ? 1 : 97)) {
    if (c >= 0xd800 && c <= 0xdfff) continue;
    std::string text;
    AppendCharacter(text, c);
    std::size_t at = 0;
    ASSERT_EQ(NextCharacter(text, at), c);
    ASSERT_EQ(at, text.size());
  }
  for (const std::string_view bad : {"\xc0\x80", "\xed\xa0\x80", "\xf4\x90\x80\x80", "\xe2\x82",
                                     "\x80", "\xe0\x80\x80", "\xff"}) {
    std::size_t at = 0;
    EXPECT_EQ(NextCharacter(bad, at), kBadByte);
    EXPECT_EQ(at, 1U);
  }
}

}  // namespace
}  // namespace tillwright
