// Drawings on their way to a folder: what was rendered, and the first thing that could not be.
#ifndef TILLWRIGHT_CLI_RENDERED_FILES_H_
#define TILLWRIGHT_CLI_RENDERED_FILES_H_

#include <string>
#include <utility>
#include <vector>

#include "cli/files.h"
#include "tillwright/render.h"

namespace tillwright {

class RenderedFiles {
 public:
  explicit RenderedFiles(std::string folder) : folder_(std::move(folder)) {}

  void Add(const std::string& name, Rendered rendered) {
    if (!rendered.ok()) Fail(name + ": " + rendered.fault);
    Add(name, std::move(rendered.bytes));
  }
  void Add(const std::string& name, std::string bytes) {
    files_.push_back({InFolder(folder_, name), std::move(bytes)});
  }
  // A file a sheet: a gray preview, or SVG.
  void AddSheets(const std::vector<Sheet>& sheets, bool png) {
    constexpr double kPreviewDpi = 150;
    for (const Sheet& sheet : sheets) {
      Add(sheet.name + (png ? ".png" : ".svg"),
          png ? RenderPng(sheet, kPreviewDpi) : RenderSvg(sheet));
    }
  }
  // Keeps the first fault; an empty one is none.
  void Fail(const std::string& fault) {
    if (fault_.empty()) fault_ = fault;
  }

  [[nodiscard]] const std::string& fault() const { return fault_; }
  [[nodiscard]] const std::vector<FileToWrite>& files() const { return files_; }

 private:
  std::string folder_;
  std::vector<FileToWrite> files_;
  std::string fault_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_RENDERED_FILES_H_
