#include "solve/case_pieces.h"

#include <algorithm>

#include "spec/kinds.h"

namespace tillwright {
namespace {

class PieceRule {
 public:
  PieceRule(const Spec& spec, Bank& bank, Diagnostics& diagnostics)
      : spec_(*spec.casework), bank_(bank), c_(*bank.casework), diagnostics_(diagnostics) {}

  void Run() {
    if (c_.stretchers) Stretchers();
    if (!c_.kick_setback.IsZero()) ToeKick();
    if (!c_.feet.IsZero()) CheckFeet();
    if (c_.frame) Frame(*c_.frame);
    if (c_.web) {
      for (std::size_t i = 0; i < bank_.dividers.size(); ++i) {
        if (!bank_.dividers[i].partition) WebFrameAt(static_cast<int>(i), *c_.web);
      }
    }
    if (c_.worktop && !c_.worktop->width.IsZero()) TheWorktop(*c_.worktop);
  }

 private:
  CasePiece& Add(PartRole role, const Block& block) {
    CasePiece& piece = bank_.pieces.emplace_back();
    piece.role = role;
    piece.block = block;
    return piece;
  }

  void NoRoom(Place place, std::string what, Length over, std::string hint) {
    ReportError(diagnostics_, DiagnosticCode::kNoRoom, place,
                std::move(what) + " by " + FormatWithUnit(over, bank_.units), std::move(hint));
  }

  Length Floor() const { return -c_.base; }  // the sides' lower ends

  // Two rails between the sides, flat, at the front and at the back.
  void Stretchers() {
    const Length over = 2 * c_.stretcher_width - c_.inside_depth;
    if (over > Length()) {
      return NoRoom(spec_.stretchers.place, "two stretchers are wider than the case is deep", over,
                    "make them narrower");
    }
    const Length x = HalfBelow(bank_.opening_width - c_.member_length);
    const Length y = bank_.opening_height + c_.high_in;
    for (const bool back : {false, true}) {
      const Length z = c_.front_in + (back ? c_.inside_depth - c_.stretcher_width : Length());
      Add(PartRole::kStretcher, {x, y, z, c_.member_length, c_.top, c_.stretcher_width});
    }
  }

  void CheckFeet() {
    const Length over = c_.feet_setback - c_.front_in - c_.depth;
    if (over < Length()) return;
    NoRoom(spec_.feet.setback.place, "the feet are set back past the case's depth", over,
           "set them back less");
  }

  // A board as thick as the sides, between them, from the floor to the bottom.
  void ToeKick() {
    const Length over = c_.kick_setback + c_.side - c_.front_in - c_.inside_depth;
    if (over > Length()) {
      return NoRoom(spec_.toe_kick.place, "the toe kick is set back past the case's depth", over,
                    "set it back less");
    }
    if (c_.kick_setback <= c_.front_in) {
      return NoRoom(spec_.toe_kick.place, "the toe kick runs into the face frame",
                    c_.front_in - c_.kick_setback, "set it back more than the frame is thick");
    }
    Add(PartRole::kToeKick,
        {-c_.side_in, Floor(), c_.kick_setback, c_.inside_width, c_.raise, c_.side});
  }

  // --- Face frame -------------------------------------------------------------------------------

  // Stiles from the sides' lower ends, or from the toe kick's height, to the top; rails between
  // them; behind every member of the bank one more.
  void Frame(const FaceFrame& frame) {
    const Length low = c_.kick_setback.IsZero() ? Floor() : Floor() + c_.raise;
    const Length high = Floor() + c_.height;
    const Length width = bank_.opening_width;
    const Length deep = frame.thickness;
    for (const Length x : {-frame.stile, width}) {
      Add(PartRole::kFrameStile, {x, low, Length(), frame.stile, high - low, deep});
    }
    Add(PartRole::kFrameTopRail,
        {Length(), bank_.opening_height, Length(), width, frame.rail, deep});
    Add(PartRole::kFrameBottomRail,
        {Length(), -frame.bottom_rail, Length(), width, frame.bottom_rail, deep});
    for (std::size_t i = 0; i < bank_.dividers.size(); ++i) {
      const Divider& member = bank_.dividers[i];
      const Rect& r = member.rect;
      Add(member.partition ? PartRole::kFrameStile : PartRole::kFrameRail,
          {r.x, r.y, Length(), r.width, r.height, deep})
          .divider = static_cast<int>(i);
    }
    if (c_.side_in.IsZero()) return;
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) Blocking(static_cast<int>(i), frame);
  }

  // Between the case's side and the stile's inner edge, where a slide is screwed on.
  void Blocking(int index, const FaceFrame& frame) {
    const Space& space = bank_.spaces[static_cast<std::size_t>(index)];
    if (!space.HasBox()) return;
    if (!Facts(space.slide.type).screwed) return;
    const Length height = Min(frame.blocking, space.cell.height);
    const Length lowest = space.cell.y;
    const Length highest = space.cell.Top() - height;
    // About the slide's line, inside the cell.
    const Length y = Max(lowest, Min(space.slide.line_y - HalfBelow(height), highest));
    const Block block{Length(), y, c_.front_in, c_.side_in, height, c_.inside_depth};
    const auto add = [&](Length x) {
      CasePiece& piece = Add(PartRole::kBlocking, block);
      piece.block.x = x;
      piece.space = index;
    };
    if (space.cell.x.IsZero()) add(-c_.side_in);
    if (space.cell.Right() == bank_.opening_width) add(bank_.opening_width);
  }

