// The result as JSON: every key of the contract (specs/README.md), nested as it says, with numbers
// that equal the bank's picometres exactly.
#include <gtest/gtest.h>

#include <set>
#include <string>

#include "read/json_value.h"
#include "support/files.h"
#include "support/specs.h"
#include "tillwright/check.h"
#include "tillwright/words.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

// A result that has been read again. Missing keys fail the test and read as null.
class Node {
 public:
  explicit Node(const JsonValue& value) : value_(&value) {}

  Node operator[](std::string_view key) const {
    const JsonMember* member = value_->Find(key);
    EXPECT_NE(member, nullptr) << "no key " << key;
    static const JsonValue kNull;
    return Node(member == nullptr ? kNull : member->value);
  }
  Node operator[](std::size_t i) const {
    EXPECT_LT(i, value_->items.size());
    static const JsonValue kNull;
    return Node(i < value_->items.size() ? value_->items[i] : kNull);
  }
  [[nodiscard]] bool Has(std::string_view key) const { return value_->Find(key) != nullptr; }
  [[nodiscard]] std::size_t size() const { return value_->items.size(); }
  [[nodiscard]] std::string text() const { return value_->text; }
  [[nodiscard]] bool flag() const { return value_->flag; }
  [[nodiscard]] JsonValue::Kind kind() const { return value_->kind; }
  // The decimal of millimetres, exactly.
  [[nodiscard]] Length length() const {
    EXPECT_EQ(value_->kind, JsonValue::Kind::kNumber);
    const ParsedLength parsed = ParseLength(value_->text, Unit::kMillimeter);
    EXPECT_TRUE(parsed.value.has_value()) << value_->text;
    return parsed.value.value_or(Length::Picometers(-1));
  }

 private:
  const JsonValue* value_;
};

void ExpectRect(const Node& node, const Rect& rect) {
  EXPECT_EQ(node["x_mm"].length(), rect.x);
  EXPECT_EQ(node["y_mm"].length(), rect.y);
  EXPECT_EQ(node["width_mm"].length(), rect.width);
  EXPECT_EQ(node["height_mm"].length(), rect.height);
}

void ExpectFront(const Node& node, const Front& front) {
  ExpectRect(node, front.rect);
  EXPECT_EQ(node["thickness_mm"].length(), front.thickness);
  if (front.pulls.empty()) return;
  ASSERT_EQ(node["pulls"].size(), front.pulls.size());
  for (std::size_t i = 0; i < front.pulls.size(); ++i) {
    EXPECT_EQ(node["pulls"][i]["x_mm"].length(), front.pulls[i].x);
    EXPECT_EQ(node["pulls"][i]["y_mm"].length(), front.pulls[i].y);
  }
}

void ExpectBox(const Node& node, const Box& box) {
  EXPECT_EQ(node["x_mm"].length(), box.x);
  EXPECT_EQ(node["y_mm"].length(), box.y);
  EXPECT_EQ(node["z_mm"].length(), box.z);
  EXPECT_EQ(node["width_mm"].length(), box.width);
  EXPECT_EQ(node["height_mm"].length(), box.height);
  EXPECT_EQ(node["depth_mm"].length(), box.depth);
  EXPECT_EQ(node["inside_width_mm"].length(), box.inside_width);
  EXPECT_EQ(node["inside_depth_mm"].length(), box.inside_depth);
  EXPECT_EQ(node["inside_height_mm"].length(), box.inside_height);
}

void ExpectName(const Node& node, const Space& space) {
  EXPECT_EQ(node["id"].text(), ToText(space.id));
  if (!space.name.empty()) {
    EXPECT_EQ(node["name"].text(), space.name);
  }
}

void ExpectSpaces(const Node& result, const Bank& bank) {
  std::size_t drawers = 0;
  std::size_t blanks = 0;
  std::size_t opens = 0;
  for (const Space& space : bank.spaces) {
    if (space.id.kind == SpaceKind::kBlank) {
      const Node blank = result["blanks"][blanks++];
      ExpectName(blank, space);
      ExpectFront(blank["front"], space.front);
    } else if (space.id.kind == SpaceKind::kOpen) {
      const Node open = result["opens"][opens++];
      ExpectName(open, space);
      ExpectRect(open, space.cell);
    } else {
      const Node drawer = result["drawers"][drawers++];
      ExpectName(drawer, space);
      ExpectFront(drawer["front"], space.front);
      ExpectRect(drawer["cell"], space.cell);
      EXPECT_EQ(drawer["slide"]["type"].text(), Word(space.slide.type));
      EXPECT_EQ(drawer["slide"]["length_mm"].length(), space.slide.length);
      EXPECT_EQ(drawer["slide"]["line_y_mm"].length(), space.slide.line_y);
      ExpectBox(drawer["box"], space.box);
    }
  }
  EXPECT_EQ(result["drawers"].size(), drawers);
  EXPECT_EQ(result.Has("blanks") ? result["blanks"].size() : 0, blanks);
  EXPECT_EQ(result.Has("opens") ? result["opens"].size() : 0, opens);
}

