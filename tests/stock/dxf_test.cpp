// DXF of the sheet parts, read back by Debian's python3-ezdxf: an audit without errors or fixes,
// and the sizes it finds.
#include "write/dxf.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "support/files.h"
#include "support/memory_files.h"
#include "support/specs.h"

namespace tillwright {
namespace {

using Json = nlohmann::json;
using testing::Call;
using ::testing::HasSubstr;
using testing::L;
using testing::MemoryFiles;
using testing::MustSolve;
using ::testing::Not;
using testing::Solved;
using testing::TemporaryFolder;

// For each file: its audit, layers, closed polygons with their layers, circles and texts.
constexpr const char* kReader = R"(
import json, sys
import ezdxf
out = {}
for path in sys.argv[1:]:
    document = ezdxf.readfile(path)
    audit = document.audit()
    space = document.modelspace()
    out[path.rsplit("/", 1)[1]] = {
        "version": document.dxfversion, "errors": len(audit.errors), "fixes": len(audit.fixes),
        "layers": [layer.dxf.name for layer in document.layers],
        "polygons": [{"layer": line.dxf.layer, "closed": line.is_closed,
                      "points": [[v.dxf.location.x, v.dxf.location.y] for v in line.vertices]}
                     for line in space.query("POLYLINE")],
        "circles": [[c.dxf.layer, c.dxf.center.x, c.dxf.center.y, c.dxf.radius]
                    for c in space.query("CIRCLE")],
        "texts": [text.dxf.text for text in space.query("TEXT")]}
print(json.dumps(out))
)";

// The Python that has ezdxf, or nothing.
std::string Python() {
  for (const char* python : {"python3", "/usr/bin/python3"}) {
    if (testing::RunShell(std::string(python) + " -c 'import ezdxf' 2>/dev/null").status == 0) {
      return python;
    }
  }
  return {};
}

class DxfFiles : public ::testing::Test {
 protected:
  void SetUp() override {
    if (Python().empty()) GTEST_SKIP() << "needs Debian's python3-ezdxf (apt-get install it)";
  }

  static Json Read(const std::vector<NamedText>& files) {
    const TemporaryFolder folder;
    testing::WriteFile(folder / "read.py", kReader);
    std::string command = Python() + " " + (folder / "read.py").string();
    for (const NamedText& file : files) {
      testing::WriteFile(folder / file.name, file.text);
      command += " " + (folder / file.name).string();
    }
    const testing::Ran ran = testing::RunShell(command);
    EXPECT_EQ(ran.status, 0);
    return Json::parse(ran.out);
  }

  static Json ReadSpecText(const std::string& text) {
    const Solved solved = MustSolve(text);
    return Read(PartDxfFiles(solved.bank, CutList(solved.spec, solved.bank)));
  }
};

Json Polygon(const Json& file, const std::string& layer) {
  for (const Json& polygon : file["polygons"]) {
    if (polygon["layer"] == layer) return polygon["points"];
  }
  ADD_FAILURE() << "nothing on layer " << layer << " in " << file.dump(1);
  return {};
}

Json Box(double left, double lower, double right, double upper) {
  return {{left, lower}, {right, lower}, {right, upper}, {left, upper}};
}

TEST_F(DxfFiles, PassAnAuditWithoutErrorsOrFixes) {
  std::size_t files = 0;
  for (const auto& path : testing::CuratedSpecs()) {
    SCOPED_TRACE(path);
    const Json read = ReadSpecText(testing::ReadFile(path));
    for (const auto& [name, file] : read.items()) {
      SCOPED_TRACE(name);
      ++files;
      EXPECT_EQ(file["version"], "AC1009");
      EXPECT_EQ(file["errors"], 0);
      EXPECT_EQ(file["fixes"], 0);
      for (const Json& polygon : file["polygons"]) {
        EXPECT_EQ(polygon["closed"], true);
        EXPECT_EQ(polygon["points"].size(), 4U);
      }
      EXPECT_FALSE(Polygon(file, "OUTLINE").empty());
    }
  }
  EXPECT_GT(files, 40U);
}

constexpr const char* kCase = R"({"units": "mm",
  "case": {"width": 500, "height": 600, "depth": 400, "material": "birch plywood",
           "joint": {"type": "dado", "depth": 6}, "raise": 50,
           "back": {"fit": "groove", "thickness": 6, "inset": 12, "depth": 7.5}},
  "fronts": {"material": "birch plywood", "pull": {"centers": 96}}, "divider": 18,
  "drawers": [{}, {}]})";

// A side stands 600 high and 400 deep, its front edge to the left: dados of 18 at 50 and at the
// upper end, a groove of 6, 12 in from the rear. The right one is its mirror image.
TEST_F(DxfFiles, CaseSidesByHand) {
  const Json files = ReadSpecText(kCase);
  const Json& left = files["case-side-left.dxf"];
  EXPECT_EQ(Polygon(left, "OUTLINE"), Box(0, 0, 400, 600));
  EXPECT_EQ(Polygon(left, "DADO_D6MM"), Box(0, 50, 400, 68));
  EXPECT_EQ(Polygon(left, "RABBET_D6MM"), Box(0, 582, 400, 600));
  EXPECT_EQ(Polygon(left, "GROOVE_D7_5MM"), Box(382, 0, 388, 600));
  const Json& right = files["case-side-right.dxf"];
  EXPECT_EQ(Polygon(right, "GROOVE_D7_5MM"), Box(18, 0, 12, 600));
  EXPECT_EQ(left["texts"], Json({"case side, left"}));
  // Both have the divider's dado, the second on its layer.
  for (const Json& side : {left, right}) {
    int dados = 0;
    for (const Json& polygon : side["polygons"]) dados += polygon["layer"] == "DADO_D6MM";
    EXPECT_EQ(dados, 2);
  }
}

