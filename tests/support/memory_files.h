// Files in memory, for running the program without a disk.
#ifndef TILLWRIGHT_TESTS_SUPPORT_MEMORY_FILES_H_
#define TILLWRIGHT_TESTS_SUPPORT_MEMORY_FILES_H_

#include <map>
#include <string>
#include <vector>

#include "cli/app.h"

namespace tillwright::testing {

class MemoryFiles : public Files {
 public:
  std::map<std::string, std::string> held;  // "-" is standard input
  std::string write_problem;                // not empty: nothing can be written

  FileResult Read(const std::string& path, std::size_t most) override {
    const auto found = held.find(path);
    if (found == held.end()) return {false, {}, "No such file or directory"};
    return {true, found->second.substr(0, most + 1), {}};
  }
  bool IsFile(const std::string& path) override { return held.contains(path); }
  bool Same(const std::string& a, const std::string& b) override { return a == b; }
  FileResult WriteAll(const std::vector<FileToWrite>& files) override {
    if (!write_problem.empty()) return {false, files.at(0).path, write_problem};
    for (const FileToWrite& file : files) held[file.path] = file.bytes;
    return {};
  }
  FileResult WriteFolder(const std::string& /*folder*/,
                         const std::vector<FileToWrite>& files) override {
    return WriteAll(files);
  }
};

// One run of the program: what it wrote, and its status.
struct Called {
  int status = -1;
  std::string out;
  std::string err;
};

inline Called Call(const std::vector<std::string>& args, Files& files, Console console = {}) {
  Called called;
  called.status = static_cast<int>(Run(args, console, files));
  called.out = console.out;
  called.err = console.err;
  return called;
}

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_SUPPORT_MEMORY_FILES_H_
