#include <benchmark/benchmark.h>

#include <string>

#include "tillwright/draw.h"
#include "tillwright/read.h"
#include "tillwright/render.h"
#include "tillwright/solve.h"
#include "tillwright/stick.h"

namespace tillwright {
namespace {

Bank BankOf(std::int64_t drawers) {
  std::string text = R"({"opening": {"width": 20, "height": 60, "depth": 22}, "drawers": [{})";
  for (std::int64_t i = 1; i < drawers; ++i) text += ", {}";
  return SolveBank(ReadSpec(text + "]}").value()).value();
}

void AllViewsAndSheetsAsSvg(benchmark::State& state) {
  const Bank bank = BankOf(state.range(0));
  for (auto _ : state) {
    const Drawings drawings = DrawBank(bank, {}, DrawingFontMetrics());
    std::size_t bytes = 0;
    for (const Sheet& sheet : drawings.views) bytes += RenderSvg(sheet).bytes.size();
    for (const Sheet& sheet : drawings.sheets) bytes += RenderSvg(sheet).bytes.size();
    benchmark::DoNotOptimize(bytes);
  }
}
BENCHMARK(AllViewsAndSheetsAsSvg)->Arg(5)->Arg(24)->Unit(benchmark::kMillisecond);

void AllSheetsAsPdf(benchmark::State& state) {
  const Bank bank = BankOf(state.range(0));
  for (auto _ : state) {
    const Drawings drawings = DrawBank(bank, {}, DrawingFontMetrics());
    const Rendered pdf = RenderPdf(drawings.sheets, {});
    benchmark::DoNotOptimize(pdf.bytes.size());
  }
}
BENCHMARK(AllSheetsAsPdf)->Arg(5)->Arg(24)->Unit(benchmark::kMillisecond);

void SticksAsPdf(benchmark::State& state) {
  const Bank bank = BankOf(state.range(0));
  for (auto _ : state) {
    const StickSheets sticks = DrawSticks(bank, {}, DrawingFontMetrics());
    const Rendered pdf = RenderPdf(sticks.sheets, {});
    benchmark::DoNotOptimize(pdf.bytes.size());
  }
}
BENCHMARK(SticksAsPdf)->Arg(5)->Arg(24)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tillwright
