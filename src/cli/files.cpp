#include "cli/files.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <filesystem>
#include <map>
#include <system_error>

#include "cli/staging.h"

namespace tillwright {
namespace {

namespace fs = std::filesystem;

std::string Words(int error) { return std::generic_category().message(error); }

FileResult ReadFrom(int fd, std::size_t most) {
  FileResult result;
  std::array<char, 65536> buffer{};
  while (result.text.size() <= most) {
    const ssize_t n = ::read(fd, buffer.data(), buffer.size());
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return {false, {}, Words(errno)};
    if (n == 0) break;
    result.text.append(buffer.data(), static_cast<std::size_t>(n));
  }
  return result;
}

FileResult Problem(const std::string& path, int error) { return {false, path, Words(error)}; }

FileResult WriteThrough(const FileToWrite& file) {
  Descriptor fd(::open(file.path.c_str(), O_WRONLY | O_CLOEXEC));
  if (!fd.ok() || !WriteWhole(fd.get(), file.bytes)) return Problem(file.path, errno);
  if (fd.Close() != 0) return Problem(file.path, errno);
  return {};
}

// A device or a pipe: written as it is.
bool IsSpecial(const std::string& path) {
  struct stat info {};
  return ::stat(path.c_str(), &info) == 0 && !S_ISREG(info.st_mode) && !S_ISDIR(info.st_mode);
}

// Where a link leads to, though nothing may be there yet; other paths as they are.
fs::path BehindLinks(fs::path path, std::error_code& error) {
  constexpr int kMost = 40;  // as many as Linux follows
  for (int i = 0; fs::is_symlink(fs::symlink_status(path, error)); ++i) {
    if (i == kMost) {
      error = std::make_error_code(std::errc::too_many_symbolic_link_levels);
      break;
    }
    const fs::path to = fs::read_symlink(path, error);
    if (error) break;
    path = to.is_absolute() ? to : path.parent_path() / to;
  }
  if (error == std::errc::no_such_file_or_directory) error.clear();
  return path;
}

// A file, the folder it goes into, and its name there.
struct Target {
  std::string folder;
  std::string name;
  const FileToWrite* file = nullptr;
};

// A folder under the one name that all its names share, whether it is there or not.
std::string NameOfFolder(const fs::path& folder, std::error_code& error) {
  return fs::weakly_canonical(folder.empty() ? fs::path(".") : folder, error).string();
}

// Where a path that the maker named leads.
FileResult TargetOf(const FileToWrite& file, Target& target) {
  std::error_code error;
  const fs::path path = BehindLinks(file.path, error);
  if (!error && !path.has_filename()) return Problem(file.path, EISDIR);
  if (!error) target = {NameOfFolder(path.parent_path(), error), path.filename().string(), &file};
  return error ? Problem(file.path, error.value()) : FileResult();
}

FileResult Deliver(std::vector<Target> targets) {
  // In the order of the folders' names, so that two runs that want several never wait for one
  // another.
  std::ranges::stable_sort(targets, {}, &Target::folder);
  std::map<std::string, std::pair<Staging, std::vector<const FileToWrite*>>> folders;
  for (const Target& target : targets) {
    const auto [at, is_new] = folders.try_emplace(target.folder);
    auto& [staging, files] = at->second;
    int error = is_new ? staging.Open(target.folder) : 0;
    if (error == 0) error = staging.Add(target.name, target.file->bytes);
    if (error != 0) return Problem(target.file->path, error);
    files.push_back(target.file);
  }
  for (auto& [folder, held] : folders) {
    if (const int error = held.first.Sync()) return Problem(folder, error);
  }
  FileResult done;
  for (auto& [folder, held] : folders) {
    std::size_t failed = 0;
    if (const int error = held.first.Commit(failed)) {
      return Problem(held.second[failed]->path, error);
    }
    done.cleared = done.cleared || held.first.cleared();
  }
  return done;
}

}  // namespace

FileResult SystemFiles::Read(const std::string& path, std::size_t most) {
  if (path == "-") return ReadFrom(STDIN_FILENO, most);
  const Descriptor fd(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (!fd.ok()) return {false, {}, Words(errno)};
  return ReadFrom(fd.get(), most);
}

bool SystemFiles::IsFile(const std::string& path) {
  std::error_code error;
  return fs::is_regular_file(path, error);
}

bool SystemFiles::Same(const std::string& a, const std::string& b) {
  std::error_code error;
  return a == b || fs::equivalent(a, b, error);  // false when either is not there
}

FileResult SystemFiles::WriteAll(const std::vector<FileToWrite>& files) {
  std::vector<Target> targets;
  for (const FileToWrite& file : files) {
    const bool special = IsSpecial(file.path);
    FileResult result = special ? WriteThrough(file) : TargetOf(file, targets.emplace_back());
    if (!result.ok) return result;
  }
  return Deliver(std::move(targets));
}

FileResult SystemFiles::WriteFolder(const std::string& folder,
                                    const std::vector<FileToWrite>& files) {
  std::error_code error;
  const std::string name = NameOfFolder(folder, error);
  if (error) return Problem(folder, error.value());
  std::vector<Target> targets;
  const std::size_t before = InFolder(folder, "").size();
  for (const FileToWrite& file : files) {
    targets.push_back({name, file.path.substr(before), &file});
  }
  return Deliver(std::move(targets));
}

std::string InFolder(std::string folder, std::string_view name) {
  if (!folder.ends_with('/')) folder += '/';
  return folder += name;
}

}  // namespace tillwright
