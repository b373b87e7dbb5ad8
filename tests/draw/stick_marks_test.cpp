// The marks of sticks as data: each is where its sum of dimensions says, and nothing that a maker
// needs at the bench is missing.
#include <gtest/gtest.h>

#include <algorithm>

#include "draw/stick_cases.h"
#include "draw/view_cases.h"
#include "support/files.h"
#include "support/specs.h"
#include "tillwright/dimensions.h"

namespace tillwright::testing {
namespace {

void ExpectTrueSums(const BankCase& c, const StickOptions& options) {
  for (const Stick& stick : MakeSticks(c.bank, options)) {
    for (const StickMark& mark : stick.marks) {
      EXPECT_EQ(mark.sums.size(), std::max<std::size_t>(1, mark.ids.size())) << mark.Name();
      for (const std::string& sum : mark.sums) {
        EXPECT_EQ(DimensionValue(c.bank, sum), mark.at)
            << c.name << ", " << stick.title << ", " << mark.Name() << " = " << sum;
      }
    }
  }
}

// What must be marked: reckoned here from the bank's fields, by no code of the sticks.
class Bench {
 public:
  Bench(const BankCase& c, const StickOptions& options)
      : name_(c.name), bank_(c.bank), sticks_(MakeSticks(c.bank, options)) {
    if (bank_.casework) {
      const CaseBuild& build = *bank_.casework;
      floor_ = build.raise + build.bottom + build.low_in;
      left_ = build.side + build.side_in;
    }
  }

  void ExpectAll() {
    ExpectOpening();
    for (const Space& space : bank_.spaces) {
      id_ = ToText(space.id);
      if (space.HasFront()) ExpectFront(space);
      if (space.HasBox()) ExpectBox(space);
    }
    for (const Divider& member : bank_.dividers) ExpectMember(member);
    for (const Gap& gap : bank_.gaps) ExpectGap(gap);
    if (bank_.casework) ExpectCase(*bank_.casework);
    for (const CasePiece& piece : bank_.pieces) ExpectPiece(piece);
  }

 private:
  static constexpr auto kHeight = StickAxis::kHeight;
  static constexpr auto kWidth = StickAxis::kWidth;
  static constexpr auto kDepth = StickAxis::kDepth;
  static constexpr auto kCase = StickLane::kCase;
  static constexpr auto kBox = StickLane::kBox;
  static constexpr auto kFront = StickLane::kFront;

  [[nodiscard]] static bool IsAt(const StickMark& mark, StickLane lane, Length at,
                                 const std::string& id) {
    return mark.lane == lane && mark.at == at &&
           (id.empty() ? mark.ids.empty() : std::ranges::find(mark.ids, id) != mark.ids.end());
  }

  void Expect(StickAxis axis, StickLane lane, Length at, const std::string& id,
              const std::string& what) {
    const bool there = std::ranges::any_of(sticks_, [&](const Stick& stick) {
      return stick.axis == axis && std::ranges::any_of(stick.marks, [&](const StickMark& mark) {
               return IsAt(mark, lane, at, id);
             });
    });
    EXPECT_TRUE(there) << name_ << ": no stick shows " << id << " " << what << " at "
                       << FormatMillimeters(at) << " mm";
  }

  void ExpectOpening() {
    Expect(kHeight, kCase, floor_, "", "opening bottom");
    Expect(kHeight, kCase, floor_ + bank_.opening_height, "", "opening top");
    Expect(kWidth, kCase, left_, "", "opening left");
    Expect(kWidth, kCase, left_ + bank_.opening_width, "", "opening right");
    Expect(kDepth, kCase, Length(), "", "case front edge");
    Expect(kDepth, kCase, bank_.opening_depth, "", "inside of the back");
  }

  void ExpectFront(const Space& space) {
    const Rect& r = space.front.rect;
    Expect(kHeight, kFront, floor_ + r.y, id_, "front bottom");
    Expect(kHeight, kFront, floor_ + r.Top(), id_, "front top");
    Expect(kWidth, kFront, left_ + r.x, id_, "front left");
    Expect(kWidth, kFront, left_ + r.Right(), id_, "front right");
    const bool inset = bank_.style == FrontStyle::kInset;
    Expect(kDepth, kFront, inset ? space.front.thickness : -space.front.thickness, id_,
           "front thickness");
    for (const PullHole& hole : space.front.pulls) {
      Expect(kHeight, kFront, floor_ + hole.y, id_, "pull");
      Expect(kWidth, kFront, left_ + hole.x, id_, "pull");
    }
  }

