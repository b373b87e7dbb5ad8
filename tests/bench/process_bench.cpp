// Whole processes, as a maker waits for them: the program is started, reads a spec, draws and
// writes every file. Wall time is the benchmark's time; "cpu_ms" is what the process itself used,
// which other work on the machine disturbs less. Drawers are graded, so that no two are alike and
// every part has a drawing of its own.
#include <benchmark/benchmark.h>
#include <spawn.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <filesystem>
#include <fstream>
#include <string>

namespace tillwright {
namespace {

namespace fs = std::filesystem;

// A folder of this run, taken away at its end.
class Folder {
 public:
  Folder() : path_(fs::temp_directory_path() / ("tillwright-bench-" + std::to_string(getpid()))) {
    fs::create_directories(path_);
  }
  ~Folder() {
    std::error_code error;
    fs::remove_all(path_, error);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  [[nodiscard]] std::string At(const std::string& name) const { return (path_ / name).string(); }

 private:
  fs::path path_;
};

void WriteSpec(const std::string& path, std::int64_t drawers) {
  std::ofstream out(path);
  out << R"({"case": {"width": 20, "height": )" << drawers * 8
      << R"(, "depth": 22}, "fronts": {"material": "black cherry", "pull": {"centers": 3}},)"
      << R"("box": {"corner": {"joint": "half-blind-dovetail"}},)"
      << R"("graduate": {"scheme": "arithmetic", "step": "1/16"}, "drawers": [{})";
  for (std::int64_t i = 1; i < drawers; ++i) out << ", {}";
  out << "]}";
}

double Milliseconds(const timeval& time) {
  return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_usec) / 1e3;
}

// Runs the program, without its messages. The time it used in ms, or -1.
double Run(std::array<std::string, 6> words) {
  std::array<char*, 7> arguments{};
  for (std::size_t i = 0; i < words.size(); ++i) arguments[i] = words[i].data();
  posix_spawn_file_actions_t quiet;
  posix_spawn_file_actions_init(&quiet);
  posix_spawn_file_actions_addopen(&quiet, STDERR_FILENO, "/dev/null", 1, 0);
  pid_t child = 0;
  const int fault = posix_spawn(&child, arguments[0], &quiet, nullptr, arguments.data(), environ);
  posix_spawn_file_actions_destroy(&quiet);
  int status = 0;
  rusage used{};
  if (fault != 0 || wait4(child, &status, 0, &used) != child || status != 0) return -1;
  return Milliseconds(used.ru_utime) + Milliseconds(used.ru_stime);
}

void DrawProcess(benchmark::State& state, const std::string& format) {
  const Folder folder;
  const std::string spec = folder.At("spec.json");
  WriteSpec(spec, state.range(0));
  double used = 0;
  for (auto _ : state) {
    const double ms =
        Run({TILLWRIGHT_PROGRAM, "draw", spec, "-o" + folder.At("out"), "--format", format});
    if (ms < 0) return state.SkipWithError("the program fails");
    used += ms;
  }
  state.counters["cpu_ms"] = benchmark::Counter(used, benchmark::Counter::kAvgIterations);
}
BENCHMARK_CAPTURE(DrawProcess, svg, "svg")
    ->Arg(5)
    ->Arg(24)
    ->UseRealTime()
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(DrawProcess, pdf, "pdf")
    ->Arg(5)
    ->Arg(24)
    ->UseRealTime()
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tillwright
