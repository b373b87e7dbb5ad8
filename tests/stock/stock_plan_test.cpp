// The stock of whole jobs: every part of the cut list on a layout, and the lists that tell of it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <nlohmann/json.hpp>

#include "nest/layout_check.h"
#include "support/files.h"
#include "support/memory_files.h"
#include "support/specs.h"
#include "tillwright/parts.h"
#include "tillwright/stock.h"

namespace tillwright {
namespace {

using testing::Called;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::MemoryFiles;
using testing::MustSolve;
using testing::Solved;
using ::testing::StartsWith;
using Json = nlohmann::json;

StockPlan PlanOf(const Solved& solved) {
  const StockSource source{&solved.spec, &solved.bank};
  return PlanStock({&source, 1});
}

// How many pieces of each part of a group lie on its layouts.
std::map<std::int32_t, std::int64_t> PlacedIn(const StockGroup& group) {
  std::map<std::int32_t, std::int64_t> placed;
  for (const NestLayout& layout : group.plan.layouts) {
    for (const NestPiece& piece : layout.pieces) {
      if (piece.kind == NestPieceKind::kPart) ++placed[piece.part];
    }
  }
  return placed;
}

TEST(Stock, EveryPartOfTheCutListLiesOnALayoutThatCanBeCut) {
  for (const auto& path : testing::CuratedSpecs()) {
    SCOPED_TRACE(path.filename().string());
    const Solved solved = MustSolve(testing::ReadFile(path));
    const StockPlan plan = PlanOf(solved);
    EXPECT_TRUE(IsWhole(plan));
    std::map<std::string, std::int64_t> pieces;
    for (const StockGroup& group : plan.groups) {
      EXPECT_THAT(testing::FaultsOf(group.job, group.plan), IsEmpty()) << group.material;
      EXPECT_LE(group.plan.bound, static_cast<std::int64_t>(group.plan.layouts.size()));
      const std::map<std::int32_t, std::int64_t> placed = PlacedIn(group);
      for (const auto& [part, count] : placed) {
        const StockPart& is = group.parts[static_cast<std::size_t>(part)];
        EXPECT_EQ(count % is.boards, 0) << is.label;
        pieces[is.label] += count / is.boards;
      }
    }
    for (const CutLine& line : CutList(solved.spec, solved.bank)) {
      EXPECT_EQ(pieces[line.label], line.kind.count) << line.label;
    }
  }
}

TEST(Stock, SeveralBanksShareSheetsAndKeepTheirNames) {
  const Solved a =
      MustSolve(testing::ReadFile(testing::SourcePath("specs/sewing-frame-pedestal.json")));
  const Solved b = MustSolve(testing::ReadFile(testing::SourcePath("specs/filing-pedestal.json")));
  const auto sheets = [](const StockPlan& plan) {
    std::size_t n = 0;
    for (const StockGroup& group : plan.groups) n += group.plan.layouts.size();
    return n;
  };
  const std::vector<StockSource> both{{&a.spec, &a.bank}, {&b.spec, &b.bank}};
  const StockPlan shared = PlanStock(both);
  EXPECT_LT(sheets(shared), sheets(PlanOf(a)) + sheets(PlanOf(b)));
  for (const StockGroup& group : shared.groups) {
    for (const StockPart& part : group.parts) {
      EXPECT_THAT(part.label, ::testing::AnyOf(StartsWith("A: "), StartsWith("B: ")));
    }
  }
}

Called StockOf(const std::string& spec, std::vector<std::string> more) {
  MemoryFiles files;
  files.held["job.json"] = spec;
  more.insert(more.begin(), {"stock", "job.json"});
  return testing::Call(more, files);
}

constexpr const char* kPlain =
    R"({"opening": {"width": 15, "height": 20, "depth": 20},
        "fronts": {"material": "birch plywood"}, "drawers": [{}, {}]%s})";
std::string Plain(const std::string& more) {
  std::string text = kPlain;
  return text.replace(text.find("%s"), 2, more);
}

