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
  std::string text;      // what was read
  std::string problem;   // the system's words, when not ok
  bool cleared = false;  // writing: what a run that was killed had left was taken away
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
  // True for a file with bytes of its own: no folder, no pipe that one could wait at for ever.
  virtual bool IsFile(const std::string& path) = 0;
  // Whether both paths lead to the same place, under whatever names.
  virtual bool Same(const std::string& a, const std::string& b) = 0;
  // Writes all of them or none: each where nobody looks first, then all moved into place. Folders
  // of targets are made; a link is kept, and what it leads to is written. On a problem, `text` of
  // the result is the path it is about.
  virtual FileResult WriteAll(const std::vector<FileToWrite>& files) = 0;
  // The same for paths that InFolder(folder, …) gave. Nothing is written outside the folder: a link
  // in a file's place gives way to the file, one in a folder's place is a problem.
  virtual FileResult WriteFolder(const std::string& folder,
                                 const std::vector<FileToWrite>& files) = 0;
};

// The real thing.
class SystemFiles : public Files {
 public:
  FileResult Read(const std::string& path, std::size_t most) override;
  bool IsFile(const std::string& path) override;
  bool Same(const std::string& a, const std::string& b) override;
  FileResult WriteAll(const std::vector<FileToWrite>& files) override;
  FileResult WriteFolder(const std::string& folder, const std::vector<FileToWrite>& files) override;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_FILES_H_
