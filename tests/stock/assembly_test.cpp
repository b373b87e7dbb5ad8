// Parts add up: every case and drawer, put together from its own part list by the rules of joints,
// has the outer sizes and the opening of the result, exactly.
#include "stock/assembly.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

#include "stock/part_seats.h"
#include "support/files.h"
#include "support/random_case.h"
#include "support/random_spec.h"
#include "support/specs.h"

namespace tillwright {
namespace {

using testing::MustSolve;
using testing::PartsByRole;
using testing::RandomCase;
using testing::RandomSpec;
using testing::Solved;

// The parts of the cut list that go to `owner`: "D1", "H1", "case".
PartsByRole PartsFor(const Bank& bank, const std::vector<CutLine>& list, const std::string& owner) {
  PartsByRole parts;
  for (const CutLine& line : list) {
    for (const std::size_t index : line.kind.parts) {
      if (PartFor(bank, bank.parts[index]) != owner) continue;
      Part part = bank.parts[index];
      part.length = line.length;  // what the list says
      part.width = line.width;
      part.thickness = line.thickness;
      parts[part.role].push_back(std::move(part));
    }
  }
  return parts;
}

void ExpectDrawer(const Bank& bank, const std::vector<CutLine>& list, const Space& space) {
  const PartsByRole parts = PartsFor(bank, list, ToText(space.id));
  const Box& box = space.box;
  const testing::Size3 made = testing::BoxOf(parts);
  EXPECT_EQ(made, (testing::Size3{box.width, box.height, box.depth}));
  EXPECT_EQ(testing::BoxInsideWidth(parts), box.inside_width);
  EXPECT_EQ(testing::BoxInsideHeight(parts), box.inside_height);
  const Part& front = parts.at(PartRole::kFront)[0];
  EXPECT_EQ(Max(front.length, front.width), Max(space.front.rect.width, space.front.rect.height));
}

void ExpectCase(const Bank& bank, const std::vector<CutLine>& list) {
  const CaseBuild& c = *bank.casework;
  const PartsByRole parts = PartsFor(bank, list, "case");
  const testing::AssembledCase made = testing::CaseOf(parts, c);
  EXPECT_EQ(made.outside, (testing::Size3{c.width, c.height, c.depth}));
  EXPECT_EQ(made.opening,
            (testing::Size3{bank.opening_width, bank.opening_height, bank.opening_depth}));
}

// Stiles and rails make a frame as wide as the case and its overlaps; blocking fills the space
// between sides and stiles.
void ExpectFrame(const Bank& bank, const std::vector<CutLine>& list) {
  const CaseBuild& c = *bank.casework;
  if (!c.frame) return;
  const PartsByRole parts = PartsFor(bank, list, "case");
  EXPECT_EQ(
      parts.at(PartRole::kFrameTopRail)[0].length + 2 * parts.at(PartRole::kFrameStile)[0].width,
      c.width + 2 * c.frame->overlap);
  for (const Space& space : bank.spaces) {
    const PartsByRole own = PartsFor(bank, list, ToText(space.id));
    if (!own.contains(PartRole::kBlocking)) continue;
    const Part& block = own.at(PartRole::kBlocking)[0];
    EXPECT_EQ(bank.opening_width + 2 * block.thickness, c.inside_width);
    EXPECT_EQ(block.length, c.inside_depth);
  }
}

// A web frame is as deep and as long as the divider it stands for.
void ExpectMember(const Bank& bank, const std::vector<CutLine>& list, const Divider& member) {
  const PartsByRole parts = PartsFor(bank, list, ToText(member));
  if (!parts.contains(PartRole::kWebRail)) {
    const PartRole role = member.partition ? PartRole::kPartition : PartRole::kDivider;
    EXPECT_EQ(parts.at(role)[0].length, member.length);
    EXPECT_EQ(parts.at(role)[0].width, member.depth);
    return;
  }
  const Part& rail = parts.at(PartRole::kWebRail)[0];
  const Part& runner = parts.at(PartRole::kWebRunner)[0];
  const Cut* groove = testing::CutIn(rail, CutKind::kGroove, CutFrom::kUpperFace);
  const Cut* tenon = testing::CutIn(runner, CutKind::kTenon, CutFrom::kEachEnd);
  ASSERT_NE(groove, nullptr);
  ASSERT_NE(tenon, nullptr);
  EXPECT_EQ(rail.count, 2);
  EXPECT_GE(runner.count, 2);
  EXPECT_EQ(rail.length, member.length);
  EXPECT_EQ(groove->depth, tenon->width);
  EXPECT_GE(runner.thickness - 2 * tenon->depth, groove->width) << "shoulders, half below";
  EXPECT_LE(runner.thickness - 2 * tenon->depth - groove->width, Length::Picometers(1));
  // With what stays free behind the runners the frame is as deep as the divider.
  EXPECT_EQ(2 * rail.width + runner.length - 2 * tenon->width + bank.casework->web->free,
            member.depth);
}

// Whatever is let in is taken at both its ends: by a channel of some part, as deep as its ends go in
// and as wide as they are. Only a worktop that is no part takes a partition without a trace.
void ExpectTaken(const Bank& bank) {
  if (!bank.casework || bank.casework->joint == CaseJoint::kButt) return;
  const CaseBuild& c = *bank.casework;
  std::vector<int> taken(bank.dividers.size(), 0);
  for (const Part& part : bank.parts) {
    for (const Seat& seat : SeatsIn(bank, part)) {
      ++taken[static_cast<std::size_t>(seat.member)];
      EXPECT_EQ(seat.depth, c.joint_depth);
      const Divider& member = bank.dividers[static_cast<std::size_t>(seat.member)];
      const Length thick = member.partition ? member.rect.width : member.rect.height;
      EXPECT_EQ(seat.width, c.joint == CaseJoint::kGroove ? c.tongue : thick);
    }
  }
  for (std::size_t i = 0; i < taken.size(); ++i) {
    const Divider& member = bank.dividers[i];
    const bool bare = member.partition && c.top_none &&
                      !(c.worktop && !c.worktop->width.IsZero()) &&
                      member.rect.Top() == bank.opening_height;
    EXPECT_GE(taken[i], bare ? 1 : 2) << ToText(member);
  }
}

// No two parts have one id, no two lines of the list one label.
void ExpectNamed(const Bank& bank, const std::vector<CutLine>& list) {
  std::set<std::string> names;
  for (const Part& part : bank.parts) {
    EXPECT_TRUE(names.insert(PartId(bank, part)).second) << PartId(bank, part);
  }
  for (const CutLine& line : list) EXPECT_TRUE(names.insert(line.label).second) << line.label;
}

void ExpectAddsUp(const Solved& solved) {
  const std::vector<CutLine> list = CutList(solved.spec, solved.bank);
  ExpectNamed(solved.bank, list);
  for (const Space& space : solved.bank.spaces) {
    if (space.HasBox()) ExpectDrawer(solved.bank, list, space);
  }
  for (const Divider& member : solved.bank.dividers) ExpectMember(solved.bank, list, member);
  if (!solved.bank.casework) return;
  ExpectCase(solved.bank, list);
  ExpectFrame(solved.bank, list);
  ExpectTaken(solved.bank);
}

TEST(Assembly, OfEveryCuratedSpec) {
  for (const auto& path : testing::CuratedSpecs()) {
    SCOPED_TRACE(path);
    ExpectAddsUp(MustSolve(testing::ReadFile(path)));
  }
}

template <class Text>
int CountAddingUp(std::uint32_t seed, int count, Text text) {
  int solved = 0;
  for (int i = 0; i < count; ++i) {
    const std::string spec_text = text(seed + static_cast<std::uint32_t>(i));
    SCOPED_TRACE("seed " + std::to_string(seed) + " + " + std::to_string(i) + "\n" + spec_text);
    const Spec spec = testing::MustRead(spec_text);
    const Outcome<Bank> bank = SolveBank(spec);
    if (!bank.ok()) continue;
    ++solved;
    ExpectAddsUp({spec, bank.value()});
    if (::testing::Test::HasFailure()) break;
  }
  return solved;
}

TEST(Assembly, OfFiveHundredRandomCases) {
  EXPECT_GE(CountAddingUp(testing::TestSeed(), 900,
                          [](std::uint32_t seed) { return RandomCase(seed).Text(); }),
            500);
}

TEST(Assembly, OfFiveHundredRandomBanks) {
  EXPECT_GE(CountAddingUp(testing::TestSeed(), 900,
                          [](std::uint32_t seed) { return RandomSpec(seed, Unit::kInch).Text(); }),
            500);
}

// A wrong part would be found: each size of each part, a little off, spoils some sum.
TEST(Assembly, NoticesAPartThatIsOff) {
  Solved solved = MustSolve(testing::ReadFile(testing::SourcePath("specs/cutting-bench.json")));
  const std::vector<CutLine> list = CutList(solved.spec, solved.bank);
  PartsByRole parts = PartsFor(solved.bank, list, "case");
  const testing::AssembledCase right = testing::CaseOf(parts, *solved.bank.casework);
  for (const PartRole role : {PartRole::kCaseSide, PartRole::kCaseBottom, PartRole::kFrameStile,
                              PartRole::kFrameTopRail}) {
    PartsByRole off = parts;
    off.at(role)[0].length += Length::Picometers(1);
    const testing::AssembledCase made = testing::CaseOf(off, *solved.bank.casework);
    EXPECT_FALSE(made.outside == right.outside && made.opening == right.opening) << ToText(role);
  }
}

}  // namespace
}  // namespace tillwright
