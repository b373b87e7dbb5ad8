// Every kind of part of the cut list is in a drawing and on the sticks under the label that the cut
// list prints, and its sizes are where the key says: read from the texts of the made sheets and of
// the CSV, none of the data between them.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <regex>
#include <set>

#include "draw/stick_texts.h"
#include "render/tools.h"
#include "support/files.h"
#include "support/random_case.h"
#include "support/random_spec.h"
#include "support/specs.h"
#include "tillwright/draw.h"
#include "tillwright/parts.h"
#include "tillwright/render.h"
#include "tillwright/stick.h"
#include "tillwright/write.h"

namespace tillwright::testing {
namespace {

// One line of `parts --format csv`, as a maker reads it.
struct Listed {
  std::string label;
  std::array<std::string, 3> sizes;  // mm
};

// Fields of a line without line breaks in them (RFC 4180).
std::vector<std::string> FieldsOf(const std::string& line) {
  std::vector<std::string> fields(1);
  bool quoted = false;
  for (const char c : line) {
    if (c == '"') {
      quoted = !quoted;
    } else if (c == ',' && !quoted) {
      fields.emplace_back();
    } else if (c != '\r') {
      fields.back() += c;
    }
  }
  return fields;
}

std::vector<Listed> CutListOf(const Solved& solved) {
  const std::string csv = CutListCsv(solved.bank, CutList(solved.spec, solved.bank));
  std::vector<Listed> lines;
  std::vector<std::string> head;
  for (std::size_t at = 0; at < csv.size();) {
    const std::size_t end = csv.find('\n', at);
    const std::vector<std::string> fields = FieldsOf(csv.substr(at, end - at));
    at = end + 1;
    if (head.empty()) {
      head = fields;
      continue;
    }
    const auto field = [&](const char* name) {
      const auto found = std::ranges::find(head, name);
      EXPECT_NE(found, head.end()) << name;
      return fields.at(static_cast<std::size_t>(found - head.begin()));
    };
    lines.push_back(
        {field("part"), {field("length_mm"), field("width_mm"), field("thickness_mm")}});
  }
  return lines;
}

// The words of every view: its title and what stands below it, scale and the like left out.
std::set<std::string> DrawnNames(const Bank& bank) {
  DrawOptions options;
  options.views = {ViewKind::kParts};
  const Drawings drawings = DrawBank(bank, options, DrawingFontMetrics());
  EXPECT_EQ(drawings.fault, "");
  std::set<std::string> names;
  for (const Sheet& sheet : drawings.sheets) {
    for (const SheetGroup& group : sheet.groups) {
      if (!group.id.ends_with("-words")) continue;
      std::vector<std::string> texts = TextsOf(group);
      std::erase_if(texts, [](const std::string& text) { return text.starts_with("SCALE"); });
      for (std::size_t first = 0; first < texts.size(); ++first) {
        std::string name;
        for (std::size_t i = first; i < texts.size(); ++i) {
          name += (i == first ? "" : " ") + texts[i];
          names.insert(name);  // a label may go on in the next line
        }
      }
    }
  }
  return names;
}

class StickReader {
 public:
  explicit StickReader(const StickSheets& sheets) : rows_(KeyRows(sheets)), marks_(sheets) {}

  void Expect(const Listed& part) const {
    const auto row = rows_.find(part.label);
    if (row == rows_.end()) {
      ADD_FAILURE() << part.label << " is not in the key of the sticks";
      return;
    }
    for (std::size_t i = 0; i < 3; ++i) ExpectSize(part, i, row->second[i]);
  }
  [[nodiscard]] std::size_t size() const { return rows_.size(); }

