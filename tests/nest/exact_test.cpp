// Small jobs against exact models, solved by GLPK: boards (assignment of parts to boards), and
// sheets gone over twice (the level packing model of Lodi, Martello & Vigo 2004: levels and what
// lies on them). A layout with any number of stages is never worse than the best with two, and
// never better than a bound.
#include <glpk.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "nest/layout_check.h"
#include "support/files.h"
#include "tillwright/nest.h"

namespace tillwright::testing {
namespace {

Length Mm(std::int64_t n) { return Length::Millimeters(n); }

struct Size {
  int width = 0;
  int height = 0;
};

// A model under construction: binary columns, rows of sums.
class Model {
 public:
  Model() : problem_(glp_create_prob()) { glp_set_obj_dir(problem_, GLP_MIN); }
  ~Model() { glp_delete_prob(problem_); }
  Model(const Model&) = delete;
  Model& operator=(const Model&) = delete;

  int Binary(double cost) {
    const int column = glp_add_cols(problem_, 1);
    glp_set_col_kind(problem_, column, GLP_BV);
    glp_set_obj_coef(problem_, column, cost);
    return column;
  }
  void Row(int kind, double bound, const std::vector<std::pair<int, double>>& terms) {
    std::vector<int> columns{0};
    std::vector<double> factors{0};
    for (const auto& [column, factor] : terms) {
      columns.push_back(column);
      factors.push_back(factor);
    }
    const int row = glp_add_rows(problem_, 1);
    glp_set_row_bnds(problem_, row, kind, bound, bound);
    glp_set_mat_row(problem_, row, static_cast<int>(terms.size()), columns.data(), factors.data());
  }
  std::int64_t Least() {
    glp_iocp options;
    glp_init_iocp(&options);
    options.presolve = GLP_ON;
    options.msg_lev = GLP_MSG_OFF;
    EXPECT_EQ(glp_intopt(problem_, &options), 0);
    EXPECT_EQ(glp_mip_status(problem_), GLP_OPT);
    return static_cast<std::int64_t>(glp_mip_obj_val(problem_) + 0.5);
  }

