#include "cli/files.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <set>
#include <system_error>

namespace tillwright {
namespace {

namespace fs = std::filesystem;

std::string Words(int error) { return std::generic_category().message(error); }

// Closes a file descriptor once.
class Descriptor {
 public:
  explicit Descriptor(int fd) : fd_(fd) {}
  ~Descriptor() { Close(); }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;

  [[nodiscard]] int get() const { return fd_; }
  int Close() {
    if (fd_ < 0) return 0;
    const int fd = fd_;
    fd_ = -1;
    return ::close(fd);
  }

 private:
  int fd_;
};

bool WriteWhole(int fd, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t n = ::write(fd, bytes.data(), bytes.size());
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return false;
    bytes.remove_prefix(static_cast<std::size_t>(n));
  }
  return true;
}

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

// The mode a new file would have, or the old file's.
mode_t ModeFor(const std::string& path) {
  struct stat info {};
  if (::stat(path.c_str(), &info) == 0) return info.st_mode & 07777U;
  const mode_t mask = ::umask(0);
  ::umask(mask);
  return 0666U & ~mask;
}

std::string FolderOf(const fs::path& file) {
  return file.has_parent_path() ? file.parent_path().string() : ".";
}

// 0 or the error.
int Sync(const std::string& path, int flags) {
  const Descriptor fd(::open(path.c_str(), flags | O_CLOEXEC));
  return fd.get() >= 0 && ::fsync(fd.get()) == 0 ? 0 : errno;
}

// One file on its way: written beside its target, then renamed, or taken away again.
struct Staged {
  std::string target;
  std::string temporary;
};

FileResult Problem(const std::string& path, int error) { return {false, path, Words(error)}; }

FileResult WriteThrough(const FileToWrite& file) {
  Descriptor fd(::open(file.path.c_str(), O_WRONLY | O_CLOEXEC));
  if (fd.get() < 0 || !WriteWhole(fd.get(), file.bytes)) return Problem(file.path, errno);
  if (fd.Close() != 0) return Problem(file.path, errno);
  return {};
}

bool IsSpecial(const std::string& path) {
  struct stat info {};
  return ::stat(path.c_str(), &info) == 0 && !S_ISREG(info.st_mode) && !S_ISDIR(info.st_mode);
}

FileResult Stage(const FileToWrite& file, std::vector<Staged>& staged) {
  fs::path target(file.path);
  std::error_code error;
  if (fs::is_symlink(target, error)) target = fs::canonical(target, error);  // keep the link
  if (fs::is_directory(target, error)) return Problem(file.path, EISDIR);
  if (target.has_parent_path()) {
    fs::create_directories(target.parent_path(), error);
    if (error) return {false, file.path, error.message()};
  }
  std::string pattern = target.string() + ".XXXXXX";
  Descriptor fd(::mkostemp(pattern.data(), O_CLOEXEC));
  if (fd.get() < 0) return Problem(file.path, errno);
  staged.push_back({target.string(), pattern});
  if (!WriteWhole(fd.get(), file.bytes) || ::fchmod(fd.get(), ModeFor(target.string())) != 0) {
    return Problem(file.path, errno);
  }
  ::sync_file_range(fd.get(), 0, 0, SYNC_FILE_RANGE_WRITE);  // a head start, no more
  if (fd.Close() != 0) return Problem(file.path, errno);
  return {};
}

// Waits until what was staged is on the disk. Only once everything is written: the disk then takes
// the many small files of one set together.
FileResult SyncAll(const std::vector<Staged>& staged) {
  for (const Staged& file : staged) {
    if (const int error = Sync(file.temporary, O_RDONLY)) return Problem(file.target, error);
  }
  return {};
}

// Makes renames durable, each folder once. One that is not yet durable is no failure.
void SyncFolders(const std::vector<Staged>& staged) {
  std::set<std::string> folders;
  for (const Staged& file : staged) folders.insert(FolderOf(file.target));
  for (const std::string& folder : folders) Sync(folder, O_RDONLY | O_DIRECTORY);
}

}  // namespace

FileResult SystemFiles::Read(const std::string& path, std::size_t most) {
  if (path == "-") return ReadFrom(STDIN_FILENO, most);
  const Descriptor fd(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (fd.get() < 0) return {false, {}, Words(errno)};
  return ReadFrom(fd.get(), most);
}

bool SystemFiles::Same(const std::string& a, const std::string& b) {
  std::error_code error;
  return a == b || fs::equivalent(a, b, error);  // false when either is not there
}

FileResult SystemFiles::WriteAll(const std::vector<FileToWrite>& files) {
  std::vector<Staged> staged;
  FileResult result;
  for (const FileToWrite& file : files) {
    result = IsSpecial(file.path) ? WriteThrough(file) : Stage(file, staged);
    if (!result.ok) break;
  }
  if (result.ok) result = SyncAll(staged);
  for (const Staged& file : staged) {
    if (!result.ok) {
      ::unlink(file.temporary.c_str());
    } else if (::rename(file.temporary.c_str(), file.target.c_str()) != 0) {
      result = Problem(file.target, errno);
      ::unlink(file.temporary.c_str());
    }
  }
  SyncFolders(staged);
  return result;
}

std::string InFolder(std::string folder, std::string_view name) {
  if (!folder.ends_with('/')) folder += '/';
  return folder += name;
}

}  // namespace tillwright
