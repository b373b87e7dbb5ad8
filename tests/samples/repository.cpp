#include "samples/repository.h"

#include <sstream>

#include "support/files.h"

namespace tillwright::testing {

FileResult RepositoryFiles::Read(const std::string& path, std::size_t most) {
  if (const auto own = written.find(path); own != written.end()) return {true, own->second, {}};
  SystemFiles system;
  return system.Read(SourcePath(path).string(), most);
}

FileResult RepositoryFiles::WriteAll(const std::vector<FileToWrite>& files) {
  for (const FileToWrite& file : files) written[file.path] = file.bytes;
  return {};
}

Told RunLine(const std::string& line, RepositoryFiles& files) {
  std::vector<std::string> args;
  std::istringstream words(line);
  for (std::string word; words >> word;) args.push_back(word);
  Console console;
  const ExitStatus status = Run(args, console, files);
  return {status, console.out, console.err};
}

std::string Replaced(std::string text, const std::string& what, const std::string& with) {
  for (std::size_t at = 0; (at = text.find(what, at)) != std::string::npos; at += with.size()) {
    text.replace(at, what.size(), with);
  }
  return text;
}

std::vector<std::string> LinesOf(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

}  // namespace tillwright::testing
