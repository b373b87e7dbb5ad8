// Sticks on paper, read back by other programs: every mark is where the solved dimension says.
//
// Vector: from the PDF's own drawing commands, unpacked by qpdf, within 0.02 mm. Raster: as
// pdftoppm (poppler) draws it at 600 dpi, within one pixel.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <tuple>

#include "draw/stick_cases.h"
#include "draw/stick_reading.h"
#include "draw/view_cases.h"
#include "render/tools.h"
#include "support/specs.h"
#include "tillwright/render.h"

namespace tillwright::testing {
namespace {

using ::testing::IsEmpty;
using ::testing::Not;

constexpr double kVectorLimit = 0.02;  // mm
constexpr double kHairline = 10;       // mm, how long a mark is
constexpr double kOverlap = 12;        // mm, past a joint

// The level lines of a page that begin on a piece's working edge, by length: y on the page.
class PieceReader {
 public:
  PieceReader(const DrawnPage& page, const StickPiece& piece) : page_(page), piece_(piece) {}

  // y of those whose far end is `reach` mm in.
  [[nodiscard]] std::vector<double> LevelLines(double reach) const {
    std::vector<double> found;
    for (const PaperSegment& s : page_.lines) {
      if (std::abs(s.from.y - s.to.y) > 0.002) continue;
      const double u1 = (s.from.x - piece_.zero.x) * piece_.inward;
      const double u2 = (s.to.x - piece_.zero.x) * piece_.inward;
      if (std::abs(std::min(u1, u2)) < 0.01 && std::abs(std::max(u1, u2) - reach) < 0.01) {
        found.push_back(s.from.y);
      }
    }
    return found;
  }

  // The line from edge to edge nearest to where the piece begins: where it is cut.
  [[nodiscard]] std::optional<double> BaseLine() const { return Nearest(piece_.zero.y); }
  [[nodiscard]] std::optional<double> EndLine(double stretch) const {
    return Nearest(piece_.zero.y +
                   piece_.toward_end * ToMillimeters(piece_.to - piece_.from) * stretch);
  }

 private:
  [[nodiscard]] std::optional<double> Nearest(double y) const {
    std::optional<double> nearest;
    for (const double at : LevelLines(piece_.width)) {
      if (std::abs(at - y) > 0.5) continue;
      if (!nearest || std::abs(at - y) < std::abs(*nearest - y)) nearest = at;
    }
    return nearest;
  }

  const DrawnPage& page_;
  const StickPiece& piece_;
};

// Marks that are not drawn where they belong, and lines that are no marks.
class MisplacedMarks {
 public:
  MisplacedMarks(const StickSheets& sheets, const std::vector<DrawnPage>& pages, double stretch)
      : sheets_(sheets), pages_(pages), stretch_(stretch) {}

  std::vector<std::string> Find() {
    for (const StickPiece& piece : sheets_.pieces) Look(piece);
    return std::move(faults_);
  }

 private:
  void Look(const StickPiece& piece) {
    const Stick& stick = sheets_.sticks[piece.stick];
    const PieceReader reader(pages_.at(piece.sheet), piece);
    const std::optional<double> base = reader.BaseLine();
    if (!base) return faults_.push_back(stick.title + ": no base line");
    std::vector<double> lines = reader.LevelLines(kHairline);
    for (double& y : lines) y = (y - *base) * piece.toward_end;
    const bool last = stick.End(piece.lane) <= piece.to;
    const double length = At(piece, piece.to) + (last ? 0 : kOverlap);
    std::erase_if(lines, [&](double at) {  // of pieces above and below
      return at < -kVectorLimit || at > length + kVectorLimit;
    });
    for (const std::size_t i : piece.marks) {
      const double at = At(piece, stick.marks[i].at);
      if (!IsNearOne(lines, at)) {
        faults_.push_back(stick.title + ": " + stick.marks[i].Name() + " is not at " +
                          std::to_string(at) + " mm");
      }
    }
    std::vector<double> marks;
    for (const StickMark& mark : stick.marks) {
      if (mark.lane == piece.lane) marks.push_back(At(piece, mark.at));
    }
    for (const double at : lines) {
      if (!IsNearOne(marks, at)) {
        faults_.push_back(stick.title + ": no mark is at " + std::to_string(at) + " mm");
      }
    }
  }