  void ExpectBox(const Space& space) {
    const Box& box = space.box;
    const BoxBuild& b = box.build;
    const Length y = floor_ + box.y;
    const Length x = left_ + box.x;
    Expect(kHeight, kBox, y, id_, "box bottom");
    Expect(kHeight, kBox, y + box.height, id_, "box top");
    Expect(kWidth, kBox, x, id_, "box left");
    Expect(kWidth, kBox, x + box.width, id_, "box right");
    Expect(kWidth, kBox, x + b.side, id_, "inside left");
    Expect(kWidth, kBox, x + b.side + box.inside_width, id_, "inside right");
    Expect(kDepth, kBox, box.z, id_, "box front");
    Expect(kDepth, kBox, box.z + box.depth, id_, "box rear");
    Expect(kDepth, kBox, box.z + b.end, id_, "inside front");
    Expect(kDepth, kBox, box.z + b.end + box.inside_depth, id_, "inside rear");
    Expect(kHeight, kCase, floor_ + space.slide.line_y, id_, "slide line");
    Expect(kHeight, kBox, floor_ + space.slide.line_y, id_, "slide line");
    Expect(kDepth, kCase, box.z + space.slide.length, id_, "slide rear");
    ExpectBottom(box, x, y);
    ExpectCorners(box, x);
  }

  void ExpectBottom(const Box& box, Length x, Length y) {
    const BoxBuild& b = box.build;
    if (b.fit == BottomFit::kApplied) return Expect(kHeight, kBox, y + b.bottom, id_, "panel top");
    if (b.fit == BottomFit::kGroove) Expect(kHeight, kBox, y + b.up, id_, "groove bottom");
    const Length upper = b.fit == BottomFit::kGroove ? b.up + b.bottom : b.bottom;
    Expect(kHeight, kBox, y + upper, id_, "groove or rabbet top");
    Expect(kWidth, kBox, x + b.side - b.groove, id_, "groove left");
    Expect(kWidth, kBox, x + box.width - b.side + b.groove, id_, "groove right");
    Expect(kDepth, kBox, box.z + b.end - b.groove, id_, "groove front");
    const Length rear = box.z + b.end + box.inside_depth;
    if (!b.open_back) Expect(kDepth, kBox, rear + b.groove, id_, "groove rear");
    // In the middle of the box, but under an open back flush with it.
    const Length left = x + HalfBelow(box.width) - HalfBelow(box.panel_width);
    Expect(kWidth, kBox, left, id_, "bottom left");
    Expect(kWidth, kBox, left + box.panel_width, id_, "bottom right");
    const Length middle = box.z + b.end + HalfBelow(box.inside_depth);
    const Length front =
        b.open_back ? rear + b.end - box.panel_depth : middle - HalfBelow(box.panel_depth);
    Expect(kDepth, kBox, front, id_, "bottom front");
    Expect(kDepth, kBox, front + box.panel_depth, id_, "bottom rear");
  }

  void ExpectCorners(const Box& box, Length x) {
    const BoxBuild& b = box.build;
    if (b.joint == CornerJoint::kRabbet || b.joint == CornerJoint::kDado) {
      Expect(kWidth, kBox, x + b.side - b.joint_depth, id_, "end left");
      Expect(kWidth, kBox, x + b.side - b.joint_depth + box.end_length, id_, "end right");
    }
    if (b.joint == CornerJoint::kHalfBlindDovetail) {
      Expect(kDepth, kBox, box.z + b.lap, id_, "side front end");
      Expect(kDepth, kBox, box.z + b.lap + box.side_length, id_, "side rear end");
    }
    if (!b.back_setback.IsZero()) {
      Expect(kDepth, kBox, box.z + box.depth - b.back_setback, id_, "back end");
    }
  }

  void ExpectMember(const Divider& member) {
    const std::string id = ToText(member);
    const Rect& r = member.rect;
    const Length front = bank_.casework ? bank_.casework->front_in : Length();
    Expect(kDepth, kCase, front + member.depth, id, "rear");
    const Length begin = member.begin + (member.partition ? floor_ : left_);
    const StickAxis along = member.partition ? kHeight : kWidth;
    Expect(along, kCase, begin, id, "one end");
    Expect(along, kCase, begin + member.length, id, "other end");
    if (member.partition) {
      Expect(kWidth, kCase, left_ + r.x, id, "left");
      Expect(kWidth, kCase, left_ + r.Right(), id, "right");
      return;
    }
    Expect(kHeight, kCase, floor_ + r.y, id, "bottom");
    Expect(kHeight, kCase, floor_ + r.Top(), id, "top");
  }

