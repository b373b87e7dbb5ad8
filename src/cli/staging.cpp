#include "cli/staging.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <filesystem>
#include <set>

#include "cli/interrupt.h"

namespace tillwright {
namespace {

namespace fs = std::filesystem;

constexpr int kFolderFlags = O_RDONLY | O_DIRECTORY | O_CLOEXEC;

// What stands at the place of a file: 0 and the mode a file there is to have, or why none may.
int LookAt(int folder, const std::string& leaf, mode_t& mode) {
  struct stat info {};
  if (::fstatat(folder, leaf.c_str(), &info, AT_SYMLINK_NOFOLLOW) != 0) {
    if (errno != ENOENT) return errno;
  } else if (S_ISDIR(info.st_mode)) {
    return EISDIR;
  } else if (S_ISREG(info.st_mode)) {
    mode = info.st_mode & 07777U;
    return 0;
  }
  const mode_t mask = ::umask(0);
  ::umask(mask);
  mode = 0666U & ~mask;
  return 0;
}

}  // namespace

int Descriptor::Close() {
  if (fd_ < 0) return 0;
  const int fd = fd_;
  fd_ = -1;
  return ::close(fd);
}

bool WriteWhole(int fd, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t n = ::write(fd, bytes.data(), bytes.size());
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return false;
    bytes.remove_prefix(static_cast<std::size_t>(n));
  }
  return true;
}

Staging::~Staging() {
  for (std::size_t i = 0; i < files_.size(); ++i) {
    if (!files_[i].moved) ::unlinkat(own_.get(), std::to_string(i).c_str(), 0);
  }
  if (own_.ok()) ::unlinkat(folder_.get(), kName, AT_REMOVEDIR);
  GiveBackInterruptSlot(slot_);
  if (arrived_) return;
  // Folders made for what did not arrive; those that hold something stay.
  for (std::size_t i = made_below_.size(); i-- > 0;) {
    ::unlinkat(folder_.get(), made_below_[i].c_str(), AT_REMOVEDIR);
  }
  for (std::size_t i = made_.size(); i-- > 0;) ::rmdir(made_[i].c_str());
}

int Staging::MakeFolders(const std::string& folder) {
  std::vector<fs::path> missing;
  std::error_code error;
  fs::path path(folder);
  if (!path.has_filename()) path = path.parent_path();  // a slash at its end
  for (; !path.empty() && !fs::exists(path, error) && !error; path = path.parent_path()) {
    missing.push_back(path);
  }
  if (error) return error.value();
  for (std::size_t i = missing.size(); i-- > 0;) {
    if (::mkdir(missing[i].c_str(), 0777) == 0) {
      made_.push_back(missing[i].string());
    } else if (errno != EEXIST) {
      return errno;
    }
  }
  return 0;
}

int Staging::Open(const std::string& folder) {
  if (const int error = MakeFolders(folder)) return error;
  folder_.Reset(::open(folder.c_str(), kFolderFlags));
  if (!folder_.ok()) return errno;
  while (::flock(folder_.get(), LOCK_EX) != 0) {
    if (errno != EINTR) break;  // a system without locks: as well as can be done there
  }
  return MakeOwnFolder();
}

int Staging::MakeOwnFolder() {
  if (::mkdirat(folder_.get(), kName, 0700) != 0) {
    if (errno != EEXIST) return errno;
    // The lock is ours, so nobody is at work here: it was left by a run that was killed.
    cleared_ = true;
    std::error_code error;
    fs::remove_all("/proc/self/fd/" + std::to_string(folder_.get()) + "/" + kName, error);
    if (error) return error.value();
    if (::mkdirat(folder_.get(), kName, 0700) != 0) return errno;
  }
  own_.Reset(::openat(folder_.get(), kName, kFolderFlags | O_NOFOLLOW));
  if (!own_.ok()) return errno;
  slot_ = TakeInterruptSlot(folder_.get(), own_.get(), kName);
  return 0;
}

int Staging::FolderOf(const std::string& name, std::string& leaf, Descriptor& folder) {
  folder.Reset(::openat(folder_.get(), ".", kFolderFlags));
  std::size_t at = 0;
  for (std::size_t slash = 0; (slash = name.find('/', at)) != std::string::npos; at = slash + 1) {
    if (slash == at) continue;
    const std::string part = name.substr(at, slash - at);
    if (::mkdirat(folder.get(), part.c_str(), 0777) == 0) {
      made_below_.push_back(name.substr(0, slash));
    } else if (errno != EEXIST) {
      return errno;
    }
    // A link here would lead what is written out of the folder that was named.
    folder.Reset(::openat(folder.get(), part.c_str(), kFolderFlags | O_NOFOLLOW));
    if (!folder.ok()) return errno;
  }
  leaf = name.substr(at);
  return 0;
}

int Staging::Add(const std::string& name, std::string_view bytes) {
  std::string leaf;
  Descriptor folder;
  if (const int error = FolderOf(name, leaf, folder)) return error;
  mode_t mode = 0;
  if (const int error = LookAt(folder.get(), leaf, mode)) return error;
  const std::string staged = std::to_string(files_.size());
  CountInterruptFile(slot_);
  Descriptor fd(
      ::openat(own_.get(), staged.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600));
  if (!fd.ok()) return errno;
  files_.push_back({name});
  if (!WriteWhole(fd.get(), bytes)) return errno;
  if (::fchmod(fd.get(), mode) != 0) return errno;
  ::sync_file_range(fd.get(), 0, 0, SYNC_FILE_RANGE_WRITE);  // a head start, no more
  return fd.Close() == 0 ? 0 : errno;
}

// Only once everything is written: the disk then takes the many small files of one set together.
int Staging::Sync() {
  for (std::size_t i = 0; i < files_.size(); ++i) {
    const Descriptor fd(::openat(own_.get(), std::to_string(i).c_str(), O_RDONLY | O_CLOEXEC));
    if (!fd.ok() || ::fsync(fd.get()) != 0) return errno;
  }
  return 0;
}

int Staging::Commit(std::size_t& failed) {
  const HoldInterrupts hold;
  std::set<std::string> folders{"."};
  int result = 0;
  for (failed = 0; failed < files_.size() && result == 0; ++failed) {
    File& file = files_[failed];
    std::string leaf;
    Descriptor folder;
    result = FolderOf(file.name, leaf, folder);
    if (result != 0) break;
    if (::renameat(own_.get(), std::to_string(failed).c_str(), folder.get(), leaf.c_str()) != 0) {
      result = errno;
      break;
    }
    file.moved = arrived_ = true;
    folders.insert(file.name.substr(0, file.name.size() - leaf.size()) + ".");
  }
  // Makes the renames durable, each folder once. One that is not yet durable is no failure.
  for (const std::string& name : folders) {
    const Descriptor folder(::openat(folder_.get(), name.c_str(), kFolderFlags));
    if (folder.ok()) ::fsync(folder.get());
  }
  return result;
}

}  // namespace tillwright
