// Apportioning against an integer-programming solver: GLPK (GNU Linear Programming Kit, from the
// registry). The whole increments we hand out must have the least total deviation from the ideal
// sizes of any whole numbers with the same sum and bounds.
#include <glpk.h>
#include <gtest/gtest.h>

#include <cmath>

#include "solve/apportion.h"
#include "support/specs.h"

namespace tillwright {
namespace {

using testing::L;
using testing::Random;

// min sum d_i with d_i >= k_i - h_i, d_i >= h_i - k_i, sum k_i = total, k_i whole, within bounds.
double LeastDeviation(const std::vector<double>& ideals, int total, const std::vector<int>& low,
                      const std::vector<int>& high) {
  const int n = static_cast<int>(ideals.size());
  glp_prob* problem = glp_create_prob();
  glp_set_obj_dir(problem, GLP_MIN);
  glp_add_cols(problem, 2 * n);
  glp_add_rows(problem, 2 * n + 1);
  std::vector<int> row(1);
  std::vector<int> column(1);
  std::vector<double> value(1);
  const auto put = [&](int r, int c, double v) {
    row.push_back(r);
    column.push_back(c);
    value.push_back(v);
  };
  for (int i = 0; i < n; ++i) {
    const auto at = static_cast<std::size_t>(i);
    glp_set_col_kind(problem, i + 1, GLP_IV);
    glp_set_col_bnds(problem, i + 1, low[at] == high[at] ? GLP_FX : GLP_DB, low[at], high[at]);
    glp_set_col_bnds(problem, n + i + 1, GLP_LO, 0, 0);
    glp_set_obj_coef(problem, n + i + 1, 1);
    put(2 * i + 1, i + 1, -1);  // d - k >= -h
    put(2 * i + 1, n + i + 1, 1);
    glp_set_row_bnds(problem, 2 * i + 1, GLP_LO, -ideals[at], 0);
    put(2 * i + 2, i + 1, 1);  // d + k >= h
    put(2 * i + 2, n + i + 1, 1);
    glp_set_row_bnds(problem, 2 * i + 2, GLP_LO, ideals[at], 0);
    put(2 * n + 1, i + 1, 1);
  }
  glp_set_row_bnds(problem, 2 * n + 1, GLP_FX, total, total);
  glp_load_matrix(problem, static_cast<int>(row.size()) - 1, row.data(), column.data(),
                  value.data());
  glp_iocp parameters;
  glp_init_iocp(&parameters);
  parameters.presolve = GLP_ON;
  parameters.msg_lev = GLP_MSG_OFF;
  EXPECT_EQ(glp_intopt(problem, &parameters), 0);
  const double least = glp_mip_obj_val(problem);
  glp_delete_prob(problem);
  return least;
}

TEST(LeastDeviation, AgreesWithAnIntegerProgram) {
  constexpr std::uint32_t kSeed = 77;
  Random random(kSeed);
  const Length q = L("1/32");
  int compared = 0;
  for (int round = 0; round < 250; ++round) {
    const int n = random.Int(2, 5);
    const int total = random.Int(20, 200);
    std::vector<ApportionChild> children(static_cast<std::size_t>(n));
    std::vector<int> low(children.size(), 0);
    std::vector<int> high(children.size(), total);
    for (std::size_t i = 0; i < children.size(); ++i) {
      children[i].weight = {random.Int(1, 9), random.Int(1, 5)};
      if (!random.Chance(30)) continue;
      low[i] = random.Int(1, total / n);
      high[i] = random.Int(low[i], total);
      children[i].has_min = children[i].has_max = true;
      children[i].min = low[i] * q;
      children[i].max = high[i] * q;
    }
    const Apportioned got = Apportion(total * q, q, children, {});
    if (got.fault != Apportioned::Fault::kNone) continue;
    ++compared;
    double ours = 0;
    std::vector<double> ideals;
    for (const Share& share : got.shares) {
      ideals.push_back(share.ideal_mm / ToMillimeters(q));
      ours += std::abs(ToMillimeters(share.size) / ToMillimeters(q) - ideals.back());
    }
    // Doubles on both sides of this comparison: the solver's, and the ideals handed to it.
    EXPECT_NEAR(ours, LeastDeviation(ideals, total, low, high), 1e-6)
        << "seed " << kSeed << " round " << round;
  }
  EXPECT_GT(compared, 150) << "seed " << kSeed;
  glp_free_env();
}

}  // namespace
}  // namespace tillwright