  // A gap stands on a stick when both its ends do.
  void ExpectGap(const Gap& gap) {
    const StickAxis axis = gap.axis == Axis::kY ? kHeight : kWidth;
    const Length from = gap.at + (gap.axis == Axis::kY ? floor_ : left_);
    const bool there = std::ranges::any_of(sticks_, [&](const Stick& stick) {
      return stick.axis == axis && std::ranges::any_of(stick.spans, [&](const StickSpan& span) {
               return span.kind == StickSpan::Kind::kGap && span.from == from &&
                      span.to == from + gap.size;
             });
    });
    EXPECT_TRUE(there) << name_ << ": the gap between " << ToText(bank_, gap.from) << " and "
                       << ToText(bank_, gap.to) << " is on no stick";
  }

  void ExpectCase(const CaseBuild& c) {
    Expect(kHeight, kCase, c.raise, "", "bottom's lower face");
    Expect(kHeight, kCase, c.height, "", "case top");
    Expect(kWidth, kCase, c.width, "", "case right");
    const Length rear = c.front_in + c.depth;
    Expect(kDepth, kCase, rear, "", "case rear");
    Expect(kDepth, kCase, c.front_in, "", "case side front");
    Expect(kHeight, kCase, c.raise + c.bottom, "", "case bottom, upper face");
    Expect(kHeight, kCase, c.height - c.top, "", "case top, under");
    Expect(kWidth, kCase, c.side, "", "left side, inside");
    Expect(kWidth, kCase, c.width - c.side, "", "right side, inside");
    if (!c.feet.IsZero()) Expect(kHeight, kCase, -c.feet, "", "floor");
    if (c.joint != CaseJoint::kButt) {
      Expect(kWidth, kCase, c.side - c.joint_depth, "", "dado left");
      Expect(kWidth, kCase, c.width - c.side + c.joint_depth, "", "dado right");
    }
    if (c.back == BackFit::kRabbet) {
      Expect(kWidth, kCase, c.side - c.back_lap, "", "back rabbet left");
      Expect(kDepth, kCase, rear - c.back_thickness, "", "back rabbet");
    }
    if (c.back == BackFit::kGroove) {
      Expect(kWidth, kCase, c.side - c.back_depth, "", "back groove left");
      Expect(kDepth, kCase, rear - c.back_inset, "", "back groove, far side");
      Expect(kDepth, kCase, rear - c.back_inset - c.back_thickness, "", "back groove");
    }
    if (c.back == BackFit::kApplied) {
      Expect(kDepth, kCase, rear + c.back_thickness, "", "back, outside");
    } else if (c.back != BackFit::kNone) {
      const Length low = c.raise + c.back_play;
      Expect(kHeight, kCase, low, "", "case back bottom");
      Expect(kHeight, kCase, low + c.panel_height, "", "case back top");
      const Length left = c.side + HalfBelow(c.inside_width) - HalfBelow(c.panel_width);
      Expect(kWidth, kCase, left, "", "case back left");
      Expect(kWidth, kCase, left + c.panel_width, "", "case back right");
    }
  }

  // Stretchers, toe kick, frames and worktop: both ends along each axis.
  void ExpectPiece(const CasePiece& piece) {
    std::string id;
    if (piece.space >= 0) id = ToText(bank_.spaces[static_cast<std::size_t>(piece.space)].id);
    if (piece.divider >= 0) id = ToText(bank_.dividers[static_cast<std::size_t>(piece.divider)]);
    const std::string name(ToText(piece.role));
    const Block& b = piece.block;
    // A worktop is longer than the case: it has its own stick, from its left end.
    const Length left = piece.role == PartRole::kWorktop ? Length() : left_ + b.x;
    Expect(kHeight, kCase, floor_ + b.y, id, name + " bottom");
    Expect(kHeight, kCase, floor_ + b.y + b.height, id, name + " top");
    Expect(kWidth, kCase, left, id, name + " left");
    Expect(kWidth, kCase, left + b.width, id, name + " right");
    Expect(kDepth, kCase, b.z, id, name + " front");
    Expect(kDepth, kCase, b.z + b.depth, id, name + " rear");
  }

