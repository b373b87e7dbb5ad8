// Fronts that are matched on their stock: together in order, and told of.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <nlohmann/json.hpp>

#include "nest/layout_check.h"
#include "stock/matched.h"
#include "support/memory_files.h"
#include "tillwright/stock.h"

namespace tillwright {
namespace {

using testing::Called;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::L;
using testing::Matched;
using testing::MemoryFiles;
using testing::MustSolve;
using ::testing::Not;
using testing::Row;
using testing::RunsOf;
using ::testing::SizeIs;
using testing::Solved;
using Json = nlohmann::json;

StockPlan PlanOf(const Solved& solved) {
  const StockSource source{&solved.spec, &solved.bank};
  return PlanStock({&source, 1});
}

// How often each front lies in a run or panel, or by its kind alone.
std::map<std::string, std::int64_t> FrontsLaid(const StockPlan& plan) {
  std::map<std::string, std::int64_t> fronts;
  for (const StockGroup& group : plan.groups) {
    for (const auto& runs : {group.runs, group.panels}) {
      for (const StockRun& run : runs) {
        for (const std::string& front : run.fronts) ++fronts[front];
      }
    }
  }
  return fronts;
}

// Every curated job, matched either way: whole, sound, and its runs of the sizes reckoned.
TEST(MatchedStock, OfEveryJobStayTogetherOnItsStock) {
  std::size_t runs = 0;
  for (const auto& path : testing::CuratedSpecs()) {
    for (const FrontMatch match : {FrontMatch::kRow, FrontMatch::kStack}) {
      SCOPED_TRACE(path.filename().string());
      const Solved solved = Matched(path.filename().string(), match);
      const StockPlan plan = PlanOf(solved);
      EXPECT_TRUE(IsWhole(plan));
      for (const StockGroup& group : plan.groups) {
        EXPECT_THAT(testing::FaultsOf(group.job, group.plan), IsEmpty()) << group.material;
        ASSERT_EQ(group.runs.size(), group.job.runs.size());
        for (std::size_t i = 0; i < group.runs.size(); ++i) {
          const NestPart piece = PieceOf(group.job, group.job.runs[i]);
          EXPECT_EQ(group.runs[i].length, piece.along);
          EXPECT_EQ(group.runs[i].width, piece.across);
          EXPECT_EQ(group.runs[i].fronts.size(), group.job.runs[i].parts.size());
        }
      }
      std::map<std::string, std::int64_t> wanted;
      for (const FrontRun& run : RunsOf(solved)) {
        for (const std::size_t part : run.parts) {
          ++wanted[PartFor(solved.bank, solved.bank.parts[part])];
        }
        ++runs;
      }
      EXPECT_EQ(FrontsLaid(plan), wanted);
    }
  }
  EXPECT_GT(runs, 10U);
}

// The drawers' ids of the stretches of a plan's runs.
std::vector<std::string> Stretches(const StockPlan& plan) {
  std::vector<std::string> stretches;
  for (const StockGroup& group : plan.groups) {
    for (const StockRun& run : group.runs) stretches.push_back(run.label + " " + FrontsOf(run));
  }
  return stretches;
}

constexpr const char* kFour = R"({"drawer": {}}, {"drawer": {}}, {"drawer": {}}, {"drawer": {}})";

// Four fronts of 24 in make 97 3/8 in: three fit the sheet of 96 less its trim.
TEST(MatchedStock, LongerThanEverySheetAreCutInTheLongestStretches) {
  const Solved solved = MustSolve(Row(R"("match": "row")", kFour));
  ASSERT_THAT(RunsOf(solved), SizeIs(1));
  EXPECT_GT(RunsOf(solved)[0].length, L("96"));
  const StockPlan plan = PlanOf(solved);
  EXPECT_TRUE(IsWhole(plan));
  EXPECT_THAT(Stretches(plan), ElementsAre("R1a D1–D3", "R1b D4"));
}

// One long offcut and sheets 50 in long: the run fits neither's number, so it is broken in two.
TEST(MatchedStock, WithoutALongPieceForEachAreBrokenInTwo) {
  const std::string stock = R"(, "stock": {"trim": 0, "sheets": [
      {"length": 98, "width": 12, "count": 1, "on_hand": true}, {"length": 50, "width": 48}]})";
  const std::string row = std::string(R"({"columns": [)") + kFour + "]}";
  const Solved solved = MustSolve(
      R"({"opening": {"width": 96, "height": 20, "depth": 20},
          "fronts": {"material": "maple plywood", "match": "row"},
          "layout": {"rows": [)" +
      row + ", " + row + "]}" + stock + "}");
  const StockPlan plan = PlanOf(solved);
  for (const StockGroup& group : plan.groups) {
    EXPECT_THAT(testing::FaultsOf(group.job, group.plan), IsEmpty());
    if (group.material != "maple plywood") continue;
    EXPECT_THAT(group.plan.missing, ::testing::Each(0));
  }
  EXPECT_THAT(Stretches(plan),
              ::testing::AnyOf(ElementsAre("R1 D1–D4", "R2a D5, D6", "R2b D7, D8"),
                               ElementsAre("R1a D1, D2", "R1b D3, D4", "R2 D5–D8")));
}

