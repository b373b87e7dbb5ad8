#include "draw/view_cases.h"

#include <optional>

#include "support/files.h"
#include "support/random_case.h"
#include "support/random_spec.h"
#include "support/specs.h"

namespace tillwright::testing {
namespace {

std::optional<Bank> Solve(const std::string& text) {
  const Outcome<Spec> spec = ReadSpec(text);
  if (!spec.ok()) return std::nullopt;
  Outcome<Bank> bank = SolveBank(spec.value());
  if (!bank.ok()) return std::nullopt;
  return bank.value();
}

std::string Times(int n, const std::string& one) {
  std::string text;
  for (int i = 0; i < n; ++i) text += (i > 0 ? ", " : "") + one;
  return text;
}

std::string Bank(const std::string& width, const std::string& height, const std::string& rest) {
  return R"({"opening": {"width": ")" + width + R"(", "height": ")" + height +
         R"(", "depth": "20"}, )" + rest + "}";
}

// A drawer this deep in rows and columns by turns, one leaf beside it on every level.
std::string Tree(int depth) {
  if (depth == 0) return R"({"drawer": {}})";
  const std::string key = depth % 2 == 0 ? "rows" : "columns";
  return "{\"" + key + R"(": [{"drawer": {}}, )" + Tree(depth - 1) + "]}";
}

struct Text {
  const char* name;
  std::string spec;
};

std::vector<Text> HardTexts() {
  const std::string two = R"("drawers": [{}, {}])";
  const auto named = [](const std::string& name) {
    return R"("title": ")" + name + R"(", "drawers": [{"name": ")" + name + R"("}, {"name": ")" +
           name + R"("}])";
  };
  std::string grid = "\"layout\": {\"columns\": [" + Times(4, "{\"rows\": [" + Times(6, "{\"drawer\": {}}") + "]}") + "]}";
  return {
      {"least", Bank("15 3/8", "24 3/4", two)},
      {"unknown_material",
       Bank("15 3/8", "24 3/4",
            R"("fronts": {"material": "unobtainium of the finest sort, sawn and planed twice"}, )" +
                two)},
      {"sixty_drawers", Bank("16", "150", "\"drawers\": [" + Times(60, "{}") + "]")},
      {"twenty_drawers", Bank("16", "60", "\"drawers\": [" + Times(20, "{}") + "]")},
      {"wide", Bank("2000 mm", "300 mm", two)},
      {"low_front",
       Bank(
           "400 mm", "300 mm",
           R"("box": {"height": "8 mm", "bottom": {"fit": "rabbet", "thickness": "2 mm", "depth": "2 mm"}}, "drawers": [{"exact": "12 mm"}, {}])")},
      {"tall", Bank("6", "90", two)},
      {"many_columns",
       Bank("150", "12", "\"layout\": {\"columns\": [" + Times(14, "{\"drawer\": {}}") + "]}")},
      {"grid", Bank("40", "40", grid)},
      {"grid_inset", Bank("40", "40", R"("fronts": {"style": "inset"}, )" + grid)},
      {"deep_tree", Bank("300", "300", "\"layout\": " + Tree(9))},
      {"blanks_and_open",
       Bank(
           "30", "30",
           R"("layout": {"rows": [{"blank": {}}, {"columns": [{"open": {}}, {"drawer": {}}]}, {"open": {}}]})")},
      {"latin", Bank("16", "24", named("Großzügig ausgestattete Schublade für Ahlen und Nähzeug"))},
      {"greek", Bank("16", "24", named("Συρτάρι εργαλείων"))},
      {"hebrew", Bank("16", "24", named("מגירה לכלי עבודה"))},
      {"arabic", Bank("16", "24", named("درج الأدوات"))},
      {"chinese", Bank("16", "24", named("工具抽屉"))},
      {"thai", Bank("16", "24", named("ลิ้นชักเครื่องมือ"))},
      {"emoji", Bank("16", "24", named("✂️📚🧵"))},
      {"fractions_in_name", Bank("16", "24", named("3/4 by 1/2, 12/2026, no. 1/8"))},
      {"endless_name", Bank("16", "24", named(std::string(200, 'W')))},
      {"endless_words", Bank("16", "24", named(Times(40, "paste")))},
      {"flush_case",
       R"({"case": {"width": "18", "height": "30", "depth": "22"}, "fronts": {"overlay": "flush"}, "drawers": [{}, {}, {}]})"},
      {"worktop_case",
       R"({"units": "mm", "case": {"width": 900, "height": 720, "depth": 560, "top": "none", "raise": 100, "back": {"fit": "groove"}}, "drawers": [{}, {}, {}, {}]})"},
      {"applied_back",
       R"({"units": "mm", "case": {"width": 450, "height": 720, "depth": 560, "back": {"fit": "applied"}}, "fronts": {"style": "inset"}, "drawers": [{}, {}, {}, {}]})"},
      {"groove_case",
       R"({"case": {"width": "30", "height": "30", "depth": "22", "raise": "2", "joint": {"type": "tongue-and-dado"}}, "fronts": {"style": "inset"}, "layout": {"rows": [{"columns": [{"drawer": {}}, {"drawer": {}}]}, {"drawer": {}}], "divider": "3/4"}})"},
      {"dado_case",
       R"({"units": "mm", "case": {"width": 700, "height": 720, "depth": 560, "joint": {"type": "dado"}, "face_frame": {}, "web_frame": {}}, "layout": {"rows": [{"columns": [{"drawer": {}}, {"drawer": {}}]}, {"columns": [{"drawer": {}}, {"drawer": {}}]}]}})"},
      {"negative_overlay", Bank("16", "24", R"("fronts": {"overlay": "-1/4"}, )" + two)},
      {"no_gap", Bank("16", "24", R"("fronts": {"gap": 0}, )" + two)},
      {"pulls",
       Bank("40", "24", R"("fronts": {"pull": {"centers": "3 3/4", "count": 2}}, )" + two)},
      {"tiny",
       Bank(
           "3", "4",
           R"("slides": {"type": "wood-runner"}, "box": {"side": {"thickness": "1/4"}, "bottom": {"thickness": "1/8", "depth": "1/8"}}, "drawers": [{}])")},
      {"hall", Bank("90 m", "90 m", two)},
  };
}

}  // namespace

