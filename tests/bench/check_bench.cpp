// The gap check of large banks, and the choice of spacers.
#include <benchmark/benchmark.h>

#include <string>

#include "check/shims.h"
#include "tillwright/gap_check.h"
#include "tillwright/read.h"
#include "tillwright/solve.h"

namespace tillwright {
namespace {

std::string ThousandDrawers(const std::string& keys) {
  std::string text = R"({"opening": {"width": "400 in", "height": "3000 in", "depth": 22}, )" +
                     keys + R"(, "season": {}, "layout": {"columns": [)";
  for (int column = 0; column < 10; ++column) {
    text += std::string(column == 0 ? "" : ", ") + R"({"rows": [)";
    for (int i = 0; i < 100; ++i) text += std::string(i == 0 ? "" : ", ") + R"({"drawer": {}})";
    text += "]}";
  }
  return text + "]}}";
}

void Check(benchmark::State& state, const std::string& text) {
  const Outcome<Spec> spec = ReadSpec(text);
  const Outcome<Bank> bank = SolveBank(spec.value());
  for (auto _ : state) {
    const Outcome<GapCheck> check = CheckGaps(spec.value(), bank.value());
    benchmark::DoNotOptimize(check.value().stacks.data());
  }
}

void CheckAThousandOverlayDrawers(benchmark::State& state) {
  Check(state, ThousandDrawers(R"("fronts": {"material": "cherry"})"));
}
BENCHMARK(CheckAThousandOverlayDrawers)->Unit(benchmark::kMillisecond);

void CheckAThousandInsetDrawers(benchmark::State& state) {
  Check(state, ThousandDrawers(R"("fronts": {"style": "inset"}, "limits": {"greatest": 100})"));
}
BENCHMARK(CheckAThousandInsetDrawers)->Unit(benchmark::kMillisecond);

void CheckAThousandInOneStack(benchmark::State& state) {
  std::string text = R"({"opening": {"width": "16 in", "height": "3900 in", "depth": 22},
      "setting": "centred", "drawers": [{})";
  for (int i = 1; i < 1000; ++i) text += ", {}";
  Check(state, text + "]}");
}
BENCHMARK(CheckAThousandInOneStack)->Unit(benchmark::kMillisecond);

// Twelve kinds, some in inches and some in millimeters, and thirty gaps.
void ChooseSpacersForThirtyGaps(benchmark::State& state) {
  std::vector<SpacerSpec> spacers;
  const auto add = [&](Length thickness, int count) {
    SpacerSpec& spacer = spacers.emplace_back();
    spacer.thickness = Entry<Length>(thickness);
    spacer.count = Entry<int>(count);
  };
  for (const int n : {1, 2, 3, 4, 6, 8}) add(Length::Inches(n, 64), 4);
  for (const int n : {5, 10, 15, 25, 30, 50}) add(Length::Picometers(n * 10'000'000LL), 20);
  for (auto _ : state) {
    const ShimChoice choice(spacers, Length::Inches(1, 8) + Length::Inches(30, 512));
    for (int i = 0; i < 30; ++i) {
      const ShimSet set = choice.Nearest(Length::Inches(1, 8) + Length::Inches(i, 512));
      benchmark::DoNotOptimize(set.pieces.data());
    }
  }
}
BENCHMARK(ChooseSpacersForThirtyGaps)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tillwright
