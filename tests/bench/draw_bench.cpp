#include <benchmark/benchmark.h>

#include <string>

#include "tillwright/draw.h"
#include "tillwright/read.h"
#include "tillwright/render.h"
#include "tillwright/solve.h"

namespace tillwright {
namespace {

Bank BankOf(std::int64_t drawers) {
  std::string text =
      R"({"opening": {"width": 20, "height": 60, "depth": 22}, "drawers": [{})";
  for (std::int64_t i = 1; i < drawers; ++i) text += ", {}";
  return SolveBank(ReadSpec(text + "]}").value()).value();
}

void FrontElevationAsSvg(benchmark::State& state) {
  const Bank bank = BankOf(state.range(0));
  for (auto _ : state) {
    const Rendered svg = RenderSvg(DrawFront(bank, DrawingFontMetrics()));
    benchmark::DoNotOptimize(svg.bytes.size());
  }
}
BENCHMARK(FrontElevationAsSvg)->Arg(5)->Arg(24)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tillwright
