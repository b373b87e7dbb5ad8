// Files: the one way in and out. Tests hand in their own.
#ifndef TILLWRIGHT_CLI_FILES_H_
#define TILLWRIGHT_CLI_FILES_H_

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace tillwright {

struct FileResult {
  bool ok = true;
  std::string text;     // what was read
  std::string problem;  // the system's words, when not ok
};

struct FileToWrite {
  std::string path;
  std::string bytes;
};

// The path of a file in a folder, which may end in a slash.
[[nodiscard]] std::string InFolder(std::string folder, std::string_view name);

class Files {
 public:
  virtual ~Files() = default;
  // Reads at most `most` bytes and one more (so that too much can be told); "-" is standard input.
  virtual FileResult Read(const std::string& path, std::size_t most) = 0;
  // Whether both paths lead to the same place, under whatever names.
  virtual bool Same(const std::string& a, const std::string& b) = 0;
  // Writes all of them or none: each beside its target first, then all renamed into place. Folders
  // of targets are made. On a problem, `text` of the result is the path it is about.
  virtual FileResult WriteAll(const std::vector<FileToWrite>& files) = 0;
};

// The real thing.
class SystemFiles : public Files {
 public:
  FileResult Read(const std::string& path, std::size_t most) override;
  bool Same(const std::string& a, const std::string& b) override;
  FileResult WriteAll(const std::vector<FileToWrite>& files) override;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_FILES_H_
