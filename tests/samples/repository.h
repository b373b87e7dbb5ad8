// The program run in-process on the files of the source tree, as from its top folder; what it would
// write is kept, never written.
#ifndef TILLWRIGHT_TESTS_SAMPLES_REPOSITORY_H_
#define TILLWRIGHT_TESTS_SAMPLES_REPOSITORY_H_

#include <map>
#include <string>
#include <vector>

#include "cli/app.h"
#include "cli/files.h"

namespace tillwright::testing {

class RepositoryFiles : public Files {
 public:
  // From what was written, else from the source tree.
  FileResult Read(const std::string& path, std::size_t most) override;
  bool IsFile(const std::string& path) override { return Read(path, 0).ok; }
  bool Same(const std::string& a, const std::string& b) override { return a == b; }
  FileResult WriteAll(const std::vector<FileToWrite>& files) override;
  FileResult WriteFolder(const std::string& /*folder*/,
                         const std::vector<FileToWrite>& files) override {
    return WriteAll(files);
  }

  // By path, as given on the command line.
  std::map<std::string, std::string> written;
};

struct Told {
  ExitStatus status = ExitStatus::kInternal;
  std::string out, err;
};

// Runs a command line such as "size specs/a.json --json"; words are separated by single spaces.
[[nodiscard]] Told RunLine(const std::string& line, RepositoryFiles& files);

[[nodiscard]] std::string Replaced(std::string text, const std::string& what,
                                   const std::string& with);
[[nodiscard]] std::vector<std::string> LinesOf(const std::string& text);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_SAMPLES_REPOSITORY_H_