  // --- Web frames -------------------------------------------------------------------------------

  // A rail in front and one behind, runners tenoned between them at both ends, and one more under
  // every partition that meets the frame. The rear tenons go in dry, with room behind them. Open
  // rails have no runners.
  void WebFrameAt(int index, const WebFrame& web) {
    const Divider& member = bank_.dividers[static_cast<std::size_t>(index)];
    const Length between = member.depth - 2 * web.rail;
    if (between <= Length()) {
      return NoRoom(
          spec_.web_frame.place,
          "the two rails of " + ToText(member) + "'s web frame are wider than the case is deep",
          -between, "make \"rail\" narrower");
    }
    if (web.free >= between) {
      return NoRoom(
          spec_.web_frame.place,
          "the room behind the runners of " + ToText(member) + " is more than their length",
          web.free - between, "make \"free\" smaller");
    }
    const Rect& r = member.rect;
    const auto add = [&](PartRole role, Length x, Length z, Length width, Length depth) {
      Add(role, {x, r.y, z, width, r.height, depth}).divider = index;
    };
    const Length rear = c_.front_in + member.depth - web.rail;
    add(PartRole::kWebRail, member.begin, c_.front_in, member.length, web.rail);
    bank_.pieces.back().ahead = web.front.has_value();
    if (web.open == OpenRails::kFront) return;
    add(PartRole::kWebRail, member.begin, rear, member.length, web.rail);
    if (web.open) return;
    const Length z = c_.front_in + web.rail - web.tenon;
    const auto runner = [&](Length x) -> CasePiece& {
      add(PartRole::kWebRunner, x, z, web.runner, between + 2 * web.tenon - web.free);
      return bank_.pieces.back();
    };
    // Only the rails have tongues: the runners lie along the faces of what takes them.
    const Length in = Facts(c_.joint).tongue ? c_.joint_depth : Length();
    runner(member.begin + in);
    runner(member.begin + member.length - in - web.runner);
    for (const Meeting& meeting : MeetingsOf(member)) {
      const Rect& p = meeting.partition->rect;
      const Length x = p.x + HalfBelow(p.width - web.runner);
      CasePiece& under = runner(x);
      if (!Facts(c_.joint).cut) continue;
      under.takes = static_cast<int>(meeting.partition - bank_.dividers.data());
      under.cuts.push_back(SeatIn(meeting, x, web.runner));
    }
  }

  // A partition that stands on a divider, hangs under it, or both.
  struct Meeting {
    const Divider* partition = nullptr;
    bool above = false, below = false;
  };

  // Those in the same place together.
  [[nodiscard]] std::vector<Meeting> MeetingsOf(const Divider& member) const {
    std::vector<Meeting> meetings;
    const Rect& r = member.rect;
    for (const Divider& other : bank_.dividers) {
      const Rect& o = other.rect;
      const bool above = o.y == r.Top();
      const bool within = other.partition && o.x > r.x && o.Right() < r.Right();
      if (!within || !(above || o.Top() == r.y)) continue;
      const auto same = std::ranges::find_if(meetings, [&](const Meeting& known) {
        return known.partition->rect.x == o.x && known.partition->rect.width == o.width;
      });
      Meeting& meeting = same != meetings.end() ? *same : meetings.emplace_back(Meeting{&other});
      (above ? meeting.above : meeting.below) = true;
    }
    return meetings;
  }

  // What takes the partition, along the whole runner.
  [[nodiscard]] Cut SeatIn(const Meeting& meeting, Length x, Length runner) const {
    const Rect& p = meeting.partition->rect;
    Cut cut;
    cut.kind = *Facts(c_.joint).cut;
    cut.from = CutFrom::kLeftEdge;
    cut.offset = Max(Length(), p.x - x);
    cut.width = Min(c_.SeatWidth(p.width), runner - cut.offset);
    cut.depth = c_.joint_depth;
    cut.face = meeting.above && meeting.below ? CutOn::kBothFaces
               : meeting.above                ? CutOn::kUpperFace
                                              : CutOn::kLowerFace;
    return cut;
  }

  // Its front edge flush with the fronts.
  void TheWorktop(const Worktop& worktop) {
    Length front;
    if (bank_.style == FrontStyle::kOverlay) {
      for (const Space& space : bank_.spaces) {
        if (space.HasFront()) front = Min(front, -space.front.thickness);
      }
    }
    const Length x = -c_.side_in - c_.side - worktop.left;
    Add(PartRole::kWorktop,
        {x, Floor() + c_.height, front, worktop.width, worktop.thickness, worktop.depth});
  }

  const CaseSpec& spec_;
  Bank& bank_;
  const CaseBuild& c_;
  Diagnostics& diagnostics_;
};

}  // namespace

void AddCasePieces(const Spec& spec, Bank& bank, Diagnostics& diagnostics) {
  if (bank.casework) PieceRule(spec, bank, diagnostics).Run();
}

}  // namespace tillwright
