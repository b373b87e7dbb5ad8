// The result as JSON: every key of the contract (specs/README.md), nested as it says, with numbers
// that equal the bank's picometers exactly.
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
  // The decimal of millimeters, exactly.
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

// Every number of the result is millimeters under a key that says so, but for these.
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

using Sizes = std::vector<std::pair<std::string_view, const char*>>;

void ExpectSizes(const Node& node, const Sizes& sizes) {
  for (const auto& [key, size] : sizes) EXPECT_EQ(node[key].length(), testing::L(size)) << key;
}

// The pieces of the result, by the part they are.
Node PieceOf(const Node& casework, std::string_view part) {
  for (std::size_t i = 0; i < casework["pieces"].size(); ++i) {
    if (casework["pieces"][i]["part"].text() == part) return casework["pieces"][i];
  }
  ADD_FAILURE() << "no piece " << part;
  return casework["pieces"][0];
}

// Stiles 1 3/4 before sides 3/4 thick: the left side's outer face is 1 3/4 left of the opening, its
// inner one 1. The bottom rail 1 1/2 high stands on the case's lower edge, 4 in above the floor.
// The worktop's underside is 34 1/4 above the floor, so 28 3/4 above the opening's bottom.
TEST(ResultJson, TellsWhereTheWholeCaseStands) {
  const testing::Solved s = testing::MustSolve(R"({"case": {"width": 20,
      "worktop": {"height": 36, "thickness": "1 3/4", "width": 72, "left": 2, "depth": 26},
      "feet": {"height": 4}, "stretchers": {"width": "3 1/2"},
      "joint": {"type": "tongue-and-dado", "depth": "1/4", "tongue": "3/16"},
      "face_frame": {"stile": "1 3/4", "rail": "1 1/2"}},
      "fronts": {"style": "inset"}, "drawers": [{}, {}]})");
  JsonValue root;
  Diagnostics none;
  ASSERT_TRUE(ParseJson(ResultJson(s.bank, {}), root, none));
  const Node casework = Node(root)["case"];
  ExpectSizes(casework, {{"height_mm", "30 1/4"},
                         {"depth_mm", "25 1/4"},
                         {"x_mm", "-1 3/4"},
                         {"y_mm", "-1 1/2"},
                         {"z_mm", "3/4"},
                         {"floor_mm", "-5 1/2"}});
  EXPECT_EQ(casework["joint"]["type"].text(), "tongue-and-dado");
  ExpectSizes(casework["joint"], {{"depth_mm", "1/4"}, {"tongue_mm", "3/16"}});
  ExpectSizes(casework["feet"], {{"height_mm", "4"}});
  ExpectSizes(casework["stretchers"], {{"width_mm", "3 1/2"}});
  // 20 wide and 30 1/4 high as the case, its opening 16 1/2 wide.
  ExpectSizes(casework["face_frame"], {{"x_mm", "-1 3/4"},
                                       {"y_mm", "-1 1/2"},
                                       {"width_mm", "20"},
                                       {"height_mm", "30 1/4"},
                                       {"thickness_mm", "3/4"},
                                       {"stile_mm", "1 3/4"},
                                       {"rail_mm", "1 1/2"},
                                       {"bottom_rail_mm", "1 1/2"},
                                       {"overlap_mm", "0"},
                                       {"blocking_mm", "3"}});
  ExpectSizes(casework["worktop"], {{"thickness_mm", "1 3/4"},
                                    {"leg_mm", "34 1/4"},
                                    {"height_mm", "36"},
                                    {"width_mm", "72"},
                                    {"left_mm", "2"},
                                    {"right_mm", "50"},
                                    {"depth_mm", "26"}});
  ExpectSizes(PieceOf(casework, "case.worktop"), {{"x_mm", "-3 3/4"},
                                                  {"y_mm", "28 3/4"},
                                                  {"z_mm", "0"},
                                                  {"width_mm", "72"},
                                                  {"height_mm", "1 3/4"},
                                                  {"depth_mm", "26"}});
  // Into both sides by 1/4: 18 1/2 and 1/2.
  ExpectSizes(PieceOf(casework, "case.stretcher"), {{"x_mm", "-1 1/4"},
                                                    {"y_mm", "28"},
                                                    {"z_mm", "3/4"},
                                                    {"width_mm", "19"},
                                                    {"height_mm", "3/4"},
                                                    {"depth_mm", "3 1/2"}});
  // A back 1/4 thick in rabbets 3/8 wide, 1/32 play: 18 1/2 + 3/4 - 1/16 by 30 1/4 - 1/16.
  ExpectSizes(casework["back"], {{"thickness_mm", "1/4"},
                                 {"width_mm", "19 3/16"},
                                 {"height_mm", "30 3/16"},
                                 {"z_mm", "25 3/4"},
                                 {"x_mm", "-1 11/32"},
                                 {"y_mm", "-1 15/32"}});
  EXPECT_FALSE(casework.Has("toe_kick"));
}

// The bottom's lower face is 90 mm above the sides' ends; the kick stands 60 behind the front.
TEST(ResultJson, TellsWhereToeKickAndWebFramesStand) {
  const testing::Solved s =
      testing::MustSolve(testing::ReadFile(testing::SourcePath("specs/marbling-chest.json")));
  JsonValue root;
  Diagnostics none;
  ASSERT_TRUE(ParseJson(ResultJson(s.bank, {}), root, none));
  const Node casework = Node(root)["case"];
  ExpectSizes(casework,
              {{"x_mm", "-20 mm"}, {"y_mm", "-110 mm"}, {"z_mm", "0"}, {"floor_mm", "-110 mm"}});
  ExpectSizes(casework["toe_kick"], {{"height_mm", "90 mm"}, {"setback_mm", "60 mm"}});
  ExpectSizes(casework["web_frame"],
              {{"rail_mm", "70 mm"}, {"runner_mm", "70 mm"}, {"tenon_mm", "12 mm"}});
  ExpectSizes(PieceOf(casework, "case.toe_kick"), {{"x_mm", "0"},
                                                   {"y_mm", "-110 mm"},
                                                   {"z_mm", "60 mm"},
                                                   {"width_mm", "860 mm"},
                                                   {"height_mm", "90 mm"},
                                                   {"depth_mm", "20 mm"}});
  // Rails 6 mm into both sides; runners between them, their tenons 12 mm into the rails, with 4.5 mm
  // free behind: 560 mm of flat-sawn white oak shrink 560 x .00365 x 2 = 4.09 mm from 8 to 6 %.
  ExpectSizes(PieceOf(casework, "H1.web_rail"),
              {{"x_mm", "-6 mm"}, {"z_mm", "0"}, {"width_mm", "872 mm"}, {"depth_mm", "70 mm"}});
  ExpectSizes(PieceOf(casework, "H1.web_runner"), {{"z_mm", "58 mm"}, {"depth_mm", "421.5 mm"}});
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