  [[nodiscard]] double At(const StickPiece& piece, Length at) const {
    return ToMillimeters(at - piece.from) * stretch_;
  }
  static bool IsNearOne(const std::vector<double>& places, double at) {
    return std::ranges::any_of(places, [at](double a) { return std::abs(a - at) <= kVectorLimit; });
  }

  const StickSheets& sheets_;
  const std::vector<DrawnPage>& pages_;
  double stretch_;
  std::vector<std::string> faults_;
};

std::string PdfOf(const StickSheets& sheets) {
  const Rendered pdf = RenderPdf(sheets.sheets, {});
  EXPECT_TRUE(pdf.ok()) << pdf.fault;
  return pdf.bytes;
}

void ExpectTrueOnPaper(const BankCase& c, const StickOptions& options) {
  SCOPED_TRACE(c.name);
  const StickSheets sheets = DrawSticks(c.bank, options, DrawingFontMetrics());
  ASSERT_EQ(sheets.fault, "");
  const std::vector<DrawnPage> pages = ReadPages(Unpacked(PdfOf(sheets)));
  ASSERT_EQ(pages.size(), sheets.sheets.size());
  EXPECT_THAT(MisplacedMarks(sheets, pages, options.correct_y).Find(), IsEmpty());
}

TEST(StickPaperTest, EveryMarkIsInItsPlaceInThePdf) {
  TILLWRIGHT_NEEDS_TOOL("qpdf");
  for (const BankCase& c : CuratedBanks()) ExpectTrueOnPaper(c, {});
}

TEST(StickPaperTest, EveryMarkIsInItsPlaceOnRollsAndTurned) {
  TILLWRIGHT_NEEDS_TOOL("qpdf");
  for (const BankCase& c : CuratedBanks()) {
    StickOptions options;
    options.roll = true;
    options.mirror = true;
    ExpectTrueOnPaper(c, options);
    options.roll_width = 101.6;
    options.max_length = 500;
    options.mirror = false;
    options.datum_up = true;
    ExpectTrueOnPaper(c, options);
  }
}

// What the test would say of a stick that is one part in a thousand too long.
TEST(StickPaperTest, AStickOffScaleIsFound) {
  TILLWRIGHT_NEEDS_TOOL("qpdf");
  const StickSheets sheets = DrawSticks(CuratedBanks().front().bank, {}, DrawingFontMetrics());
  const std::vector<DrawnPage> pages = ReadPages(Unpacked(PdfOf(sheets)));
  EXPECT_THAT(MisplacedMarks(sheets, pages, 1.001).Find(), Not(IsEmpty()));
}

// A printer that makes 149.6 mm of 150 gets 150 / 149.6 of everything.
TEST(StickPaperTest, ACorrectionStretchesWhatMustBeTrue) {
  TILLWRIGHT_NEEDS_TOOL("qpdf");
  const BankCase c = CuratedBanks().front();
  StickOptions options;
  options.correct_y = 150 / 149.6;
  ExpectTrueOnPaper(c, options);
  options.correct_y = 150 / 150.3;
  ExpectTrueOnPaper(c, options);
}

// Gray pixels of a column of a page, from the top.
std::vector<unsigned char> ColumnOf(const std::string& path, std::size_t page, double x,
                                    double height) {
  const auto px = [](double mm) { return std::to_string(static_cast<int>(mm * 600 / 25.4)); };
  const TempFile out("", "");
  const std::string root = out.path();
  const std::string number = std::to_string(page + 1);
  const ToolRun run =
      RunTool("pdftoppm -r 600 -gray -singlefile -f " + number + " -l " + number + " -x " + px(x) +
              " -y 0 -W 1 -H " + px(height) + " " + path + " " + root);
  EXPECT_EQ(run.status, 0) << run.output;
  const std::string pgm = RunTool("cat " + root + ".pgm").output;
  EXPECT_EQ(RunTool("rm " + root + ".pgm").status, 0);
  // "P5\n1 HEIGHT\n255\n" and the bytes.
  std::size_t header = 0;
  for (int line = 0; line < 3; ++line) header = pgm.find('\n', header) + 1;
  return {pgm.begin() + static_cast<std::ptrdiff_t>(header), pgm.end()};
}

// The middle of the dark run nearest to a row.
double DarkNear(const std::vector<unsigned char>& column, double row) {
  double nearest = 1e9;
  for (std::size_t i = 0; i < column.size();) {
    if (column[i] >= 128) {
      ++i;
      continue;
    }
    std::size_t end = i;
    while (end < column.size() && column[end] < 128) ++end;
    const double middle = static_cast<double>(i + end) / 2;
    if (std::abs(middle - row) < std::abs(nearest - row)) nearest = middle;
    i = end;
  }
  return nearest;
}

TEST(StickPaperTest, EveryMarkIsInItsPlaceAtSixHundredDotsPerInch) {
  TILLWRIGHT_NEEDS_TOOL("pdftoppm");
  constexpr double kPixel = 25.4 / 600;
  int measured = 0;
  for (const BankCase& c : CuratedBanks()) {
    SCOPED_TRACE(c.name);
    const StickSheets sheets = DrawSticks(c.bank, {}, DrawingFontMetrics());
    const TempFile pdf(".pdf", PdfOf(sheets));
    for (const StickPiece& piece : sheets.pieces) {
      const Stick& stick = sheets.sticks[piece.stick];
      // Past the hatching, before the end of the hairlines, in a dash of center lines.
      const std::vector<unsigned char> column =
          ColumnOf(pdf.path(), piece.sheet, piece.zero.x + 9.5, sheets.sheets[piece.sheet].height);
      const double base = DarkNear(column, piece.zero.y / kPixel);
      EXPECT_NEAR(base, piece.zero.y / kPixel, 1);
      std::set<Length> places;
      for (const std::size_t i : piece.marks) places.insert(stick.marks[i].at);
      for (const StickMark& mark : stick.marks) {
        if (mark.lane == piece.lane) places.insert(mark.at);
      }
      for (const std::size_t i : piece.marks) {
        const Length at = stick.marks[i].at;
        const auto own = places.find(at);
        const Length apart = Length::Picometers(Length::kPerMillimeter * 2 / 5);
        // Lines closer than their width run together and are measured by the vector test alone.
        if (own != places.begin() && at - *std::prev(own) < apart) continue;
        if (std::next(own) != places.end() && *std::next(own) - at < apart) continue;
        const double row = base + piece.toward_end * ToMillimeters(at - piece.from) / kPixel;
        EXPECT_NEAR(DarkNear(column, row), row, 1) << stick.title << ": " << stick.marks[i].Name();
        ++measured;
      }
    }
  }
  EXPECT_GT(measured, 500);
}

// A stick more than 2.5 m long, laid together again from the match lines that are drawn.
class Assembly {
 public:
  Assembly(const StickSheets& sheets, const std::vector<DrawnPage>& pages)
      : sheets_(sheets), pages_(pages) {}

