// The exact dynamic program for one sheet: gcut1–8 of Beasley 1985, any number of each part, value
// = area. The values are those of the table in Cintra & Wakabayashi (best-one-sheet.csv).
#include <gtest/gtest.h>

#include <sstream>

#include "nest/guillotine.h"
#include "nest/instances.h"
#include "nest/units.h"
#include "support/files.h"

namespace tillwright::testing {
namespace {

std::string Instance(const std::string& name) {
  return ReadFile(SourcePath("tests/nest/instances/" + name));
}

std::int64_t BestValue(const std::string& file, Turning turning) {
  const NestJob job = ReadInstance(Instance(file), turning);
  const nest::Integers integers = nest::ToIntegers(job);
  nest::Guillotine program(integers.problem);
  // The problem counts in a unit of its own; areas are taken back to square millimeters.
  const std::int64_t unit = integers.unit.picometers() / Length::kPerMillimeter;
  std::vector<std::int32_t> values;
  for (const nest::Part& part : integers.problem.parts) {
    values.push_back(static_cast<std::int32_t>(part.Area() * unit * unit));
  }
  program.Solve(values);
  const nest::Stock& sheet = integers.problem.stock.front();
  std::int64_t counted = 0;
  const std::vector<std::int32_t> counts = program.Counts(sheet);
  for (std::size_t i = 0; i < counts.size(); ++i) counted += std::int64_t{counts[i]} * values[i];
  EXPECT_EQ(counted, program.Value(sheet)) << file;
  return program.Value(sheet);
}

TEST(OneSheet, ReproducesTheExactValues) {
  std::istringstream in(Instance("best-one-sheet.csv"));
  std::string line;
  std::getline(in, line);
  int rows = 0;
  while (std::getline(in, line)) {
    std::istringstream cells(line);
    std::string file, cell, straight, turned;
    std::getline(cells, file, ',');
    for (int i = 0; i < 3; ++i) std::getline(cells, cell, ',');
    std::getline(cells, straight, ',');
    std::getline(cells, turned, ',');
    EXPECT_EQ(BestValue(file, Turning::kNone), std::stoll(straight)) << file;
    EXPECT_EQ(BestValue(file, Turning::kAll), std::stoll(turned)) << file;
    ++rows;
  }
  EXPECT_EQ(rows, 8);
}

}  // namespace
}  // namespace tillwright::testing
