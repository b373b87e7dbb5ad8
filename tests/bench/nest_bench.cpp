// nest_bench FOLDER [--turn]: lays every instance of a folder out and prints, for each, the sheets,
// the bound, whether the number is proven, the milliseconds, and the settings of the fence; then
// the totals.
//
// Files that name a kerf in a comment say themselves which parts may turn. The others are academic
// sets, laid out with nothing turned, or with --turn with every part free to turn. Where the folder
// above holds a best-known.csv, an instance that it knows in the other mode only is left out.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <string>
#include <vector>

#include "nest/instances.h"
#include "nest/layout_check.h"
#include "tillwright/nest.h"

namespace {

namespace fs = std::filesystem;
using tillwright::NestJob;
using tillwright::NestPlan;
using tillwright::testing::Turning;

std::string TextOf(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

// Whether a list of best-known values has the instance in the other mode only.
bool OtherModeOnly(const fs::path& folder, const fs::path& file, bool turn) {
  const std::string list = TextOf(folder / ".." / "best-known.csv");
  const std::string name = fs::canonical(folder).filename() / file.filename();
  return list.find("\n" + name + (turn ? ",R," : ",O,")) == std::string::npos &&
         list.find("\n" + name + (turn ? ",O," : ",R,")) != std::string::npos;
}

// Different settings of the fence over all cuts.
std::size_t SettingsOf(const NestPlan& plan) {
  std::set<tillwright::Length> settings;
  for (const tillwright::NestLayout& layout : plan.layouts) {
    for (const tillwright::NestCut& cut : CutsOf(layout)) settings.insert(cut.size);
  }
  return settings.size();
}

struct Totals {
  std::size_t sheets = 0;
  std::int64_t bound = 0;
  int proven = 0;
  bool sound = true;
};

void Run(const fs::path& file, bool turn, Totals& totals) {
  NestJob job =
      tillwright::testing::ReadInstance(TextOf(file), turn ? Turning::kAll : Turning::kNone);
  if (const char* work = std::getenv("NEST_WORK")) job.work = std::atoll(work);
  const std::clock_t cpu = std::clock();
  const auto start = std::chrono::steady_clock::now();
  const NestPlan plan = Nest(job);
  const std::chrono::duration<double, std::milli> wall = std::chrono::steady_clock::now() - start;
  const double busy = 1000.0 * static_cast<double>(std::clock() - cpu) / CLOCKS_PER_SEC;
  std::printf(
      "%-24s %4zu sheets, bound %4s, %-8s %7.1f ms (%.1f ms of processor time), %zu settings\n",
      file.filename().c_str(), plan.layouts.size(), std::to_string(plan.bound).c_str(),
      plan.proven ? "proven" : "-", wall.count(), busy, SettingsOf(plan));
  for (const std::string& fault : tillwright::testing::FaultsOf(job, plan)) {
    std::printf("  FAULT %s\n", fault.c_str());
    totals.sound = false;
  }
  totals.sheets += plan.layouts.size();
  totals.bound += plan.bound;
  totals.proven += plan.proven ? 1 : 0;
  std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
  const bool turn = argc > 2 && std::strcmp(argv[2], "--turn") == 0;
  if (argc < 2 || argc > 3 || (argc == 3 && !turn)) {
    std::fputs("usage: nest_bench FOLDER [--turn]\n", stderr);
    return 2;
  }
  if (!fs::is_directory(argv[1])) {
    std::fprintf(stderr, "nest_bench: %s is no folder\n", argv[1]);
    return 4;
  }
  std::vector<fs::path> files;
  for (const auto& entry : fs::directory_iterator(argv[1])) {
    if (entry.path().extension() == ".txt") files.push_back(entry.path());
  }
  std::ranges::sort(files);
  Totals totals;
  for (const fs::path& file : files) {
    if (!OtherModeOnly(argv[1], file, turn)) Run(file, turn, totals);
  }
  std::printf("total: %zu sheets, bound %s, %d proven\n", totals.sheets,
              std::to_string(totals.bound).c_str(), totals.proven);
  return totals.sound ? 0 : 1;
}
