#include "draw/part_cases.h"

#include "draw/view_numbers.h"
#include "support/layout_faults.h"
#include "support/specs.h"
#include "tillwright/render.h"

namespace tillwright::testing {
namespace {

const std::vector<std::string> kCorners{
    R"("joint": "butt")",
    R"("joint": "butt", "back_setback": "1/2")",
    R"("joint": "rabbet")",
    R"("joint": "dado", "depth": "3/16", "back_setback": "1/2")",
    R"("joint": "half-blind-dovetail")",
    R"("joint": "through-dovetail")",
    R"("joint": "finger")"};

const std::vector<std::string> kBottoms{
    R"("fit": "groove")", R"("fit": "groove", "open_back": true, "material": "basswood")",
    R"("fit": "rabbet", "depth": "3/16")", R"("fit": "applied")"};

const std::vector<std::string> kCases{
    R"("joint": {"type": "butt"}, "back": {"fit": "rabbet"})",
    R"("joint": {"type": "dado"}, "raise": "2", "back": {"fit": "groove"})"
    R"(, "material": "black cherry")",
    R"("joint": {"type": "rabbet"}, "back": {"fit": "applied", "material": "birch plywood"})",
    R"("joint": {"type": "tongue-and-dado"}, "raise": "1 1/2", "back": {"fit": "groove"})",
    R"("top": "none", "back": "none")"};

std::string Text(const std::string& corner, const std::string& bottom, const std::string& casework,
                 bool inset, bool pulls) {
  std::string fronts = inset ? R"("style": "inset", "edge": "1/8")" : R"("overlay": "1/2")";
  if (pulls) fronts += R"(, "grain": "vertical", "pull": {"centers": "3 3/4", "down": "1 1/2"})";
  return R"({"case": {"width": "28", "height": "26", "depth": "20", )" + casework +
         R"(}, "fronts": {)" + fronts + R"(}, "box": {"side": {"thickness": "5/8"}, "corner": {)" +
         corner + R"(}, "bottom": {)" + bottom +
         R"(}}, "layout": {"rows": [{"columns": [{"drawer": {"name": "Awls"}}, {"drawer": {}}]},)"
         R"( {"drawer": {}}, {"drawer": {}}, {"blank": {}}]}})";
}

bool IsNumber(const std::string& text) {
  return text.find_first_of("0123456789") != std::string::npos &&
         text.find_first_not_of("0123456789 ./-") == std::string::npos;
}

}  // namespace

std::vector<BankCase> ConstructionBanks() {
  std::vector<BankCase> cases;
  std::size_t turn = 0;
  for (const std::string& corner : kCorners) {
    for (const std::string& bottom : kBottoms) {
      for (const bool inset : {false, true}) {
        const std::string& casework = kCases[turn++ % kCases.size()];
        const std::string text = Text(corner, bottom, casework, inset, turn % 3 == 0);
        cases.push_back({corner + " " + bottom + (inset ? " inset " : " overlay ") + casework,
                         MustSolve(text).bank});
      }
    }
    ++turn;  // so that every corner meets every case
  }
  return cases;
}

std::vector<BankCase> AllBanks(std::uint32_t seed) {
  std::vector<BankCase> all = ConstructionBanks();
  for (std::vector<BankCase> more : {CuratedBanks(), HardBanks(), RandomBanks(seed, 10)}) {
    for (BankCase& one : more) all.push_back(std::move(one));
  }
  return all;
}

Sheet SheetOf(View view) {
  constexpr double kMargin = 2;  // mm
  Shift(view, kMargin - view.box.left, kMargin - view.box.top);
  Sheet sheet{.width = view.box.Width() + 2 * kMargin,
              .height = view.box.Height() + 2 * kMargin,
              .title = view.title,
              .name = view.name,
              .frame = Grow(view.box, 1)};
  sheet.groups = std::move(view.groups);
  return sheet;
}

std::string FaultsOf(const Bank& bank, const View& view) {
  std::string out = DescribeFaults(FindLayoutFaults(SheetOf(view), DrawingFontMetrics()));
  for (const SheetGroup& group : view.groups) {
    for (const Primitive& primitive : group.primitives) {
      const Label* label = std::get_if<Label>(&primitive);
      if (label == nullptr) continue;
      if (!label->path.empty()) {
        if (const std::string fault = FaultOf(bank, *label); !fault.empty()) out += fault + "\n";
      } else if (IsNumber(label->plain)) {
        out += "\"" + label->plain + "\" has no path\n";
      }
    }
  }
  return out;
}

std::set<std::string> PathsOn(const View& view) {
  std::set<std::string> paths;
  for (const SheetGroup& group : view.groups) {
    for (const Primitive& primitive : group.primitives) {
      if (const Label* label = std::get_if<Label>(&primitive)) {
        for (const std::string& path : PathsOf(*label)) paths.insert(path);
      }
    }
  }
  return paths;
}

}  // namespace tillwright::testing
