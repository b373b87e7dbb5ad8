#include "bank/part_roles.h"
#include "draw/bank/case_pieces.h"
#include "draw/stick/axis_marks.h"
#include "spec/kinds.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

constexpr auto kCase = StickLane::kCase;
constexpr auto kBox = StickLane::kBox;
constexpr auto kFront = StickLane::kFront;

class Widths {
 public:
  Widths(const Bank& bank, const BankLine& line) : bank_(bank), line_(line) {
    if (bank.casework) left_ = StickPlace(bank.casework->side, "case.side");
    if (bank.casework && bank.casework->frame) {
      left_ = left_.Plus(bank.casework->side_in, "case.side_in");
    }
    right_ = left_.Plus(bank.opening_width, "opening.width");
  }

  MarkBook Collect() {
    for (const StickLane lane : {kCase, kBox, kFront}) {
      book_.Edge(lane, left_, "", "opening left");
      book_.Edge(lane, right_, "", "opening right");
    }
    if (bank_.casework) Case(*bank_.casework);
    AddPieces(book_, bank_, line_, Axis::kX, left_);
    for (const int i : line_.members) Member(bank_.dividers[static_cast<std::size_t>(i)]);
    for (const int i : line_.spaces) {
      const Space& space = bank_.spaces[static_cast<std::size_t>(i)];
      if (space.HasFront()) AddFront(book_, space, Axis::kX, left_);
      if (space.HasBox()) BoxOf(space);
    }
    AddGaps(book_, bank_, line_, Axis::kX, left_.at());
    book_.Finish();
    return std::move(book_);
  }

 private:
  void Cut(StickLane lane, const StickPlace& from, const StickPlace& to) {
    book_.Span({StickSpan::Kind::kCut, lane, from.at(), to.at(), {}, "", ""});
  }

  void Case(const CaseBuild& c) {
    for (const StickLane lane : {kCase, kBox, kFront}) {
      book_.Edge(lane, {}, "", "case left");
      book_.Edge(lane, {c.width, "case.width"}, "", "case right");
    }
    if (Facts(c.joint).cut.has_value()) {
      IntoSides(c.joint_depth, "case.joint.depth", std::string(Word(c.joint)));
    }
    if (c.frame) {
      book_.Edge(kCase, LeftFace(), "", "left side, inside");
      book_.Edge(kCase, RightFace(), "", "right side, inside");
    }
    if (Facts(c.back).lap) IntoSides(c.back_lap, "case.back.lap", "back rabbet");
    if (Facts(c.back).inset) IntoSides(c.back_depth, "case.back.depth", "back groove");
    if (Facts(c.back).cut.has_value()) {
      const StickPlace edge = left_.Plus(HalfBelow(bank_.opening_width), "opening.width / 2")
                                  .Minus(HalfBelow(c.panel_width), "case.back.width / 2");
      book_.Edge(kCase, edge, "", "case back left");
      book_.Edge(kCase, edge.Plus(c.panel_width, "case.back.width"), "", "case back right");
    }
  }

  // How deep a cut goes into both sides.
  void IntoSides(Length depth, std::string_view path, const std::string& word) {
    book_.Edge(kCase, LeftFace().Minus(depth, path), "", word + " left");
    book_.Edge(kCase, RightFace().Plus(depth, path), "", word + " right");
  }

  // The sides' inner faces: the opening's edges, or behind a face frame's stiles.
  StickPlace LeftFace() const {
    const CaseBuild& c = *bank_.casework;
    return c.frame ? left_.Minus(c.side_in, "case.side_in") : left_;
  }
  StickPlace RightFace() const {
    const CaseBuild& c = *bank_.casework;
    return c.frame ? right_.Plus(c.side_in, "case.side_in") : right_;
  }