std::vector<BankCase> CuratedBanks() {
  std::vector<BankCase> cases;
  for (const std::filesystem::path& path : CuratedSpecs()) {
    if (std::optional<tillwright::Bank> bank = Solve(ReadFile(path))) {
      cases.push_back({path.stem().string(), *std::move(bank)});
    } else {
      ADD_FAILURE() << path << " cannot be solved";
    }
  }
  EXPECT_FALSE(cases.empty()) << "no curated spec";
  return cases;
}

std::vector<BankCase> HardBanks() {
  std::vector<BankCase> cases;
  for (const Text& text : HardTexts()) {
    if (std::optional<tillwright::Bank> bank = Solve(text.spec)) {
      cases.push_back({text.name, *std::move(bank)});
    } else {
      ADD_FAILURE() << text.name << " cannot be solved: " << MustFail(text.spec).front().message;
    }
  }
  return cases;
}

std::vector<BankCase> RandomBanks(std::uint32_t seed, int count) {
  std::vector<BankCase> cases;
  const std::uint32_t last = seed + static_cast<std::uint32_t>(50 * count);
  for (std::uint32_t s = seed; s != last && static_cast<int>(cases.size()) < count; ++s) {
    const Unit unit = s % 2 == 0 ? Unit::kInch : Unit::kMillimeter;
    const std::string text = s % 3 == 0 ? RandomCase(s).Text() : RandomSpec(s, unit).Text();
    if (std::optional<tillwright::Bank> bank = Solve(text)) {
      cases.push_back({"random spec of seed " + std::to_string(s), *std::move(bank)});
    }
  }
  EXPECT_EQ(static_cast<int>(cases.size()), count) << "too few random specs can be solved";
  return cases;
}

}  // namespace tillwright::testing
