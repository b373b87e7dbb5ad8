#include <benchmark/benchmark.h>
#include <malloc.h>

#include <string>

#include "tillwright/check.h"
#include "tillwright/read.h"
#include "tillwright/solve.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

// Keeps freed memory in the process: otherwise a large bank is measured with the kernel's work of
// giving and taking its pages, once an iteration, which one run of the program pays once.
const bool kKeepMemory = mallopt(M_MMAP_THRESHOLD, 1 << 30) != 0 && mallopt(M_TRIM_THRESHOLD, -1) != 0;

const char* const kFour = R"({
  "title": "Sewing frame pedestal",
  "opening": { "width": "15 3/8", "height": "24 3/4", "depth": "21 3/4" },
  "fronts": { "style": "overlay", "thickness": "3/4", "gap": "1/8", "overlay": "5/8" },
  "slides": { "type": "side-mount", "length": "auto" },
  "box": { "side": { "thickness": "1/2", "material": "birch plywood" },
           "corner": { "joint": "rabbet", "depth": "1/4" } },
  "graduate": { "scheme": "geometric", "ratio": 1.2 },
  "drawers": [{}, {}, {}, {}]
})";

void SolveFourDrawers(benchmark::State& state) {
  const Outcome<Spec> spec = ReadSpec(kFour);
  for (auto _ : state) {
    const Outcome<Bank> bank = SolveBank(spec.value());
    benchmark::DoNotOptimize(bank.ok());
  }
}
BENCHMARK(SolveFourDrawers);

void SolveFourDrawersWithTrace(benchmark::State& state) {
  const Outcome<Spec> spec = ReadSpec(kFour);
  for (auto _ : state) {
    Trace trace;
    const Outcome<Bank> bank = SolveBank(spec.value(), trace);
    benchmark::DoNotOptimize(bank.ok());
  }
}
BENCHMARK(SolveFourDrawersWithTrace);

void ReadFourDrawers(benchmark::State& state) {
  for (auto _ : state) {
    const Outcome<Spec> spec = ReadSpec(kFour);
    benchmark::DoNotOptimize(spec.ok());
  }
}
BENCHMARK(ReadFourDrawers);

void ReadSolveCheckAndWriteFourDrawers(benchmark::State& state) {
  for (auto _ : state) {
    const Outcome<Spec> spec = ReadSpec(kFour);
    const Outcome<Bank> bank = SolveBank(spec.value());
    const std::string json = ResultJson(bank.value(), CheckBank(spec.value(), bank.value()));
    benchmark::DoNotOptimize(json.size());
  }
}
BENCHMARK(ReadSolveCheckAndWriteFourDrawers);

// A tree of `n` drawers: rows of columns of rows, ten wide at each level.
std::string Tree(std::int64_t n) {
  std::string text = R"({"opening": {"width": "90 m", "height": "90 m", "depth": 22}, "layout": {"rows": [)";
  for (std::int64_t row = 0; row < n / 100; ++row) {
    text += row > 0 ? ", {\"columns\": [" : "{\"columns\": [";
    for (int column = 0; column < 10; ++column) {
      text += column > 0 ? ", {\"rows\": [" : "{\"rows\": [";
      for (int i = 0; i < 10; ++i) text += i > 0 ? ", {\"drawer\": {}}" : "{\"drawer\": {}}";
      text += "], \"graduate\": {\"scheme\": \"geometric\", \"ratio\": 1.1}}";
    }
    text += "]}";
  }
  return text + "]}}";
}

void SolveTree(benchmark::State& state) {
  const Outcome<Spec> spec = ReadSpec(Tree(state.range(0)));
  if (!kKeepMemory) state.SkipWithError("the allocator cannot be set up");
  for (auto _ : state) {
    const Outcome<Bank> bank = SolveBank(spec.value());
    if (!bank.ok()) state.SkipWithError("the tree does not solve");
    benchmark::DoNotOptimize(bank.ok());
  }
  state.SetComplexityN(state.range(0));
}
BENCHMARK(SolveTree)->RangeMultiplier(10)->Range(100, 10000)->Complexity(benchmark::oNLogN)
    ->Unit(benchmark::kMicrosecond);

// All drawers in one node: the apportioning and the gaps at their longest.
void SolveOneColumn(benchmark::State& state) {
  std::string text =
      R"({"opening": {"width": 20, "height": "99 m", "depth": 22}, "round": "1/64", "fronts": {"gap": 0, "thickness": "1/4"},
          "slides": {"clearance": 0}, "box": {"height": "2 mm", "bottom": {"fit": "rabbet", "thickness": "1 mm"}}, "drawers": [{})";
  for (std::int64_t i = 1; i < state.range(0); ++i) text += ",{}";
  const Outcome<Spec> spec = ReadSpec(text + "]}");
  for (auto _ : state) {
    const Outcome<Bank> bank = SolveBank(spec.value());
    if (!bank.ok()) state.SkipWithError("the column does not solve");
    benchmark::DoNotOptimize(bank.ok());
  }
  state.SetComplexityN(state.range(0));
}
BENCHMARK(SolveOneColumn)->RangeMultiplier(10)->Range(100, 10000)->Complexity(benchmark::oNLogN)
    ->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace tillwright