  void Member(const Divider& member) {
    const std::string id = ToText(member);
    if (member.partition) {
      const StickPlace left = left_.Plus(member.rect.x, Under(id, "x"));
      const StickPlace right = left.Plus(member.rect.width, Under(id, "width"));
      book_.Edge(kCase, left, id, "left", "partition");
      book_.Edge(kCase, right, id, "right", "partition");
      if (!bank_.casework || !Facts(bank_.casework->joint).tongue) {
        return Cut(kCase, left, right);
      }
      const StickPlace groove = left.Plus(bank_.casework->tongue, "case.joint.tongue");
      book_.Edge(kCase, groove, id, "dado right");
      return Cut(kCase, left, groove);
    }
    if (IsWebFrame(bank_, member)) return;
    const StickPlace end = left_.Plus(member.begin, Under(id, "begin"));
    book_.Edge(kCase, end, id, "left", "divider");
    book_.Edge(kCase, end.Plus(member.length, Under(id, "length")), id, "right", "divider");
  }

  void BoxOf(const Space& space) {
    const std::string id = ToText(space.id);
    const Box& box = space.box;
    const BoxBuild& build = box.build;
    const auto [left, right] = AddBoxEnds(book_, space, Axis::kX, left_);
    const StickPlace in_left = left.Plus(build.side, Under(id, "side.thickness"));
    const StickPlace in_right = right.Minus(build.side, Under(id, "side.thickness"));
    book_.Edge(kBox, in_left, id, "inside left");
    book_.Edge(kBox, in_right, id, "inside right");
    Panel(id, box, left, in_left, in_right);
    if (Facts(build.joint).depth) {
      book_.Edge(kBox, in_left.Minus(build.joint_depth, Under(id, "corner.depth")), id, "left",
                 "box front/back");
      book_.Edge(kBox, in_right.Plus(build.joint_depth, Under(id, "corner.depth")), id, "right",
                 "box front/back");
    }
    if (Facts(space.slide.type).place == SlidePlace::kUnderMiddle) {
      const StickPlace center = left.Plus(HalfBelow(box.width), Under(id, "box.width / 2"));
      book_.Line(kBox, center, id, "guide center");
      book_.Line(kCase, center, id, "guide center");
    }
  }

  void Panel(const std::string& id, const Box& box, const StickPlace& box_left,
             const StickPlace& in_left, const StickPlace& in_right) {
    const BoxBuild& build = box.build;
    if (!Facts(build.fit).cut) return;  // flush with the box
    const std::string word = Facts(build.fit).set_up ? "groove" : "rabbet";
    const StickPlace left = in_left.Minus(build.groove, Under(id, "groove.depth"));
    const StickPlace right = in_right.Plus(build.groove, Under(id, "groove.depth"));
    book_.Edge(kBox, left, id, word + " left");
    book_.Edge(kBox, right, id, word + " right");
    Cut(kBox, left, in_left);
    Cut(kBox, in_right, right);
    const StickPlace panel =
        box_left.Plus(HalfBelow(box.width), Under(id, "box.width / 2"))
            .Minus(HalfBelow(box.panel_width), Under(id, "box.panel_width / 2"));
    book_.Edge(kBox, panel, id, "left", "box bottom");
    book_.Edge(kBox, panel.Plus(box.panel_width, Under(id, "box.panel_width")), id, "right",
               "box bottom");
  }

  const Bank& bank_;
  const BankLine& line_;
  StickPlace left_, right_;
  MarkBook book_;
};

}  // namespace

MarkBook WorktopMarks(const Bank& bank) {
  MarkBook book;
  for (std::size_t i = 0; i < bank.pieces.size(); ++i) {
    if (Facts(bank.pieces[i].role).group != PartGroup::kWorktop) continue;
    const Block& b = bank.pieces[i].block;
    const CaseBuild& c = *bank.casework;
    const std::string path = PieceMarks(bank, i).path;
    const StickPlace right(b.width, path + ".width");
    StickPlace left = StickPlace().Minus(b.x, path + ".x").Minus(c.side, "case.side");
    if (c.frame) left = left.Minus(c.side_in, "case.side_in");
    book.Edge(kCase, {}, "", "worktop left");
    book.Edge(kCase, left, "", "case left");
    book.Edge(kCase, left.Plus(c.width, "case.width"), "", "case right");
    book.Edge(kCase, right, "", "worktop right");
    book.Span({StickSpan::Kind::kBody, kCase, {}, right.at(), {}, "worktop", path + ".width"});
  }
  book.Finish();
  return book;
}

MarkBook WidthMarks(const Bank& bank, const BankLine& line) { return Widths(bank, line).Collect(); }

}  // namespace tillwright
