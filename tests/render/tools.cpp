#include "render/tools.h"

#include <gtest/gtest.h>
#include <png.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <fstream>
#include <sstream>

namespace tillwright {

bool HasTool(const std::string& name) {
  return RunTool("command -v " + name + " > /dev/null").status == 0;
}

ToolRun RunTool(const std::string& command) {
  ToolRun run;
  FILE* pipe = popen((command + " 2>&1").c_str(), "r");
  if (pipe == nullptr) return run;
  std::array<char, 4096> buffer{};
  for (std::size_t n = 0; (n = std::fread(buffer.data(), 1, buffer.size(), pipe)) > 0;) {
    run.output.append(buffer.data(), n);
  }
  const int status = pclose(pipe);
  run.status = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
  return run;
}

TempFile::TempFile(const std::string& suffix, const std::string& bytes) {
  static int count = 0;
  path_ = testing::TempDir() + "tillwright-" + std::to_string(getpid()) + "-" +
          std::to_string(++count) + suffix;
  std::ofstream(path_, std::ios::binary) << bytes;
}

TempFile::~TempFile() { std::remove(path_.c_str()); }

std::string TempFile::Read() const {
  std::ostringstream bytes;
  bytes << std::ifstream(path_, std::ios::binary).rdbuf();
  return bytes.str();
}

GrayPicture DecodePng(const std::string& bytes) {
  GrayPicture picture;
  png_image image{};
  image.version = PNG_IMAGE_VERSION;
  if (png_image_begin_read_from_memory(&image, bytes.data(), bytes.size()) == 0) return picture;
  image.format = PNG_FORMAT_GRAY;
  picture.width = image.width;
  picture.height = image.height;
  picture.pixels.resize(PNG_IMAGE_SIZE(image));
  const png_color white{255, 255, 255};
  png_image_finish_read(&image, &white, picture.pixels.data(), 0, nullptr);
  return picture;
}

}  // namespace tillwright
