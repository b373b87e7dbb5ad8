// Staging: files on their way into one folder, written where nobody looks, then moved into place.
//
// All of them wait in a folder of their own below the one they are for, so that names may be as
// long as the system allows and one removal takes away whatever did not arrive. While a staging
// lives, its folder is locked: two runs that write there take turns and never mix. What a run that
// was killed left is taken away by the next one; an interrupt (SIGINT, SIGTERM, SIGHUP) takes away
// its own before it ends the program.
#ifndef TILLWRIGHT_CLI_STAGING_H_
#define TILLWRIGHT_CLI_STAGING_H_

#include <sys/types.h>

#include <string>
#include <string_view>
#include <vector>

namespace tillwright {

// Closes a file descriptor once.
class Descriptor {
 public:
  explicit Descriptor(int fd = -1) : fd_(fd) {}
  ~Descriptor() { Close(); }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;

  void Reset(int fd) {
    Close();
    fd_ = fd;
  }
  [[nodiscard]] int get() const { return fd_; }
  [[nodiscard]] bool ok() const { return fd_ >= 0; }
  int Close();

 private:
  int fd_;
};

// Writes all bytes; false on a failure, with errno set.
[[nodiscard]] bool WriteWhole(int fd, std::string_view bytes);

class Staging {
 public:
  // The folder's name below the one that is written into.
  static constexpr const char* kName = ".tillwright-unfinished";

  Staging() = default;
  ~Staging();
  Staging(const Staging&) = delete;
  Staging& operator=(const Staging&) = delete;

  // Makes the folder (and those above it) when it is not there, waits for its lock, and takes away
  // what an ended run left. Returns 0 or the error.
  int Open(const std::string& folder);
  // True if something of an earlier run was taken away.
  [[nodiscard]] bool cleared() const { return cleared_; }

  // Writes one file, for the place `name` below the folder ("dxf/D1.dxf"). Returns 0 or the error:
  // EISDIR where a folder stands, ELOOP where a link stands among the folders of the name.
  int Add(const std::string& name, std::string_view bytes);
  // Waits until all that was added is on the disk. Returns 0 or the error.
  int Sync();
  // Moves everything into place; on an error `failed` is the index of the file it is about, in the
  // order they were added. What is in place stays.
  int Commit(std::size_t& failed);

 private:
  struct File {
    std::string name;
    bool moved = false;
  };

  // The folder that holds `name`, made when `make` says so; its last part is left in `leaf`.
  int FolderOf(const std::string& name, std::string& leaf, Descriptor& folder);
  int MakeFolders(const std::string& folder);
  int MakeOwnFolder();

  Descriptor folder_;  // locked
  Descriptor own_;     // the folder of what waits
  std::vector<File> files_;
  std::vector<std::string> made_;        // folders above and with the target's, outermost first
  std::vector<std::string> made_below_;  // below it
  int slot_ = -1;
  bool cleared_ = false;
  bool arrived_ = false;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_STAGING_H_