TEST(MatchedStock, WiderThanABoardAreSawnFromAPanelGluedUp) {
  const StockPlan plan = PlanOf(Matched("client-dresser.json", FrontMatch::kStack));
  std::size_t panels = 0;
  for (const StockGroup& group : plan.groups) {
    for (const StockRun& run : group.panels) {
      ++panels;
      const StockPart& part = group.parts[static_cast<std::size_t>(run.panel)];
      EXPECT_EQ(part.label, "panel R1");
      EXPECT_EQ(part.boards, 3);  // 13 11/16 of boards 6 wide, less 1/16 for each joint
      EXPECT_EQ(FrontsOf(run), "D4, D5");
    }
  }
  EXPECT_EQ(panels, 1U);
}

TEST(MatchedStock, OfSeveralBanksAreEachBanksOwn) {
  const Solved a = Matched("client-dresser.json", FrontMatch::kRow);
  const Solved b = Matched("client-dresser.json", FrontMatch::kRow);
  const std::vector<StockSource> both{{&a.spec, &a.bank}, {&b.spec, &b.bank}};
  const StockPlan plan = PlanStock(both);
  EXPECT_THAT(Stretches(plan), ElementsAre("R1 of A D1–D3", "R1 of B D1–D3"));
  for (const StockGroup& group : plan.groups) {
    EXPECT_THAT(testing::FaultsOf(group.job, group.plan), IsEmpty());
  }
}

Called Told(const std::string& spec, std::vector<std::string> arguments) {
  MemoryFiles files;
  files.held["job.json"] = spec;
  arguments.insert(arguments.begin() + 1, "job.json");
  return testing::Call(arguments, files);
}

TEST(MatchedStock, AreToldByTheStockList) {
  const Called called = Told(Row(R"("match": "row")", kFour), {"stock"});
  EXPECT_EQ(called.status, 0) << called.err;
  EXPECT_THAT(called.out, HasSubstr("Run R1a: fronts D1–D3, left to right, out of one piece"));
  EXPECT_THAT(called.out, HasSubstr("Run R1b: front D4, out of one piece"));
  EXPECT_THAT(called.out, HasSubstr("No sheet is large enough for all of run R1"));
  EXPECT_THAT(called.out, HasSubstr("that keeps the runs whole"));
  EXPECT_THAT(called.out, HasSubstr("Mark the order across the show faces"));
  EXPECT_THAT(Told(Row(R"("match": "none")", kFour), {"stock"}).out, Not(HasSubstr("Run R1")));
}

TEST(MatchedStock, AreInTheStockListAsData) {
  const Json result = Json::parse(Told(Row(R"("match": "row")", kFour), {"stock", "--json"}).out);
  std::map<std::string, std::map<double, int>> places;  // by the run's label, from the left
  for (const Json& group : result["groups"]) {
    for (const Json& layout : group["layouts"]) {
      for (const Json& part : layout["parts"]) {
        if (!part.contains("run")) continue;
        const Json& run = group["runs"][part["run"].get<std::size_t>()];
        places[run["label"]].emplace(part["x_mm"], part["place"]);
        EXPECT_EQ(run["stretch_of"], "R1");
        EXPECT_EQ(run["order"], "left to right");
        EXPECT_EQ(run["way"], "end to end");
      }
    }
  }
  using ::testing::_;
  using ::testing::Pair;
  EXPECT_THAT(places["R1a"], ElementsAre(Pair(_, 0), Pair(_, 1), Pair(_, 2)));
  EXPECT_THAT(places["R1b"], ElementsAre(Pair(_, 0)));
}

TEST(MatchedStock, AreInTheCutList) {
  const std::string spec = Row(R"("match": "row")", R"({"drawer": {}}, {"drawer": {}})");
  EXPECT_THAT(Told(spec, {"parts"}).out, HasSubstr("R1   D1, D2  left to right"));
  const Json lists = Json::parse(Told(spec, {"parts", "--json"}).out);
  ASSERT_THAT(lists["runs"], SizeIs(1));
  EXPECT_EQ(lists["runs"][0]["ids"], Json({"D1.front", "D2.front"}));
  EXPECT_THAT(Told(spec, {"parts", "--format", "csv"}).out, HasSubstr(",R1\r\n"));
  const std::string lonely = Row(R"("match": "stack")", R"({"drawer": {}}, {"drawer": {}})");
  EXPECT_THAT(Told(lonely, {"parts"}).out, HasSubstr("Nothing to match"));
}

TEST(MatchedStock, TheSameJobGivesTheSameLayout) {
  const std::string spec = testing::ReadFile(testing::SourcePath("specs/client-dresser.json"));
  EXPECT_EQ(Told(spec, {"stock", "--json"}).out, Told(spec, {"stock", "--json"}).out);
}

}  // namespace
}  // namespace tillwright