 private:
  glp_prob* problem_;
};

// Parts i in order of falling height. y[i]: part i begins a level; q[i]: the level i begins a
// sheet; x[i][j]: part j lies on level i; z[i][j]: level j lies on the sheet that level i begins.
std::int64_t TwoStageSheets(std::vector<Size> parts, Size sheet) {
  std::ranges::stable_sort(parts, std::ranges::greater(), &Size::height);
  const int n = static_cast<int>(parts.size());
  const auto at = [&](int i) { return parts[static_cast<std::size_t>(i)]; };
  Model model;
  std::vector<int> y(parts.size()), q(parts.size());
  std::vector<std::vector<int>> x(parts.size(), std::vector<int>(parts.size())), z = x;
  for (int i = 0; i < n; ++i) {
    const auto s = static_cast<std::size_t>(i);
    y[s] = model.Binary(0);
    q[s] = model.Binary(1);
    for (int j = i + 1; j < n; ++j) x[s][static_cast<std::size_t>(j)] = model.Binary(0);
    for (int j = i + 1; j < n; ++j) z[s][static_cast<std::size_t>(j)] = model.Binary(0);
  }
  for (int j = 0; j < n; ++j) {
    const auto t = static_cast<std::size_t>(j);
    std::vector<std::pair<int, double>> part{{y[t], 1.0}}, level{{q[t], 1.0}, {y[t], -1.0}};
    for (int i = 0; i < j; ++i) part.emplace_back(x[static_cast<std::size_t>(i)][t], 1.0);
    for (int i = 0; i < j; ++i) level.emplace_back(z[static_cast<std::size_t>(i)][t], 1.0);
    model.Row(GLP_FX, 1, part);
    model.Row(GLP_FX, 0, level);
  }
  for (int i = 0; i < n; ++i) {
    const auto s = static_cast<std::size_t>(i);
    std::vector<std::pair<int, double>> across{{y[s], at(i).width - sheet.width}},
        up{{q[s], at(i).height - sheet.height}};
    for (int j = i + 1; j < n; ++j)
      across.emplace_back(x[s][static_cast<std::size_t>(j)], at(j).width);
    for (int j = i + 1; j < n; ++j)
      up.emplace_back(z[s][static_cast<std::size_t>(j)], at(j).height);
    model.Row(GLP_UP, 0, across);
    model.Row(GLP_UP, 0, up);
  }
  return model.Least();
}

NestJob JobOf(const std::vector<Size>& parts, Size sheet) {
  NestJob job;
  for (const Size& part : parts) {
    job.parts.push_back({.label = {}, .along = Mm(part.width), .across = Mm(part.height)});
  }
  job.stock.push_back({.label = {}, .along = Mm(sheet.width), .across = Mm(sheet.height)});
  job.work = 1'000'000;
  return job;
}

TEST(NestExact, NeverWorseThanTheBestOfTwoStagesAndNeverBetterThanItsBound) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  std::mt19937 random(seed);
  const auto pick = [&](int from, int to) {
    return std::uniform_int_distribution<int>(from, to)(random);
  };
  for (int run = 0; run < 12; ++run) {
    std::vector<Size> parts;
    for (int i = pick(6, 12); i > 0; --i) parts.push_back({pick(8, 60), pick(8, 60)});
    const NestJob job = JobOf(parts, {100, 100});
    const NestPlan plan = Nest(job);
    EXPECT_THAT(FaultsOf(job, plan), ::testing::IsEmpty());
    const auto sheets = static_cast<std::int64_t>(plan.layouts.size());
    // The model's levels run along one side only.
    EXPECT_LE(sheets, TwoStageSheets(parts, {100, 100}));
    EXPECT_GE(sheets, plan.bound);
    EXPECT_EQ(plan.proven, sheets == plan.bound);
  }
}

// Two stages need their own count: a third cut takes what is over a part's height off, which the
// model allows and "stages" counts.
TEST(NestExact, KeepsWithinTheStagesAsked) {
  std::mt19937 random(TestSeed());
  const auto pick = [&](int from, int to) {
    return std::uniform_int_distribution<int>(from, to)(random);
  };
  for (const int stages : {2, 3, 4}) {
    std::vector<Size> parts;
    for (int i = 0; i < 24; ++i) parts.push_back({pick(8, 60), pick(8, 60)});
    NestJob job = JobOf(parts, {120, 100});
    job.stages = stages;
    job.work = 200'000;
    const NestPlan plan = Nest(job);
    EXPECT_THAT(FaultsOf(job, plan), ::testing::IsEmpty());
    EXPECT_THAT(plan.missing, ::testing::Each(0));
  }
}

// Boards: part i in board b or not; boards in order; the fewest that hold all.
std::int64_t FewestBoards(const std::vector<int>& parts, int board) {
  const std::size_t n = parts.size();
  Model model;
  std::vector<int> used(n);
  for (int& column : used) column = model.Binary(1);
  std::vector<std::vector<int>> in(n, std::vector<int>(n));
  for (std::size_t i = 0; i < n; ++i) {
    std::vector<std::pair<int, double>> once;
    for (std::size_t b = 0; b <= i; ++b) once.emplace_back(in[i][b] = model.Binary(0), 1.0);
    model.Row(GLP_FX, 1, once);
  }
  for (std::size_t b = 0; b < n; ++b) {
    std::vector<std::pair<int, double>> room{{used[b], -board}};
    for (std::size_t i = b; i < n; ++i) room.emplace_back(in[i][b], parts[i]);
    model.Row(GLP_UP, 0, room);
  }
  return model.Least();
}

TEST(NestExact, CutsBoardsAsFewAsTheExactModel) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  std::mt19937 random(seed);
  for (int run = 0; run < 10; ++run) {
    std::vector<int> lengths;
    std::vector<Size> parts;
    for (int i = 0; i < 10; ++i) {
      lengths.push_back(std::uniform_int_distribution<int>(15, 70)(random));
      parts.push_back({lengths.back(), 10});
    }
    // A kerf makes every part and the board longer by as much.
    const int kerf = run % 4;
    for (int& length : lengths) length += kerf;
    NestJob job = JobOf(parts, {100, 10});
    job.kerf = Mm(kerf);
    job.stock[0].trim = Mm(run % 2);
    job.stock[0].along += 2 * job.stock[0].trim;
    job.stock[0].across += 2 * job.stock[0].trim;
    const NestPlan plan = Nest(job);
    EXPECT_THAT(FaultsOf(job, plan), ::testing::IsEmpty());
    const auto boards = static_cast<std::int64_t>(plan.layouts.size());
    EXPECT_EQ(boards, FewestBoards(lengths, 100 + kerf));
    EXPECT_LE(plan.bound, boards);
    EXPECT_EQ(plan.proven, plan.bound == boards);
  }
}

}  // namespace
}  // namespace tillwright::testing