  // Where the lines from the far edge inward (the ruler) lie on the strip, from its begin.
  std::vector<double> Ruler(StickAxis axis, StickLane lane) {
    std::vector<double> ticks;
    double laid = 0;
    for (const StickPiece& piece : sheets_.pieces) {
      if (sheets_.sticks[piece.stick].axis != axis || piece.lane != lane) continue;
      const PieceReader reader(pages_.at(piece.sheet), piece);
      const std::optional<double> base = reader.BaseLine();
      const std::optional<double> end = reader.EndLine(1);
      EXPECT_TRUE(base && end);
      if (!base || !end) return {};
      const double far = piece.zero.x + piece.width;
      for (const PaperSegment& s : pages_[piece.sheet].lines) {
        const double length = std::abs(s.to.x - s.from.x);
        if (std::abs(s.from.y - s.to.y) > 0.002 || length > 5 || length < 1) continue;
        if (std::abs(std::max(s.from.x, s.to.x) - far) > 0.01) continue;
        const double v = *base - s.from.y;
        if (v > -0.01 && v < *base - *end + 0.01) ticks.push_back(laid + v);
      }
      laid += *base - *end;
      ++pieces;
    }
    std::ranges::sort(ticks);
    total = laid;
    return ticks;
  }

  int pieces = 0;
  double total = 0;