// 96 between centers in the middle of a front; holes go through.
TEST_F(DxfFiles, HolesForPulls) {
  const Json files = ReadSpecText(kCase);
  const Json& front = files["front-d1-d2.dxf"];
  ASSERT_EQ(front["circles"].size(), 2U);
  EXPECT_EQ(front["circles"][0][0], "HOLE_D19MM");
  EXPECT_EQ(front["circles"][1][1].get<double>() - front["circles"][0][1].get<double>(), 96);
  EXPECT_EQ(front["circles"][0][3], 2.5);
}

TEST_F(DxfFiles, BandsMakeTheOutlineSmaller) {
  const Json files = ReadSpecText(R"({"units": "mm", "edge_band": {"thickness": 1},
    "case": {"width": 500, "height": 600, "depth": 400}, "drawers": [{}]})");
  EXPECT_EQ(Polygon(files["case-side-left.dxf"], "OUTLINE"), Box(1, 0, 400, 600));
  EXPECT_EQ(Polygon(files["case-side-right.dxf"], "OUTLINE"), Box(399, 0, 0, 600));
  EXPECT_EQ(Polygon(files["case-bottom.dxf"], "OUTLINE"), Box(0, 1, 464, 394));
  EXPECT_EQ(Polygon(files["front-d1.dxf"], "OUTLINE")[0], Json({1, 1}));
}

// A partition with dividers on both sides has a file for each face.
TEST_F(DxfFiles, BothFacesOfAPartition) {
  const Json files = ReadSpecText(R"({"units": "mm",
    "case": {"width": 800, "height": 600, "depth": 400, "joint": {"type": "dado", "depth": 6}},
    "layout": {"columns": [{"rows": [{"drawer": {}}, {"drawer": {}}], "divider": 18},
                           {"rows": [{"drawer": {"exact": 100}}, {"drawer": {}}], "divider": 18}]}})");
  const Json& right = files["partition-v1.dxf"];
  const Json& left = files["partition-v1-other-face.dxf"];
  EXPECT_NE(Polygon(right, "DADO_D6MM"), Polygon(left, "DADO_D6MM"));
  EXPECT_EQ(left["texts"], Json({"partition V1, other face"}));
}

// A bottom of 464 and two tongues of 6: its rabbets, 12 deep, are in the face below, so its own file
// has none; the side's dado ends at the bottom's upper face.
TEST_F(DxfFiles, RabbetsThatLeaveTongues) {
  const Json files = ReadSpecText(R"({"units": "mm", "case": {"width": 500, "height": 600,
    "depth": 400, "back": "none", "joint": {"type": "tongue-and-dado", "depth": 6}}, "drawers": [{}]})");
  EXPECT_EQ(Polygon(files["case-side.dxf"], "DADO_D6MM"), Box(0, 12, 400, 18));
  const Json& below = files["case-bottom-other-face.dxf"];
  EXPECT_EQ(Polygon(below, "OUTLINE"), Box(476, 0, 0, 400));
  EXPECT_EQ(Polygon(below, "RABBET_D12MM"), Box(476, 0, 470, 400));
  EXPECT_EQ(below["polygons"].size(), 3U);
  EXPECT_EQ(files["case-bottom.dxf"]["polygons"].size(), 1U);
}

TEST(DxfText, IsAsciiInOneLine) {
  EXPECT_EQ(DxfText("D1\u2013D3"), "D1\\U+2013D3");
  EXPECT_EQ(DxfText("a\r\n  0\nEOF\x7f"), "a    0 EOF ");
  EXPECT_EQ(DxfText("\U0001F600\xff"), "??");
  EXPECT_EQ(DxfText("plain"), "plain");
}

TEST(DxfCommand, WritesAFolderAndNothingElse) {
  MemoryFiles files;
  files.held["a.json"] = kCase;
  EXPECT_EQ(Call({"parts", "a.json", "--format", "dxf"}, files).status, 2);
  EXPECT_EQ(Call({"parts", "a.json", "--format", "dxf", "-o", "-"}, files).status, 2);
  EXPECT_EQ(files.held.size(), 1U);
  EXPECT_EQ(Call({"parts", "a.json", "--format", "dxf", "-o", "out"}, files).status, 0);
  EXPECT_TRUE(files.held.contains("out/case-side-left.dxf"));
  EXPECT_THAT(files.held["out/case-back.dxf"], HasSubstr("1 unit is 1 mm"));
  EXPECT_THAT(files.held["out/case-back.dxf"], Not(HasSubstr("\n\n")));
}

TEST(DxfCommand, SaysWhenThereIsNoSheetStock) {
  MemoryFiles files;
  files.held["a.json"] = R"({"opening": {"width": 15, "height": 24, "depth": 21}, "drawers": [{}],
    "fronts": {"material": "oak"}, "box": {"side": {"material": "oak"}, "end": {"material": "oak"},
    "bottom": {"material": "oak"}}})";
  const testing::Called called = Call({"parts", "a.json", "--format", "dxf", "-o", "out"}, files);
  EXPECT_EQ(called.status, 2);
  EXPECT_THAT(called.err, HasSubstr("no sheet parts"));
}

}  // namespace
}  // namespace tillwright
