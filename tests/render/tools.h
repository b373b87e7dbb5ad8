// Other programs that read what the renderers write, and pictures as they see them.
#ifndef TILLWRIGHT_TESTS_RENDER_TOOLS_H_
#define TILLWRIGHT_TESTS_RENDER_TOOLS_H_

#include <string>
#include <vector>

namespace tillwright {

// Is there such a program on the path?
[[nodiscard]] bool HasTool(const std::string& name);

struct ToolRun {
  int status = -1;     // of the shell command; 0: well
  std::string output;  // standard output and error
};
// Runs a shell command.
[[nodiscard]] ToolRun RunTool(const std::string& command);

// A file in the test's own directory; removed with the object.
class TempFile {
 public:
  TempFile(const std::string& suffix, const std::string& bytes);
  ~TempFile();
  TempFile(const TempFile&) = delete;
  TempFile& operator=(const TempFile&) = delete;
  [[nodiscard]] const std::string& path() const { return path_; }
  [[nodiscard]] std::string Read() const;

 private:
  std::string path_;
};

// Gray pixels, row by row from the top; 0 is black.
struct GrayPicture {
  unsigned width = 0;
  unsigned height = 0;
  std::vector<unsigned char> pixels;

  [[nodiscard]] unsigned char At(unsigned x, unsigned y) const { return pixels[y * width + x]; }
};
// Transparent pixels show white. Empty when the bytes are not a PNG.
[[nodiscard]] GrayPicture DecodePng(const std::string& bytes);

// The center of darkness within 0.9 mm of where a line should be, mm; `gray(i)` is the pixel i of a
// row or column of `size` pixels.
template <class Gray>
[[nodiscard]] double CenterOfLine(double expected, double dpi, unsigned size, const Gray& gray) {
  const auto from = static_cast<unsigned>((expected - 0.9) * dpi / 25.4);
  const auto to = static_cast<unsigned>((expected + 0.9) * dpi / 25.4);
  double mass = 0;
  double moment = 0;
  for (unsigned i = from; i <= to && i < size; ++i) {
    const double dark = 255.0 - gray(i);
    mass += dark;
    moment += dark * (i + 0.5);
  }
  return moment / mass * 25.4 / dpi;
}

}  // namespace tillwright

#define TILLWRIGHT_NEEDS_TOOL(name) \
  if (!HasTool(name)) GTEST_SKIP() << "needs " << (name) << " on the path"

#endif  // TILLWRIGHT_TESTS_RENDER_TOOLS_H_