 private:
  const StickSheets& sheets_;
  const std::vector<DrawnPage>& pages_;
};

void ExpectUnbroken(const std::string& units, double graduation, Paper paper) {
  const Bank bank = MustSolve(R"({"units": ")" + units + R"(", "opening": {"width": "500 mm",
      "height": "2540 mm", "depth": "500 mm"}, "drawers": [{}, {}, {}, {}, {}, {}, {}, {}, {}]})")
                        .bank;
  StickOptions options;
  options.paper = paper;
  options.templates = false;
  const StickSheets sheets = DrawSticks(bank, options, DrawingFontMetrics());
  const std::vector<DrawnPage> pages = ReadPages(Unpacked(PdfOf(sheets)));
  Assembly assembly(sheets, pages);
  const std::vector<double> ticks = assembly.Ruler(StickAxis::kHeight, StickLane::kCase);
  EXPECT_GT(assembly.pieces, 5);
  EXPECT_NEAR(assembly.total, 2540, kVectorLimit);
  double expected = 0;
  std::size_t i = 0;
  for (; expected < 2540 + 0.001; expected += graduation) {
    bool found = false;
    for (; i < ticks.size() && ticks[i] < expected + kVectorLimit; ++i) {
      EXPECT_NEAR(ticks[i], expected, kVectorLimit);  // at joints there are two
      found = true;
    }
    EXPECT_TRUE(found) << "no graduation at " << expected << " mm";
  }
  EXPECT_EQ(i, ticks.size());
}

TEST(StickPaperTest, TilesLaidTogetherAreOneStrip) {
  TILLWRIGHT_NEEDS_TOOL("qpdf");
  ExpectUnbroken("in", 25.4 / 8, Paper::kLetter);
  ExpectUnbroken("mm", 1, Paper::kA4);
  ExpectUnbroken("mm", 1, Paper::kA3);
}

TEST(StickPaperTest, JointsFallOnWholeInchesOrFiftyMillimeters) {
  for (const BankCase& c : CuratedBanks()) {
    const Length grid = c.bank.units == Unit::kInch ? Length::Inches(1) : Length::Millimeters(50);
    for (const StickPiece& piece : DrawSticks(c.bank, {}, DrawingFontMetrics()).pieces) {
      if (piece.piece > 1) {
        EXPECT_EQ(FloorTo(piece.from, grid), piece.from) << c.name;
      }
    }
  }
}