 private:
  // "BOX · Heights: 3/4 to 4 3/4": the strip has both marks, and they are as far apart as listed.
  void ExpectSize(const Listed& part, std::size_t which, const std::string& cell) const {
    static const std::regex kCell("(.*): (.*) to (.*)");
    std::smatch found;
    if (!std::regex_match(cell, found, kCell)) {
      ADD_FAILURE() << part.label << ": no marks for size " << which << ": \"" << cell << "\"";
      return;
    }
    EXPECT_TRUE(marks_.Has(found[1], found[2])) << part.label << ": " << cell;
    EXPECT_TRUE(marks_.Has(found[1], found[3])) << part.label << ": " << cell;
    const double size = std::stod(part.sizes[which]);
    EXPECT_NEAR(marks_.Millimeters(found[3]) - marks_.Millimeters(found[2]), size, 0.41)
        << part.label << ": " << cell;
  }

  std::map<std::string, std::array<std::string, 3>> rows_;
  StickMarkTexts marks_;
};

void ExpectLabels(const std::string& text) {
  SCOPED_TRACE(text);
  const Solved solved = MustSolve(text);
  const std::vector<Listed> list = CutListOf(solved);
  const std::set<std::string> drawn = DrawnNames(solved.bank);
  const StickSheets sheets = DrawSticks(solved.bank, {}, DrawingFontMetrics());
  ASSERT_EQ(sheets.fault, "");
  const StickReader sticks(sheets);
  std::set<std::string> labels;
  for (const Listed& part : list) {
    EXPECT_TRUE(labels.insert(part.label).second) << "two lines are called " << part.label;
    EXPECT_TRUE(drawn.contains(part.label)) << part.label << " is in no drawing";
    sticks.Expect(part);
  }
  EXPECT_EQ(sticks.size(), list.size()) << "the key has parts that the cut list does not know";
}

bool CanBeSolved(const std::string& text) {
  const Outcome<Spec> spec = ReadSpec(text);
  return spec.ok() && SolveBank(spec.value()).ok();
}

// Every part of a case, with each fit of the back, each joint, each style, each way to close it.
std::vector<std::string> WholeCases() {
  std::vector<std::string> all;
  int count = 0;
  for (const char* joint : {"butt", "dado", "rabbet", "tongue-and-dado"}) {
    for (const char* back : {"rabbet", "groove", "applied", "none"}) {
      for (const bool frame : {false, true}) {
        for (const bool web : {false, true}) {
          ++count;
          std::string text =
              R"({"title": "Whole case", "case": {"width": 30, "joint": {"type": ")" +
              std::string(joint) + "\"}";
          text += back == std::string("none")
                      ? std::string(R"(, "back": "none")")
                      : R"(, "back": {"fit": ")" + std::string(back) + "\"}";
          if (frame) text += R"(, "face_frame": {"stile": "1 3/4", "rail": "1 1/2"})";
          if (web) text += R"(, "web_frame": {"rail": 2, "runner": "2 1/2"})";
          const bool worktop = count % 2 == 0;
          text += worktop ? R"(, "worktop": {"height": 36, "thickness": "1 1/2", "depth": 25,
                                "width": 50, "left": 4})"
                          : R"(, "height": 32, "depth": 23)";
          if (count % 3 == 0) text += R"(, "stretchers": {"width": 3})";
          if (count % 3 == 1) text += R"(, "top": "none")";
          if (count % 4 == 1) text += R"(, "feet": {"height": 4})";
          if (count % 4 == 2) text += R"(, "toe_kick": {"height": 4, "setback": 3})";
          if (count % 4 == 3) text += R"(, "raise": 1)";
          text += R"(}, "fronts": {"style": ")";
          text += count % 5 < 3 ? "overlay" : "inset";
          text += R"(", "pull": {}}, "layout": {"rows": [{"drawer": {}}, {"columns": [
                     {"drawer": {}}, {"rows": [{"drawer": {}}, {"blank": {}}]}]}, {"drawer": {}}],
                     "divider": "3/4"}})";
          all.push_back(text);
        }
      }
    }
  }
  return all;
}

