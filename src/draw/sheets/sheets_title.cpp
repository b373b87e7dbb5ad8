#include "draw/sheets/sheets_title.h"

#include <algorithm>

#include "bank/headings.h"
#include "draw/sheets/view_table.h"

namespace tillwright {
namespace {

std::string Joined(const std::vector<std::string>& words) {
  std::string text;
  for (const std::string& word : words) {
    if (!text.empty()) text += ", ";
    text += word;
  }
  return text;
}

// "Elevation, section A-A"; the table is not named where there is much else.
std::string ViewsOn(const SheetPlan& plan) {
  std::vector<std::string> captions = plan.captions();
  if (captions.size() > 2) std::erase(captions, Facts(ViewKind::kSizes).caption);
  std::string text = Joined(captions);
  text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

// The fronts' materials, as far as they are told.
std::string Materials(const Bank& bank) {
  std::vector<std::string> names;
  for (const Space& space : bank.spaces) {
    const std::string& name = space.front.material;
    if (!space.HasFront() || name.empty() || names.size() > 3) continue;
    if (std::ranges::find(names, name) == names.end()) names.push_back(name);
  }
  return names.empty() ? std::string() : "Fronts " + Joined(names);
}

}  // namespace

std::string ScalesOn(const SheetPlan& plan) {
  std::vector<std::string> names;
  for (const View& view : plan.views()) {
    std::string name(view.scale.name);
    if (!name.empty() && std::ranges::find(names, name) == names.end()) names.push_back(name);
  }
  return names.size() > 3 ? "as noted" : Joined(names);
}

std::string TitleOf(const Bank& bank) { return TitleOr(bank.title); }

TitleBlock TitleOf(const Bank& bank, const SheetPlan& plan) {
  TitleBlock block;
  block.title = TitleOf(bank);
  block.view = ViewsOn(plan);
  block.scale = ScalesOn(plan);
  block.units = UnitsWord(bank.units);
  block.material = Materials(bank);
  block.projection = Projection::kThirdAngle;
  return block;
}

}  // namespace tillwright