TEST(StockCommand, TellsWhatToBuyAndThatFewerCannotDo) {
  const Called called = StockOf(Plain(""), {});
  EXPECT_EQ(called.status, 0) << called.err;
  EXPECT_THAT(called.out, HasSubstr("3/4 in, birch plywood"));
  EXPECT_THAT(called.out, HasSubstr("no layout with edge-to-edge cuts can use fewer (proved)"));
  EXPECT_THAT(called.out, HasSubstr("Before you cut"));
}

TEST(StockCommand, JsonAgreesWithItself) {
  const Json result = Json::parse(StockOf(Plain(""), {"--json"}).out);
  EXPECT_EQ(result["format"], "tillwright-stock/1");
  EXPECT_EQ(result["ok"], true);
  ASSERT_FALSE(result["groups"].empty());
  for (const Json& group : result["groups"]) {
    EXPECT_EQ(group["sheets"], group["layouts"].size());
    EXPECT_LE(group["bound"], group["sheets"]);
    std::int64_t wanted = 0;
    for (const Json& part : group["parts"]) wanted += part["count"].get<std::int64_t>();
    std::size_t placed = 0;
    for (const Json& layout : group["layouts"]) placed += layout["parts"].size();
    EXPECT_EQ(placed, static_cast<std::size_t>(wanted));
  }
}

TEST(StockCommand, APartThatFitsNoSheetIsTold) {
  const Called called =
      StockOf(Plain(R"(, "stock": {"sheets": [{"length": 24, "width": 6}]})"), {});
  EXPECT_EQ(called.status, 1);
  EXPECT_THAT(called.out, HasSubstr("did not fit"));
}

TEST(StockCommand, OffcutsOnHandAreUsedBeforeSheetsAreBought) {
  const Called called = StockOf(Plain(R"(, "stock": {"sheets": [{"length": 96, "width": 48},
               {"length": 40, "width": 40, "count": 3, "on_hand": true, "name": "rack"}]})"),
                                {});
  EXPECT_EQ(called.status, 0) << called.err;
  EXPECT_THAT(called.out, HasSubstr("on hand, rack"));
}

// One small offcut is all that is given: the rest comes from sheets of the usual size, and that is
// told; with a sheet to buy of another material only, the same.
TEST(StockCommand, TakesTheUsualSizeWhereNoneCanBeBought) {
  for (const char* sheet : {R"({"length": 18, "width": 15, "on_hand": true})",
                            R"({"length": 60, "width": 60, "material": "walnut plywood"})"}) {
    const Called called =
        StockOf(Plain(R"(, "stock": {"sheets": [)" + std::string(sheet) + "]}"), {});
    EXPECT_EQ(called.status, 0) << called.out;
    EXPECT_THAT(called.out, HasSubstr("usual size"));
    EXPECT_THAT(called.out, HasSubstr("List yours under \"stock\""));
  }
  const Called given =
      StockOf(Plain(R"(, "stock": {"sheets": [{"length": 96, "width": 48}]})"), {});
  EXPECT_THAT(given.out, ::testing::Not(HasSubstr("usual size")));
}

// Each bank keeps its own increment; the list is in the units of the first.
TEST(StockCommand, NamesTheBanksThatShareAnOrderWhateverTheirUnits) {
  MemoryFiles files;
  files.held["a.json"] = Plain(R"(, "title": "Left")");
  files.held["b.json"] = R"({"title": "Right", "units": "mm", "drawers": [{}],
      "opening": {"width": 400, "height": 300, "depth": 500}})";
  const Called called = testing::Call({"stock", "a.json", "b.json"}, files);
  EXPECT_EQ(called.status, 0) << called.err;
  EXPECT_THAT(called.out, HasSubstr("Inches."));
  EXPECT_THAT(called.out, HasSubstr("A: Left."));
  EXPECT_THAT(called.out, HasSubstr("B: Right."));
  const Json result =
      Json::parse(testing::Call({"stock", "a.json", "b.json", "--json"}, files).out);
  EXPECT_EQ(result["banks"], Json({"Left", "Right"}));
}

TEST(StockCommand, TheSameJobGivesTheSameLayout) {
  EXPECT_EQ(StockOf(Plain(""), {"--json"}).out, StockOf(Plain(""), {"--json"}).out);
}

}  // namespace
}  // namespace tillwright
