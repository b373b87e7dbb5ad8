#include "draw/plan_cases.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <variant>

#include "draw/view_numbers.h"
#include "support/specs.h"
#include "tillwright/words.h"

namespace tillwright::testing {
namespace {

std::string CaseText(int turn, bool metric) {
  if (turn % 7 == 3) {
    return metric ? R"("opening": {"width": 560, "height": 660, "depth": 520})"
                  : R"("opening": {"width": 22, "height": 28, "depth": 21})";
  }
  const std::vector<std::string> backs{R"({"fit": "rabbet", "material": "birch plywood"})",
                                       R"({"fit": "groove"})", R"({"fit": "applied"})",
                                       R"("none")"};
  const std::string size = metric ? R"("width": 600, "height": 700, "depth": 560)"
                                  : R"("width": 24, "height": 30, "depth": 22)";
  return R"("case": {)" + size + R"(, "material": "cherry", "back": )" +
         backs[static_cast<std::size_t>(turn) % backs.size()] + "}";
}

std::string LayoutText(int turn) {
  return turn % 2 == 0
             ? R"("layout": {"rows": [{"drawer": {"name": "Bone folders"}}, {"drawer": {}}]})"
             : R"("layout": {"rows": [{"drawer": {"name": "Bone folders"}},
                 {"columns": [{"drawer": {}}, {"drawer": {}}]}, {"drawer": {}}]})";
}

struct Choice {
  CornerJoint joint;
  std::string bottom;
  SlideType slide;
  FrontStyle style;
};

std::string SpecText(const Choice& c, int turn) {
  const bool metric = turn % 6 == 5 && c.slide != SlideType::kUndermount;
  const std::string side = metric ? "12" : "\"5/8\"";
  const std::string stock = turn % 4 == 0 ? "birch plywood" : "maple";
  std::string corner = R"({"joint": ")" + std::string(Word(c.joint)) + "\"";
  const bool setback = c.joint == CornerJoint::kButt || c.joint == CornerJoint::kRabbet ||
                       c.joint == CornerJoint::kDado;
  if (setback && turn % 5 == 1)
    corner += metric ? R"(, "back_setback": 13)" : R"(, "back_setback": "1/2")";
  corner += "}";
  return R"({"units": ")" + std::string(metric ? "mm" : "in") + "\", " + CaseText(turn, metric) +
         R"(, "fronts": {"style": ")" + std::string(Word(c.style)) +
         R"(", "material": "cherry", "grain": ")" + (turn % 3 == 0 ? "vertical" : "horizontal") +
         R"("}, "slides": {"type": ")" + std::string(Word(c.slide)) +
         R"("}, "box": {"side": {"thickness": )" + side + R"(, "material": ")" + stock +
         R"("}, "corner": )" + corner + R"(, "bottom": {)" + c.bottom + R"(, "thickness": )" +
         (metric ? "6" : "\"1/4\"") + "}}, " + LayoutText(turn) + "}";
}

bool IsEnd(const Primitive& primitive, PaperPoint& at) {
  if (const Tick* tick = std::get_if<Tick>(&primitive))
    at = tick->at;
  else if (const Arrowhead* head = std::get_if<Arrowhead>(&primitive))
    at = head->tip;
  else
    return false;
  return true;
}

bool Holds(const CutFace& face, double a, double b) {
  bool inside = false;
  const auto& ring = face.outline;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const double ab = ToMillimeters(ring[i].b);
    const double bb = ToMillimeters(ring[j].b);
    if ((ab > b) == (bb > b)) continue;
    if (ToMillimeters(ring[i].a) > a) inside = !inside;  // upright edges only
  }
  return inside;
}

}  // namespace

std::vector<BankCase> EveryConstruction() {
  const std::vector<std::string> bottoms{R"("fit": "groove")",
                                         R"("fit": "groove", "open_back": true)",
                                         R"("fit": "rabbet")", R"("fit": "applied")"};
  std::vector<BankCase> cases;
  int turn = 0;
  for (int joint = 0; joint < 6; ++joint) {
    for (const std::string& bottom : bottoms) {
      for (int slide = 0; slide < 4; ++slide) {
        for (const FrontStyle style : {FrontStyle::kOverlay, FrontStyle::kInset}) {
          const Choice choice{static_cast<CornerJoint>(joint), bottom,
                              static_cast<SlideType>(slide), style};
          const std::string text = SpecText(choice, turn++);
          cases.push_back({text, MustSolve(text).bank});
        }
      }
    }
  }
  return cases;
}

std::vector<std::size_t> DrawersOf(const Bank& bank) {
  std::vector<std::size_t> drawers;
  for (std::size_t i = 0; i < bank.spaces.size(); ++i) {
    if (bank.spaces[i].HasBox()) drawers.push_back(i);
  }
  return drawers;
}

Sheet SheetOf(View view) {
  Shift(view, 2 - view.box.left, 2 - view.box.top);
  Sheet sheet;
  sheet.width = view.box.right + 2;
  sheet.height = view.box.bottom + 2;
  sheet.name = view.name;
  sheet.groups = view.groups;
  return sheet;
}

const SheetGroup& GroupOf(const View& view, std::string_view what) {
  static const SheetGroup kNone;
  for (const SheetGroup& group : view.groups) {
    if (group.id == view.name + "-" + std::string(what)) return group;
  }
  return kNone;
}

std::vector<const Label*> SizesIn(const SheetGroup& group) {
  std::vector<const Label*> sizes;
  for (const Primitive& primitive : group.primitives) {
    const Label* label = std::get_if<Label>(&primitive);
    if (label == nullptr || label->path.empty()) continue;
    if (NumbersIn(label->plain) == std::vector<std::string>{label->plain}) sizes.push_back(label);
  }
  return sizes;
}

bool HasEndsApart(const SheetGroup& group, double distance) {
  std::vector<PaperPoint> ends;
  for (const Primitive& primitive : group.primitives) {
    PaperPoint at;
    if (IsEnd(primitive, at)) ends.push_back(at);
  }
  for (const PaperPoint& p : ends) {
    for (const PaperPoint& q : ends) {
      const double dx = q.x - p.x;
      const double dy = q.y - p.y;
      if (std::abs(dy) < 1e-9 && std::abs(dx - distance) < 1e-6) return true;
      if (std::abs(dx) < 1e-9 && std::abs(dy - distance) < 1e-6) return true;
    }
  }
  return false;
}

std::vector<std::pair<CellMiddle, int>> CoverOf(const std::vector<CutFace>& faces) {
  std::set<Length> as;
  std::set<Length> bs;
  for (const CutFace& face : faces) {
    for (const FacePoint& p : face.outline) {
      as.insert(p.a);
      bs.insert(p.b);
    }
  }
  std::vector<std::pair<CellMiddle, int>> cells;
  for (auto a = as.begin(); a != as.end() && std::next(a) != as.end(); ++a) {
    for (auto b = bs.begin(); b != bs.end() && std::next(b) != bs.end(); ++b) {
      const CellMiddle middle{ToMillimeters(*a + *std::next(a)) / 2,
                              ToMillimeters(*b + *std::next(b)) / 2};
      const auto holds = [&](const CutFace& face) { return Holds(face, middle.a, middle.b); };
      cells.emplace_back(middle, static_cast<int>(std::ranges::count_if(faces, holds)));
    }
  }
  return cells;
}

}  // namespace tillwright::testing