// Every corner joint with every fit of the bottom, an open back, ends that stand in.
std::vector<std::string> WholeBoxes() {
  std::vector<std::string> all;
  for (const char* joint :
       {"butt", "rabbet", "dado", "half-blind-dovetail", "through-dovetail", "finger"}) {
    for (const char* bottom :
         {R"("fit": "groove")", R"("fit": "groove", "open_back": true)", R"("fit": "rabbet")",
          R"("fit": "applied")", R"("fit": "groove", "material": "soft maple")"}) {
      const bool sets_back =
          std::string(joint).find('l') == std::string::npos && std::string(joint) != "finger";
      all.push_back(R"({"units": "mm", "opening": {"width": 420, "height": 600, "depth": 500},
          "box": {"side": {"thickness": 13}, "end": {"thickness": 15}, "corner": {"joint": ")" +
                    std::string(joint) + "\"" + (sets_back ? R"(, "back_setback": 20)" : "") +
                    R"(}, "bottom": {)" + bottom +
                    R"(}}, "graduate": {"scheme": "arithmetic", "step": 10},
          "drawers": [{}, {}, {"front": {"grain": "vertical"}}]})");
    }
  }
  return all;
}

void ExpectAll(const std::vector<std::string>& texts) {
  std::size_t solved = 0;
  for (const std::string& text : texts) {
    if (!CanBeSolved(text)) continue;
    ++solved;
    ExpectLabels(text);
  }
  EXPECT_EQ(solved, texts.size()) << "some cannot be solved";
}

TEST(PartLabels, OfEveryCuratedSpec) {
  for (const auto& path : CuratedSpecs()) ExpectLabels(ReadFile(path));
}

// What pdftotext (poppler) reads, blanks and line ends drawn together.
std::string PdfWords(const std::vector<Sheet>& sheets) {
  const Rendered rendered = RenderPdf(sheets, {});
  EXPECT_EQ(rendered.fault, "");
  const TempFile pdf(".pdf", rendered.bytes);
  const ToolRun run = RunTool("pdftotext -raw " + pdf.path() + " -");
  EXPECT_EQ(run.status, 0);
  std::string words;
  for (const char c : run.output) {
    const bool blank = c == ' ' || c == '\n' || c == '\f';
    if (!blank) words += c;
    if (blank && !words.ends_with(' ')) words += ' ';
  }
  return words;
}

// The label, and not as the beginning of a longer one.
bool HasLabel(const std::string& words, const std::string& label) {
  for (std::size_t at = words.find(label); at != std::string::npos;
       at = words.find(label, at + 1)) {
    const std::string after = words.substr(at + label.size(), 3);
    if (after.starts_with(' ')) return true;
  }
  return false;
}

TEST(PartLabels, InThePdfsOfEveryCuratedSpec) {
  TILLWRIGHT_NEEDS_TOOL("pdftotext");
  for (const auto& path : CuratedSpecs()) {
    SCOPED_TRACE(path);
    const Solved solved = MustSolve(ReadFile(path));
    const std::string drawn = PdfWords(DrawBank(solved.bank, {}, DrawingFontMetrics()).sheets);
    const std::string sticks = PdfWords(DrawSticks(solved.bank, {}, DrawingFontMetrics()).sheets);
    for (const Listed& part : CutListOf(solved)) {
      EXPECT_TRUE(HasLabel(drawn, part.label)) << part.label << " is in no drawing";
      EXPECT_TRUE(HasLabel(sticks, part.label)) << part.label << " is on no stick";
    }
  }
}

TEST(PartLabels, OfWholeCases) { ExpectAll(WholeCases()); }

TEST(PartLabels, OfEveryBox) { ExpectAll(WholeBoxes()); }

TEST(PartLabels, OfTwoHundredRandomSpecs) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("TILLWRIGHT_TEST_SEED=" + std::to_string(seed));
  int count = 0;
  for (std::uint32_t s = seed; count < 200; ++s) {
    const Unit unit = s % 2 == 0 ? Unit::kInch : Unit::kMillimeter;
    const std::string text = s % 4 != 0 ? RandomCase(s).Text() : RandomSpec(s, unit).Text();
    if (!CanBeSolved(text)) continue;
    ++count;
    ExpectLabels(text);
  }
}

}  // namespace
}  // namespace tillwright::testing