// The level and the upright bars, read from the PDF: a base line of 10 mm steps and one of inches.
TEST(StickPaperTest, EveryPageHasBarsBothWays) {
  TILLWRIGHT_NEEDS_TOOL("qpdf");
  TILLWRIGHT_NEEDS_TOOL("pdftotext");
  for (const BankCase& c : CuratedBanks()) {
    const std::string bytes = PdfOf(DrawSticks(c.bank, {}, DrawingFontMetrics()));
    const std::vector<DrawnPage> pages = ReadPages(Unpacked(bytes));
    const TempFile pdf(".pdf", bytes);
    for (std::size_t p = 0; p < pages.size(); ++p) {
      std::set<int> level, upright;  // lengths of long lines, hundredths of a millimeter
      for (const PaperSegment& s : pages[p].lines) {
        level.insert(static_cast<int>(std::lround(std::abs(s.to.x - s.from.x) * 100)));
        upright.insert(static_cast<int>(std::lround(std::abs(s.to.y - s.from.y) * 100)));
      }
      const auto has = [](const std::set<int>& lengths, double step, int least) {
        for (int n = least; n * step < 500; ++n) {
          const int length = static_cast<int>(std::lround(n * step * 100));
          for (const int near : {-1, 0, 1}) {
            if (lengths.contains(length + near)) return true;
          }
        }
        return false;
      };
      EXPECT_TRUE(has(level, 10, 15) && has(level, 25.4, 6)) << c.name << ", page " << p + 1;
      EXPECT_TRUE(has(upright, 10, 15) && has(upright, 25.4, 6)) << c.name << ", page " << p + 1;
      const std::string n = std::to_string(p + 1);
      const std::string text =
          RunTool("pdftotext -f " + n + " -l " + n + " " + pdf.path() + " -").output;
      for (const char* words : {"150 mm", "6 in", "100 %", "--correct", "tape"}) {
        EXPECT_NE(text.find(words), std::string::npos) << c.name << ", page " << n << ": " << words;
      }
      EXPECT_NE(text.find("page " + n + " of " + std::to_string(pages.size())), std::string::npos);
    }
  }
}

TEST(StickPaperTest, ViewersAreAskedNotToScaleAndToPrintOneSided) {
  TILLWRIGHT_NEEDS_TOOL("qpdf");
  const std::string pdf =
      Unpacked(PdfOf(DrawSticks(CuratedBanks().front().bank, {}, DrawingFontMetrics())));
  EXPECT_NE(pdf.find("/PrintScaling /None"), std::string::npos);
  EXPECT_NE(pdf.find("/Duplex /Simplex"), std::string::npos);
}

TEST(StickPaperTest, TheSameBytesEveryTime) {
  for (const BankCase& c : CuratedBanks()) {
    const std::string first = PdfOf(DrawSticks(c.bank, {}, DrawingFontMetrics()));
    EXPECT_TRUE(first == PdfOf(DrawSticks(c.bank, {}, DrawingFontMetrics()))) << c.name;
    for (const Sheet& sheet : DrawSticksAlone(c.bank, {}, DrawingFontMetrics()).sheets) {
      EXPECT_TRUE(RenderSvg(sheet).bytes == RenderSvg(sheet).bytes) << c.name;
    }
  }
}

TEST(StickPaperTest, AloneEachStickIsOneSheet) {
  for (const BankCase& c : CuratedBanks()) {
    const StickSheets sheets = DrawSticksAlone(c.bank, {}, DrawingFontMetrics());
    ASSERT_EQ(sheets.fault, "");
    ASSERT_EQ(sheets.sheets.size(), sheets.sticks.size() + 2);  // and key and templates
    for (std::size_t i = 0; i < sheets.sticks.size(); ++i) {
      EXPECT_EQ(sheets.sheets[i].name, sheets.sticks[i].name);
    }
    EXPECT_EQ(sheets.sheets[sheets.sticks.size()].name, "key");
    EXPECT_EQ(sheets.sheets.back().name, "templates");
  }
}

TEST(StickPaperTest, ARollPastThePdfLimitIsSplit) {
  const Bank bank = MustSolve(R"({"units": "mm", "opening": {"width": 500, "height": 9000,
      "depth": 500}, "drawers": [{}, {}]})")
                        .bank;
  StickOptions options;
  options.roll = true;
  options.templates = false;
  const StickSheets sheets = DrawSticks(bank, options, DrawingFontMetrics());
  ASSERT_EQ(sheets.fault, "");
  for (const Sheet& sheet : sheets.sheets) EXPECT_LE(sheet.height, 5080);
  EXPECT_TRUE(RenderPdf(sheets.sheets, {}).ok());
  EXPECT_EQ(sheets.pieces.front().to, Length::Millimeters(5000));
}

}  // namespace
}  // namespace tillwright::testing
