// Files, random specs and other programs, for tests.
#ifndef TILLWRIGHT_TESTS_SUPPORT_FILES_H_
#define TILLWRIGHT_TESTS_SUPPORT_FILES_H_

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace tillwright::testing {

// A path in the source tree: SourcePath("specs").
[[nodiscard]] std::filesystem::path SourcePath(std::string_view relative);

// The bytes of a file; fails the test when it cannot be read.
[[nodiscard]] std::string ReadFile(const std::filesystem::path& path);
void WriteFile(const std::filesystem::path& path, std::string_view bytes);

// The files of a folder with one of its names' endings, in order of name; not its subfolders.
[[nodiscard]] std::vector<std::filesystem::path> FilesIn(const std::filesystem::path& folder,
                                                         std::string_view ending);

// Every curated spec of specs/.
[[nodiscard]] std::vector<std::filesystem::path> CuratedSpecs();

// The texts of the random specs (tests/reckoning/random_specs.py) of `count` seeds from `first` on.
[[nodiscard]] std::vector<std::string> RandomSpecs(std::uint32_t first, int count);

// A shell command: its exit status and what it wrote to standard output.
struct Ran {
  int status = -1;
  std::string out;
};
[[nodiscard]] Ran RunShell(const std::string& command);

// A fresh folder of its own, gone with the object.
class TemporaryFolder {
 public:
  TemporaryFolder();
  ~TemporaryFolder();
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }
  [[nodiscard]] std::filesystem::path operator/(std::string_view name) const {
    return path_ / name;
  }

 private:
  std::filesystem::path path_;
};

// The seed of a random test: TILLWRIGHT_TEST_SEED, or a new one each run. Tests name it in
// SCOPED_TRACE, so that a failure can be repeated.
[[nodiscard]] std::uint32_t TestSeed();

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_SUPPORT_FILES_H_