void ExpectGaps(const Node& result, const Bank& bank) {
  ASSERT_EQ(result["gaps"].size(), bank.gaps.size());
  for (std::size_t i = 0; i < bank.gaps.size(); ++i) {
    const Node gap = result["gaps"][i];
    EXPECT_EQ(gap["axis"].text(), bank.gaps[i].axis == Axis::kX ? "x" : "y");
    EXPECT_EQ(gap["from"].text(), ToText(bank, bank.gaps[i].from));
    EXPECT_EQ(gap["to"].text(), ToText(bank, bank.gaps[i].to));
    EXPECT_EQ(gap["size_mm"].length(), bank.gaps[i].size);
  }
  EXPECT_EQ(result.Has("overlaps"), bank.style == FrontStyle::kOverlay);
  if (bank.style != FrontStyle::kOverlay) return;
  ASSERT_EQ(result["overlaps"].size(), bank.overlaps.size());
  for (std::size_t i = 0; i < bank.overlaps.size(); ++i) {
    const Overlap& overlap = bank.overlaps[i];
    const Node node = result["overlaps"][i];
    EXPECT_EQ(node["drawer"].text(),
              ToText(bank.spaces[static_cast<std::size_t>(overlap.space)].id));
    EXPECT_EQ(node["edge"].text(), Word(overlap.edge));
    EXPECT_EQ(node["size_mm"].length(), overlap.size);
  }
}

void ExpectParts(const Node& result, const Bank& bank) {
  ASSERT_EQ(result["parts"].size(), bank.parts.size());
  for (std::size_t i = 0; i < bank.parts.size(); ++i) {
    const Part& part = bank.parts[i];
    const Node node = result["parts"][i];
    EXPECT_EQ(node["id"].text(), PartId(bank, part));
    EXPECT_EQ(node["for"].text(), PartFor(bank, part));
    EXPECT_EQ(node["role"].text(), ToText(part.role));
    EXPECT_EQ(node["count"].text(), std::to_string(part.count));
    EXPECT_EQ(node["length_mm"].length(), part.length);
    EXPECT_EQ(node["width_mm"].length(), part.width);
    EXPECT_EQ(node["thickness_mm"].length(), part.thickness);
    EXPECT_EQ(node["material"].text(), part.material);
    EXPECT_EQ(node["grain"].text(), Word(part.grain));
    ASSERT_EQ(node["cuts"].size(), part.cuts.size());
    for (std::size_t c = 0; c < part.cuts.size(); ++c) {
      const Node cut = node["cuts"][c];
      EXPECT_EQ(cut["kind"].text(), ToText(part.cuts[c].kind));
      EXPECT_FALSE(cut["face"].text().empty());
      EXPECT_EQ(cut["from"].text(), ToText(part.cuts[c].from));
      EXPECT_EQ(cut["offset_mm"].length(), part.cuts[c].offset);
      EXPECT_EQ(cut["width_mm"].length(), part.cuts[c].width);
      EXPECT_EQ(cut["depth_mm"].length(), part.cuts[c].depth);
    }
  }
}

void ExpectMembers(const Node& result, const Bank& bank) {
  EXPECT_EQ(result.Has("dividers"), !bank.dividers.empty());
  for (std::size_t i = 0; i < bank.dividers.size(); ++i) {
    const Node node = result["dividers"][i];
    EXPECT_EQ(node["id"].text(), ToText(bank.dividers[i]));
    ExpectRect(node, bank.dividers[i].rect);
    EXPECT_EQ(node["depth_mm"].length(), bank.dividers[i].depth);
  }
  EXPECT_EQ(result.Has("case"), bank.casework.has_value());
  if (!bank.casework) return;
  EXPECT_EQ(result["case"]["width_mm"].length(), bank.casework->width);
  EXPECT_EQ(result["case"]["height_mm"].length(), bank.casework->height);
  EXPECT_EQ(result["case"]["depth_mm"].length(), bank.casework->depth);
}

void ExpectChecks(const Node& result, const std::vector<Finding>& findings) {
  ASSERT_EQ(result["checks"].size(), findings.size());
  for (std::size_t i = 0; i < findings.size(); ++i) {
    const Node node = result["checks"][i];
    EXPECT_EQ(node["code"].text(), ToText(findings[i].code));
    EXPECT_EQ(node["level"].text(), ToText(findings[i].level));
    EXPECT_EQ(node["subject"].text(), findings[i].subject);
    EXPECT_EQ(node["message"].text(), findings[i].message);
    EXPECT_EQ(node["source"].text(), findings[i].source);
    for (const bool value : {true, false}) {
      const std::optional<Length>& figure = value ? findings[i].value : findings[i].limit;
      const Node shown = node[value ? "value" : "limit"];
      if (figure) {
        EXPECT_EQ(shown.length(), *figure);
      } else {
        EXPECT_EQ(shown.kind(), JsonValue::Kind::kNull);
      }
    }
  }
  EXPECT_EQ(result["ok"].flag(), !HasFailure(findings));
}

