// The one direction of the house: every #include in include/ and src/ against the table of layers.
//
//   diag → length → spec → bank → solve → assembly → check → stock → draw, with text and sheet, the
//   kernel of drawings, beside them for draw and render, read and write for the formats and cli on
//   top.
//
// spec.h holds the choices (slide types, joints …) as enumerations, which bank.h and the drawings
// use, so bank and draw may see spec.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "support/files.h"

namespace tillwright {
namespace {

namespace fs = std::filesystem;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::Not;
using Names = std::set<std::string, std::less<>>;

const std::map<std::string, Names, std::less<>> kMayInclude{
    {"diag", {}},
    {"length", {"diag"}},
    {"text", {"diag"}},
    {"spec", {"diag", "length"}},
    {"bank", {"diag", "length", "spec"}},
    {"solve", {"diag", "length", "spec", "bank"}},
    {"assembly", {"diag", "length", "spec", "bank"}},
    {"check", {"diag", "length", "spec", "bank", "solve", "assembly"}},
    {"nest", {"diag", "length"}},
    {"stock", {"diag", "length", "spec", "bank", "solve", "assembly", "check", "nest"}},
    {"dimension",
     {"diag", "length", "spec", "bank", "solve", "assembly", "check", "nest", "stock"}},
    {"sheet", {"diag", "length", "text"}},
    {"draw",
     {"diag", "length", "text", "spec", "bank", "assembly", "check", "nest", "stock", "dimension",
      "sheet"}},
    {"render", {"diag", "length", "text", "sheet"}},
    {"read", {"diag", "length", "spec"}},
    {"write",
     {"diag", "length", "text", "spec", "bank", "assembly", "check", "nest", "stock", "dimension",
      "sheet", "draw", "read"}},
    {"cli",
     {"diag", "length", "text", "spec", "bank", "solve", "assembly", "check", "nest", "stock",
      "dimension", "sheet", "draw", "render", "read", "write"}},
};

// Which layer a public header belongs to.
const std::map<std::string, std::string, std::less<>> kHeaderLayers{
    {"diagnostic", "diag"},
    {"length", "length"},
    {"length_text", "length"},
    {"rational", "length"},
    {"nest", "nest"},
    {"spec", "spec"},
    {"words", "spec"},
    {"assembly", "assembly"},
    {"bank", "bank"},
    {"trace", "bank"},
    {"solve", "solve"},
    {"check", "check"},
    {"paper", "sheet"},
    {"sheet", "sheet"},
    {"draw", "draw"},
    {"stick", "draw"},
    {"text_metrics", "sheet"},
    {"render", "render"},
    {"keys", "read"},
    {"gap_check", "check"},
    {"read", "read"},
    {"write", "write"},
    {"version", "cli"},
    {"dimensions", "dimension"},
    {"parts", "stock"},
    {"stock", "stock"},
    {"stock_draw", "draw"},
};

struct Guest {
  std::string_view begins;              // the include
  std::vector<std::string_view> homes;  // the files (by how their path begins) that may have it
};

// What is not ours and not everywhere: libraries, the system, and parts of the standard library
// that the core does without so that the same bytes come out on every machine.
const std::vector<Guest> kGuests{
    {"nlohmann/", {"src/read/", "src/write/"}},
    {"CLI/", {"src/cli/options.cpp"}},
    {"boost/", {"src/solve/apportion.cpp"}},
    {"cairo", {"src/render/"}},
    {"ft2build", {"src/render/"}},
    {"FT_", {"src/render/"}},
    {"freetype", {"src/render/"}},
    {"png", {"src/render/"}},
    {"csetjmp", {"src/render/"}},
    {"setjmp", {"src/render/"}},
    {"fcntl", {"src/cli/"}},
    {"signal", {"src/cli/"}},
    {"sys/", {"src/cli/"}},
    {"unistd", {"src/cli/"}},
    {"filesystem", {"src/cli/"}},
    {"iostream", {}},
    {"istream", {}},
    {"ostream", {}},
    {"fstream", {"src/cli/"}},
    {"sstream", {}},
    {"iomanip", {}},
    {"regex", {}},
    {"format", {}},
    {"locale", {}},
    {"clocale", {}},
    {"random", {}},
    {"chrono", {"src/cli/"}},
    {"ctime", {}},
    {"thread", {"src/nest/search.cpp"}},
    {"future", {}},
    {"mutex", {}},
    {"ranges", {}},
};

// The layer of a file, or of what an include in quotes names; empty when there is none.
std::string LayerOf(std::string_view path) {
  for (const std::string_view head : {"src/", "include/"}) {
    if (path.starts_with(head)) path.remove_prefix(head.size());
  }
  const std::string_view folder = path.substr(0, path.find('/'));
  if (folder != "tillwright") return kMayInclude.contains(folder) ? std::string(folder) : "";
  const std::string_view name = path.substr(folder.size() + 1);
  const auto found = kHeaderLayers.find(name.substr(0, name.find('.')));
  return found == kHeaderLayers.end() ? "" : found->second;
}

void CheckOurs(std::string_view file, std::string_view include, std::vector<std::string>& out) {
  const std::string from = LayerOf(file);
  const std::string to = LayerOf(include);
  const std::string what = std::string(file) + " includes \"" + std::string(include) + "\"";
  if (to.empty()) {
    out.push_back(what + ", which is in no layer");
  } else if (file.starts_with("include/") && !include.starts_with("tillwright/")) {
    out.push_back(what + ": a public header sees public headers only");
  } else if (from != to && !kMayInclude.at(from).contains(to)) {
    out.push_back(what + ": " + from + " may not see " + to);
  }
}

void CheckGuest(std::string_view file, std::string_view include, std::vector<std::string>& out) {
  const auto fits = [&](std::string_view begins) {
    if (!include.starts_with(begins)) return false;
    // A whole name ("format", not "formatter"), unless the guest is a family of names.
    const std::string_view rest = include.substr(begins.size());
    return begins.ends_with('/') || begins.ends_with('_') || begins == "cairo" || rest.empty() ||
           rest.front() == '.' || rest.front() == '/';
  };
  for (const Guest& guest : kGuests) {
    if (!fits(guest.begins)) continue;
    for (const std::string_view home : guest.homes) {
      if (file.starts_with(home)) return;
    }
    out.push_back(std::string(file) + " includes <" + std::string(include) +
                  ">, which has no place there");
  }
}

// What is wrong with the includes of one file. `file` is its path from the source folder.
std::vector<std::string> Violations(std::string_view file, std::string_view text) {
  std::vector<std::string> out;
  if (LayerOf(file).empty()) return {std::string(file) + " is in no layer"};
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    std::string_view line = text.substr(at, end - at);
    at = end + 1;
    const auto skip = [&](std::string_view any) {
      line.remove_prefix(std::min(line.find_first_not_of(any), line.size()));
    };
    skip(" \t");
    if (!line.starts_with('#')) continue;
    line.remove_prefix(1);
    skip(" \t");
    if (!line.starts_with("include")) continue;
    line.remove_prefix(7);
    skip(" \t");
    const bool ours = line.starts_with('"');
    if (ours || line.starts_with('<')) line.remove_prefix(1);
    line = line.substr(0, line.find_first_of("\">"));
    ours ? CheckOurs(file, line, out) : CheckGuest(file, line, out);
  }
  return out;
}

std::vector<fs::path> SourceFiles() {
  std::vector<fs::path> files;
  for (const char* folder : {"include", "src"}) {
    for (const auto& entry : fs::recursive_directory_iterator(testing::SourcePath(folder))) {
      const fs::path extension = entry.path().extension();
      if (extension == ".h" || extension == ".cpp") files.push_back(entry.path());
    }
  }
  return files;
}

TEST(Layers, EveryIncludeGoesTheOneWay) {
  const std::vector<fs::path> files = SourceFiles();
  ASSERT_GT(files.size(), 50U) << "the walk found too few files";
  for (const fs::path& path : files) {
    const std::string file = path.lexically_relative(testing::SourcePath(".")).generic_string();
    EXPECT_THAT(Violations(file, testing::ReadFile(path)), IsEmpty());
  }
}

TEST(Layers, TheTableHasNoWayBack) {
  for (const auto& [layer, below] : kMayInclude) {
    for (const std::string& other : below) {
      EXPECT_FALSE(kMayInclude.at(other).contains(layer)) << layer << " and " << other;
    }
  }
}

struct Planted {
  const char* file;
  const char* text;
};

TEST(Layers, APlantedViolationIsFound) {
  for (const Planted& row : {
           Planted{"src/length/a.cpp", "#include \"tillwright/spec.h\"\n"},
           Planted{"src/length/a.cpp", "#include \"solve/apportion.h\"\n"},
           Planted{"src/solve/a.cpp", "#include \"draw/sheets.h\"\n"},
           Planted{"src/solve/a.cpp", "// fine\n  #  include <nlohmann/json.hpp>"},
           Planted{"src/draw/a.cpp", "#include \"tillwright/render.h\"\n"},
           Planted{"src/draw/a.cpp", "#include <cairo.h>\n"},
           Planted{"src/render/a.cpp", "#include \"tillwright/bank.h\"\n"},
           Planted{"src/read/a.cpp", "#include \"tillwright/solve.h\"\n"},
           Planted{"src/cli/app.cpp", "#include <CLI/CLI.hpp>\n"},
           Planted{"src/solve/layout.cpp", "#include <boost/multiprecision/cpp_int.hpp>\n"},
           Planted{"src/check/a.cpp", "#include <iostream>\n"},
           Planted{"src/write/a.cpp", "#include <regex>\n"},
           Planted{"src/spec/a.cpp", "#include <format>\n"},
           Planted{"src/solve/a.cpp", "#include <unistd.h>\n"},
           Planted{"src/solve/a.cpp", "#include <filesystem>\n"},
           Planted{"src/write/a.cpp", "#include FT_FREETYPE_H\n"},
           Planted{"include/tillwright/length.h", "#include \"length/length_scan.h\"\n"},
           Planted{"include/tillwright/write.h", "#include <nlohmann/json.hpp>\n"},
           Planted{"include/tillwright/bank.h", "#include \"tillwright/solve.h\"\n"},
           Planted{"src/length/a.cpp", "#include \"nowhere/a.h\"\n"},
           Planted{"src/newfolder/a.cpp", ""},
           Planted{"include/tillwright/newheader.h", ""},
       }) {
    EXPECT_THAT(Violations(row.file, row.text), Not(IsEmpty())) << row.file << "\n" << row.text;
  }
}

TEST(Layers, WhatTheTableAllowsIsFine) {
  for (const Planted& row : {
           Planted{"src/solve/apportion.cpp", "#include <boost/multiprecision/cpp_int.hpp>\n"},
           Planted{"src/read/a.cpp", "#include <nlohmann/json.hpp>\n#include \"read/b.h\"\n"},
           Planted{"src/cli/options.cpp",
                   "#include <CLI/CLI.hpp>\n#include \"tillwright/draw.h\"\n"},
           Planted{"src/draw/a.cpp", "// #include <cairo.h>\n#include <vector>\n"},
           Planted{"include/tillwright/solve.h",
                   "#include \"tillwright/bank.h\"\n#include <span>\n"},
       }) {
    EXPECT_THAT(Violations(row.file, row.text), IsEmpty());
  }
  EXPECT_THAT(Violations("src/bank/a.cpp", "#include \"tillwright/draw.h\"\n"),
              ElementsAre("src/bank/a.cpp includes \"tillwright/draw.h\": bank may not see draw"));
}

}  // namespace
}  // namespace tillwright
