#include "draw/bank/case_pieces.h"
#include "draw/stick/axis_marks.h"
#include "spec/kinds.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr auto kCase = StickLane::kCase;
constexpr auto kBox = StickLane::kBox;
constexpr auto kFront = StickLane::kFront;

class Depths {
 public:
  Depths(const Bank& bank, const std::optional<ScrewRow>& screws) : bank_(bank), screws_(screws) {}

  MarkBook Collect() {
    for (const StickLane lane : {kCase, kBox, kFront}) book_.Edge(lane, {}, "", "case front edge");
    rear_ = StickPlace(bank_.opening_depth, "opening.depth");
    book_.Edge(kCase, rear_, "", "inside of back");
    if (bank_.casework) Case(*bank_.casework);
    const StickPlace front = bank_.casework && bank_.casework->frame
                                 ? StickPlace(bank_.casework->front_in, "case.face_frame.thickness")
                                 : StickPlace();
    for (const Divider& member : bank_.dividers) {
      if (IsWebFrame(bank_, member)) continue;
      const std::string id = ToText(member);
      book_.Edge(kCase, front.Plus(member.depth, Under(id, "depth")), id, "rear",
                 member.partition ? "partition" : "divider");
    }
    for (std::size_t i = 0; i < bank_.pieces.size(); ++i) {
      const PieceMarks piece(bank_, i);
      const StickPlace face(bank_.pieces[i].block.z, piece.path + ".z");
      book_.Edge(kCase, face, piece.id, "front", piece.part);
      book_.Edge(kCase, face.Plus(bank_.pieces[i].block.depth, piece.path + ".depth"), piece.id,
                 "rear", piece.part);
    }
    for (const Space& space : bank_.spaces) {
      if (space.HasFront()) FrontOf(space);
      if (space.HasBox()) BoxOf(space);
    }
    book_.Finish();
    return std::move(book_);
  }

 private:
  void Cut(const StickPlace& from, const StickPlace& to, StickLane lane) {
    book_.Span({StickSpan::Kind::kCut, lane, from.at(), to.at(), {}, "", ""});
  }

  void Case(const CaseBuild& c) {
    const StickPlace back = rear_.Plus(c.back_thickness, "case.back.thickness");
    const StickPlace side = c.frame ? StickPlace(c.front_in, "case.face_frame.thickness") : StickPlace();
    if (c.frame) book_.Edge(kCase, side, "", "case side front");
    book_.Edge(kCase, side.Plus(c.depth, "case.depth"), "", "case rear");
    const BackFacts& fit = Facts(c.back);
    if (fit.behind) book_.Edge(kCase, back, "", "case back, outside");
    if (!fit.cut) return;
    book_.Edge(kCase, rear_, "", "back " + std::string(fit.word));
    if (fit.inset) book_.Edge(kCase, back, "", "back groove, far side");
    Cut(rear_, back, kCase);
  }

  void FrontOf(const Space& space) {
    const std::string id = ToText(space.id);
    const std::string path = Under(id, "front.thickness");
    const bool inset = bank_.style == FrontStyle::kInset;
    const StickPlace face = inset ? StickPlace() : StickPlace().Minus(space.front.thickness, path);
    const StickPlace back = inset ? StickPlace().Plus(space.front.thickness, path) : StickPlace();
    book_.Edge(kFront, face, id, "face", "front");
    book_.Edge(kFront, back, id, "back", "front");
    book_.Span({StickSpan::Kind::kCut, kFront, face.at(), back.at(), {}, "", path});
  }

  void BoxOf(const Space& space) {
    const std::string id = ToText(space.id);
    const Box& box = space.box;
    const StickPlace front(box.z, Under(id, "box.z"));
    const StickPlace rear = front.Plus(box.depth, Under(id, "box.depth"));
    book_.Edge(kBox, front, id, "front", "box");
    book_.Edge(kBox, rear, id, "rear", "box");
    book_.Span(
        {StickSpan::Kind::kBody, kBox, front.at(), rear.at(), {id}, "box", Under(id, "box.depth")});
    Ends(id, box, front, rear);
    const StickPlace slide = front.Plus(space.slide.length, Under(id, "slide.length"));
    book_.Edge(kCase, front, id, "slide front");
    book_.Edge(kCase, slide, id, "slide rear");
    if (screws_ && ScrewsIntoSide(space.slide.type)) Screws(id, front, space.slide.length);
  }

  void Ends(const std::string& id, const Box& box, const StickPlace& front,
            const StickPlace& rear) {
    const BoxBuild& build = box.build;
    const std::string end = Under(id, "box_front.thickness");
    const StickPlace in_front = front.Plus(build.end, end);
    const StickPlace box_back =
        build.back_setback.IsZero()
            ? rear
            : rear.Minus(build.back_setback, Under(id, "corner.back_setback"));
    const StickPlace in_back = box_back.Minus(build.end, Under(id, "box_back.thickness"));
    book_.Edge(kBox, in_front, id, "inside front");
    book_.Edge(kBox, in_back, id, "inside rear");
    if (!build.back_setback.IsZero()) book_.Edge(kBox, box_back, id, "rear", "box back");
    if (Facts(build.joint).lap) {
      book_.Edge(kBox, front.Plus(build.lap, Under(id, "corner.lap")), id, "front", "box side");
      book_.Edge(kBox, rear.Minus(build.lap, Under(id, "corner.lap")), id, "rear", "box side");
    }
    Panel(id, box, in_front, in_back, box_back);
  }

  void Panel(const std::string& id, const Box& box, const StickPlace& in_front,
             const StickPlace& in_back, const StickPlace& box_back) {
    const BoxBuild& build = box.build;
    if (!Facts(build.fit).cut) return;  // flush with the box
    const std::string word = Facts(build.fit).set_up ? "groove" : "rabbet";
    const std::string depth = Under(id, "groove.depth");
    const StickPlace front = in_front.Minus(build.groove, depth);
    book_.Edge(kBox, front, id, word + " front");
    Cut(front, in_front, kBox);
    if (!build.open_back) {
      const StickPlace back = in_back.Plus(build.groove, depth);
      book_.Edge(kBox, back, id, word + " rear");
      Cut(in_back, back, kBox);
    }
    const std::string size = Under(id, "box.panel_depth");
    const StickPlace panel =
        build.open_back
            ? box_back.Minus(box.panel_depth, size)
            : in_front.Plus(HalfBelow(box.inside_depth), Under(id, "box.inside_depth / 2"))
                  .Minus(HalfBelow(box.panel_depth), size + " / 2");
    book_.Edge(kBox, panel, id, "front", "box bottom");
    book_.Edge(kBox, panel.Plus(box.panel_depth, size), id, "rear", "box bottom");
  }

  // Holes from the setback on, a pitch apart, as far as the slide reaches.
  void Screws(const std::string& id, const StickPlace& front, Length slide) {
    for (Length along = screws_->setback; along < slide; along += screws_->pitch) {
      book_.Line(kCase, front.Plus(along, FormatWithUnit(along, Unit::kMillimeter)), id, "screw");
    }
  }

  const Bank& bank_;
  const std::optional<ScrewRow>& screws_;
  StickPlace rear_;
  MarkBook book_;
};

}  // namespace

MarkBook DepthMarks(const Bank& bank, const std::optional<ScrewRow>& screws) {
  return Depths(bank, screws).Collect();
}

}  // namespace tillwright