void ExpectResult(const Spec& spec, const Bank& bank) {
  const std::vector<Finding> findings = CheckBank(spec, bank);
  const std::string text = ResultJson(bank, findings);
  EXPECT_TRUE(text.ends_with("}\n"));
  JsonValue root;
  Diagnostics diagnostics;
  ASSERT_TRUE(ParseJson(text, root, diagnostics)) << diagnostics.at(0).message;
  const Node result(root);
  EXPECT_EQ(result["format"].text(), "tillwright-result/1");
  EXPECT_EQ(result["title"].text(), bank.title);
  EXPECT_EQ(result["units"].text(), Word(bank.units));
  EXPECT_EQ(result["round_mm"].length(), bank.round);
  EXPECT_EQ(result["opening"]["width_mm"].length(), bank.opening_width);
  EXPECT_EQ(result["opening"]["height_mm"].length(), bank.opening_height);
  EXPECT_EQ(result["opening"]["depth_mm"].length(), bank.opening_depth);
  ExpectSpaces(result, bank);
  ExpectGaps(result, bank);
  ExpectParts(result, bank);
  ExpectMembers(result, bank);
  ExpectChecks(result, findings);
}

// Every number of the result is millimetres under a key that says so, but for these.
void ExpectKeysSayTheirUnit(const JsonValue& value, const std::string& key) {
  static const std::set<std::string> kOthers{"count", "value", "limit"};
  if (value.kind == JsonValue::Kind::kNumber) {
    EXPECT_TRUE(key.ends_with("_mm") || kOthers.contains(key)) << key;
  } else {
    EXPECT_FALSE(key.ends_with("_mm")) << key;
  }
  for (const JsonMember& member : value.members) ExpectKeysSayTheirUnit(member.value, member.key);
  for (const JsonValue& item : value.items) ExpectKeysSayTheirUnit(item, key);
}

TEST(ResultJson, EqualsTheBankForEveryCuratedSpec) {
  const auto specs = testing::CuratedSpecs();
  ASSERT_FALSE(specs.empty()) << "specs/ holds no specs";
  for (const auto& path : specs) {
    SCOPED_TRACE(path);
    const testing::Solved solved = testing::MustSolve(testing::ReadFile(path));
    ExpectResult(solved.spec, solved.bank);
    JsonValue root;
    Diagnostics none;
    ASSERT_TRUE(ParseJson(ResultJson(solved.bank, {}), root, none));
    ExpectKeysSayTheirUnit(root, "");
  }
}

TEST(ResultJson, EqualsTheBankForRandomSpecs) {
  int solved = 0;
  for (const std::string& text : testing::RandomSpecs(50'000, 200)) {
    const Outcome<Spec> spec = ReadSpec(text);
    if (!spec.ok()) continue;
    const Outcome<Bank> bank = SolveBank(spec.value());
    if (!bank.ok()) continue;
    SCOPED_TRACE(text);
    ExpectResult(spec.value(), bank.value());
    if (::testing::Test::HasFailure()) return;
    ++solved;
  }
  EXPECT_GT(solved, 100);
}

TEST(ResultJson, SaysTheSameWhetherTheWayWasTracedOrNot) {
  int compared = 0;
  for (const std::string& text : testing::RandomSpecs(60'000, 300)) {
    const Outcome<Spec> spec = ReadSpec(text);
    if (!spec.ok()) continue;
    Trace trace;
    const Outcome<Bank> traced = SolveBank(spec.value(), trace);
    const Outcome<Bank> plain = SolveBank(spec.value());
    ASSERT_EQ(traced.ok(), plain.ok()) << text;
    if (!plain.ok()) {
      EXPECT_EQ(DiagnosticsText(plain.diagnostics(), "", text, {}),
                DiagnosticsText(traced.diagnostics(), "", text, {}));
      continue;
    }
    ASSERT_EQ(ResultJson(traced.value(), CheckBank(spec.value(), traced.value())),
              ResultJson(plain.value(), CheckBank(spec.value(), plain.value())))
        << text;
    ++compared;
  }
  EXPECT_GT(compared, 150);
}

TEST(ResultJson, TextsFromTheSpecComeBackAsTheyWere) {
  const testing::Solved solved = testing::MustSolve(
      R"({"title": "A \"bank\"\\\n\u001b\u0000 \u2248 \ud83d\ude00", "units": "mm",
          "opening": {"width": 390.5, "height": 600, "depth": 530},
          "fronts": {"material": "</script>"}, "drawers": [{"name": "\t"}]})");
  JsonValue root;
  Diagnostics none;
  ASSERT_TRUE(ParseJson(ResultJson(solved.bank, {}), root, none));
  const Node result(root);
  EXPECT_EQ(result["title"].text(), solved.bank.title);
  EXPECT_EQ(solved.bank.title, std::string("A \"bank\"\\\n\x1b\0 \u2248 \xf0\x9f\x98\x80", 21));
  EXPECT_EQ(result["drawers"][0]["name"].text(), "\t");
}

}  // namespace

void PrintTo(Length length, std::ostream* out);
void PrintTo(Length length, std::ostream* out) { *out << FormatMillimeters(length) << " mm"; }

}  // namespace tillwright
