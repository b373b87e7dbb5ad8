#include "support/files.h"

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <random>

namespace tillwright::testing {

namespace fs = std::filesystem;

fs::path SourcePath(std::string_view relative) {
  return fs::path(TILLWRIGHT_SOURCE_DIR) / relative;
}

std::string ReadFile(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  EXPECT_TRUE(in.good()) << "cannot be read: " << path;
  return {std::istreambuf_iterator<char>(in), {}};
}

void WriteFile(const fs::path& path, std::string_view bytes) {
  std::ofstream out(path, std::ios::binary);
  out << bytes;
  EXPECT_TRUE(out.good()) << "cannot be written: " << path;
}

std::vector<fs::path> FilesIn(const fs::path& folder, std::string_view ending) {
  std::vector<fs::path> files;
  std::error_code error;
  for (const fs::directory_entry& entry : fs::directory_iterator(folder, error)) {
    if (entry.is_regular_file() && entry.path().string().ends_with(ending)) {
      files.push_back(entry.path());
    }
  }
  std::ranges::sort(files);
  return files;
}

std::vector<fs::path> CuratedSpecs() {
  std::vector<fs::path> specs = FilesIn(SourcePath("specs"), ".json");
  std::erase_if(specs, [](const fs::path& path) { return path.filename() == "schema.json"; });
  return specs;
}

std::vector<std::string> RandomSpecs(std::uint32_t first, int count) {
  const std::string command =
      "PYTHONDONTWRITEBYTECODE=1 PYTHONPATH='" + SourcePath("tests/reckoning").string() +
      "' /usr/bin/python3 -c 'import sys, random_specs\n"
      "for seed in range(" + std::to_string(first) + ", " +
      std::to_string(std::uint64_t{first} + static_cast<std::uint64_t>(count)) + "):\n"
      "  sys.stdout.write(random_specs.random_spec(seed) + chr(0))'";
  const Ran ran = RunShell(command);
  EXPECT_EQ(ran.status, 0) << command;
  std::vector<std::string> specs;
  for (std::size_t at = 0; at < ran.out.size();) {
    const std::size_t end = ran.out.find('\0', at);
    specs.push_back(ran.out.substr(at, end - at));
    at = end == std::string::npos ? ran.out.size() : end + 1;
  }
  EXPECT_EQ(specs.size(), static_cast<std::size_t>(count));
  return specs;
}

Ran RunShell(const std::string& command) {
  Ran ran;
  std::FILE* pipe = ::popen(command.c_str(), "r");
  if (pipe == nullptr) return ran;
  std::array<char, 65536> buffer{};
  for (std::size_t n = 0; (n = std::fread(buffer.data(), 1, buffer.size(), pipe)) > 0;) {
    ran.out.append(buffer.data(), n);
  }
  const int status = ::pclose(pipe);
  ran.status = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
  return ran;
}

TemporaryFolder::TemporaryFolder() {
  std::string pattern = (fs::temp_directory_path() / "tillwright-test.XXXXXX").string();
  if (::mkdtemp(pattern.data()) == nullptr) ADD_FAILURE() << "no temporary folder";
  path_ = pattern;
}

TemporaryFolder::~TemporaryFolder() {
  std::error_code ignored;
  fs::remove_all(path_, ignored);
}

std::uint32_t TestSeed() {
  if (const char* text = std::getenv("TILLWRIGHT_TEST_SEED")) {
    return static_cast<std::uint32_t>(std::strtoul(text, nullptr, 10));
  }
  return std::random_device()();
}

}  // namespace tillwright::testing