  const std::string& name_;
  const Bank& bank_;
  std::vector<Stick> sticks_;
  Length floor_, left_;
  std::string id_;
};

void ExpectComplete(const std::vector<BankCase>& cases) {
  StickOptions options;
  options.screws = ScrewRow();
  for (const BankCase& c : cases) {
    ExpectTrueSums(c, options);
    Bench(c, options).ExpectAll();
  }
}

TEST(StickMarksTest, CuratedSpecsAreComplete) { ExpectComplete(CuratedBanks()); }
TEST(StickMarksTest, HardCasesAreComplete) { ExpectComplete(HardBanks()); }
TEST(StickMarksTest, TwoHundredRandomSpecsAreComplete) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("TILLWRIGHT_TEST_SEED=" + std::to_string(seed));
  ExpectComplete(RandomBanks(seed, 200));
}

Bank OpeningWith(const std::string& rest) {
  return MustSolve(R"({"opening": {"width": "16", "height": "24", "depth": "20"}, )" + rest + "}")
      .bank;
}

// 37 mm from the case's front edge and 32 mm from hole to hole: common practice of the 32 mm
// system, no source.
TEST(StickMarksTest, ScrewRowsBeginAtTheSetback) {
  StickOptions options;
  options.screws = ScrewRow();
  const std::vector<Stick> sticks = MakeSticks(OpeningWith(R"("drawers": [{}, {}])"), options);
  std::vector<Length> screws;
  for (const StickMark& mark : sticks.back().marks) {
    if (mark.what == "screw") screws.push_back(mark.at);
  }
  // 18 in slides: 457.2 mm hold 14 holes, the last at 37 + 13 x 32 = 453 mm.
  ASSERT_EQ(screws.size(), 14U);
  EXPECT_EQ(screws.front(), Length::Millimeters(37));
  EXPECT_EQ(screws[1], Length::Millimeters(69));
  EXPECT_EQ(screws.back(), Length::Millimeters(453));
}

TEST(StickMarksTest, ScrewRowsStandBehindAnInsetFront) {
  StickOptions options;
  options.screws = ScrewRow();
  const Bank bank =
      OpeningWith(R"("fronts": {"style": "inset", "thickness": "20 mm"}, "drawers": [{}])");
  const std::vector<Stick> sticks = MakeSticks(bank, options);
  for (const StickMark& mark : sticks.back().marks) {
    if (mark.what != "screw") continue;
    EXPECT_EQ(mark.at, Length::Millimeters(57));  // 20 + 37
    return;
  }
  FAIL() << "no screw is marked";
}

TEST(StickMarksTest, ColumnsAlikeShareAStick) {
  const Bank bank = OpeningWith(
      R"("layout": {"columns": [{"rows": [{"drawer": {}}, {"drawer": {}}]},
                                {"rows": [{"drawer": {}}, {"drawer": {}}]}]})");
  const std::vector<Stick> sticks = MakeSticks(bank, {});
  ASSERT_EQ(sticks.size(), 3U);
  EXPECT_EQ(sticks[0].title, "Heights D1, D2");
  EXPECT_EQ(sticks[0].alike, "D3, D4");
  EXPECT_EQ(sticks[1].title, "Widths D1, D3");
  EXPECT_EQ(sticks[1].alike, "D2, D4");
}

TEST(StickMarksTest, ColumnsThatDifferHaveTheirOwn) {
  const Bank bank = OpeningWith(
      R"("layout": {"columns": [{"rows": [{"drawer": {}}, {"drawer": {}}]},
                                {"rows": [{"drawer": {}}, {"drawer": {}}, {"drawer": {}}]}]})");
  const std::vector<Stick> sticks = MakeSticks(bank, {});
  EXPECT_EQ(sticks[0].name, "heights-1");
  EXPECT_EQ(sticks[1].name, "heights-2");
  EXPECT_EQ(sticks[1].title, "Heights 2: D3–D5");
}

TEST(StickMarksTest, OnlyTheLanesAskedFor) {
  StickOptions options;
  options.lanes = {StickLane::kBox};
  for (const Stick& stick : MakeSticks(OpeningWith(R"("drawers": [{}])"), options)) {
    EXPECT_TRUE(stick.Has(StickLane::kBox));
    EXPECT_FALSE(stick.Has(StickLane::kCase));
    EXPECT_FALSE(stick.Has(StickLane::kFront));
  }
}

}  // namespace
}  // namespace tillwright::testing
