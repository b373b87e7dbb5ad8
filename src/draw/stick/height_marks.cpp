#include "draw/bank/case_pieces.h"
#include "draw/stick/axis_marks.h"
#include "spec/kinds.h"

namespace tillwright {
namespace {

constexpr auto kCase = StickLane::kCase;
constexpr auto kBox = StickLane::kBox;
constexpr auto kFront = StickLane::kFront;

class Heights {
 public:
  Heights(const Bank& bank, const BankLine& line) : bank_(bank), line_(line) {
    if (bank.casework) {
      floor_ = StickPlace(bank.casework->base, "case.base");
    }
    ceiling_ = floor_.Plus(bank.opening_height, "opening.height");
  }

  MarkBook Collect() {
    Opening();
    if (bank_.casework) Case(*bank_.casework);
    AddPieces(book_, bank_, line_, Axis::kY, floor_);
    for (const int i : line_.members) Member(bank_.dividers[static_cast<std::size_t>(i)]);
    for (const int i : line_.spaces) {
      const Space& space = bank_.spaces[static_cast<std::size_t>(i)];
      if (space.HasFront()) AddFront(book_, space, Axis::kY, floor_);
      if (space.HasBox()) BoxOf(space);
    }
    AddGaps(book_, bank_, line_, Axis::kY, floor_.at());
    book_.Finish();
    return std::move(book_);
  }

 private:
  void Opening() {
    for (const StickLane lane : {kCase, kBox, kFront}) {
      book_.Edge(lane, floor_, "", "opening bottom");
      book_.Edge(lane, ceiling_, "", "opening top");
    }
  }

  void Case(const CaseBuild& c) {
    const StickPlace raise(c.raise, "case.raise");
    // Of bottom and top; a face frame's opening is smaller.
    const StickPlace low = c.frame ? raise.Plus(c.bottom, "case.bottom") : floor_;
    const StickPlace high = c.frame ? ceiling_.Plus(c.high_in, "case.high_in") : ceiling_;
    for (const StickLane lane : {kCase, kBox, kFront}) {
      book_.Edge(lane, {}, "", "case base");
      if (!c.top_none) book_.Edge(lane, {c.height, "case.height"}, "", "case top");
    }
    if (!c.feet.IsZero()) {
      book_.Edge(kCase, StickPlace().Minus(c.feet, "case.feet.height"), "", "floor, under the feet");
    }
    if (!c.raise.IsZero()) book_.Edge(kCase, raise, "", "case bottom, underside");
    if (c.frame) {
      book_.Edge(kCase, low, "", "case bottom, upper face");
      if (!c.top_none && !c.stretchers) book_.Edge(kCase, high, "", "case top, underside");
      if (c.top_none) book_.Edge(kCase, {c.height, "case.height"}, "", "case top");
    }
    if (Facts(c.joint).tongue) {
      Groove(low.Minus(c.tongue, "case.joint.tongue"), low, "", "dado");
      if (!c.top_none) Groove(high, high.Plus(c.tongue, "case.joint.tongue"), "", "upper dado");
    } else if (Facts(c.joint).cut.has_value()) {
      const std::string word(Facts(c.joint).word);
      Groove(raise, low, "", word);
      if (!c.top_none) {
        book_.Edge(kCase, high, "", "upper rabbet");
        book_.Span({StickSpan::Kind::kCut, kCase, high.at(), c.height, {}, "", ""});
      }
    }
    if (Facts(c.back).cut.has_value()) {
      const StickPlace lower = raise.Plus(c.back_play, "case.back.play");
      book_.Edge(kCase, lower, "", "case back bottom");
      book_.Edge(kCase, lower.Plus(c.panel_height, "case.back.height"), "", "case back top");
    }
  }

  // Across the sides.
  void Groove(const StickPlace& from, const StickPlace& to, const std::string& id,
              const std::string& word) {
    book_.Edge(kCase, from, id, word + " bottom");
    book_.Edge(kCase, to, id, word + " top");
    book_.Span({StickSpan::Kind::kCut, kCase, from.at(), to.at(), {}, "", ""});
  }

  // What a divider takes in the sides: its tongue's dado, else all its thickness.
  void LetIn(const std::string& id, const StickPlace& bottom, const StickPlace& top) {
    if (!bank_.casework || !Facts(bank_.casework->joint).tongue) {
      return book_.Span({StickSpan::Kind::kCut, kCase, bottom.at(), top.at(), {}, "", ""});
    }
    Groove(bottom, bottom.Plus(bank_.casework->tongue, "case.joint.tongue"), id, "dado");
  }

  void Member(const Divider& member) {
    const std::string id = ToText(member);
    const StickPlace bottom = floor_.Plus(member.rect.y, Under(id, "y"));
    const StickPlace top = bottom.Plus(member.rect.height, Under(id, "height"));
    if (!member.partition) {
      LetIn(id, bottom, top);
      if (IsWebFrame(bank_, member)) return;
      book_.Edge(kCase, bottom, id, "bottom", "divider");
      return book_.Edge(kCase, top, id, "top", "divider");
    }
    book_.Edge(kCase, bottom, id, "bottom", "partition");
    book_.Edge(kCase, top, id, "top", "partition");
    // Into the joints, and behind a face frame.
    const StickPlace lower = floor_.Plus(member.begin, Under(id, "begin"));
    const StickPlace upper = lower.Plus(member.length, Under(id, "length"));
    if (lower.at() != bottom.at()) book_.Edge(kCase, lower, id, "lower end", "partition");
    if (upper.at() != top.at()) book_.Edge(kCase, upper, id, "upper end", "partition");
  }

  void BoxOf(const Space& space) {
    const std::string id = ToText(space.id);
    const StickPlace bottom = AddBoxEnds(book_, space, Axis::kY, floor_).low;
    Panel(id, space.box.build, bottom);
    const StickPlace line = bottom.Plus(space.slide.line, Under(id, "slide.line"));
    book_.Line(kBox, line, id, "slide line");
    book_.Line(kCase, line, id, "slide line");
  }

  void Panel(const std::string& id, const BoxBuild& build, const StickPlace& box) {
    const StickPlace lower =
        Facts(build.fit).set_up ? box.Plus(build.up, Under(id, "groove.up")) : box;
    const StickPlace upper = lower.Plus(build.bottom, Under(id, "bottom.thickness"));
    book_.Span({StickSpan::Kind::kCut, kBox, lower.at(), upper.at(), {}, "", ""});
    const BottomFacts& fit = Facts(build.fit);
    if (!fit.cut) return book_.Edge(kBox, upper, id, "bottom", "box side");
    if (!fit.set_up) return book_.Edge(kBox, upper, id, "rabbet top");
    book_.Edge(kBox, lower, id, "groove bottom");
    book_.Edge(kBox, upper, id, "groove top");
    if (build.open_back) book_.Edge(kBox, upper, id, "bottom", "box back");
  }

  const Bank& bank_;
  const BankLine& line_;
  StickPlace floor_, ceiling_;
  MarkBook book_;
};

}  // namespace

MarkBook HeightMarks(const Bank& bank, const BankLine& line) {
  return Heights(bank, line).Collect();
}

}  // namespace tillwright
