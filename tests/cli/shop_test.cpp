// The shop packet as it lands in its folder: whole, linked and valid.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <regex>
#include <set>
#include <string>
#include <vector>

#include "support/files.h"
#include "support/memory_files.h"

namespace tillwright {
namespace {

using testing::Called;
using ::testing::HasSubstr;
using testing::MemoryFiles;

struct Made {
  Called called;
  MemoryFiles files;
};

Made MakePacket(const std::string& spec) {
  Made made;
  made.files.held["job.json"] = spec;
  made.called = testing::Call({"shop", "job.json", "-o", "packet"}, made.files);
  return made;
}

std::vector<std::string> AllOf(const std::string& text, const char* pattern) {
  std::vector<std::string> found;
  const std::regex regex(pattern);
  for (std::sregex_iterator it(text.begin(), text.end(), regex), end; it != end; ++it) {
    found.push_back((*it)[1]);
  }
  return found;
}

std::string Pedestal() {
  return testing::ReadFile(testing::SourcePath("specs/sewing-frame-pedestal.json"));
}

TEST(Shop, EveryLinkOfThePageLeadsToAFileOfThePacketAndBack) {
  const Made made = MakePacket(Pedestal());
  EXPECT_EQ(made.called.status, 0) << made.called.err;
  const std::string& page = made.files.held.at("packet/index.html");
  std::set<std::string> linked{"packet/index.html"};
  for (const std::string& link : AllOf(page, "href=\"([^\"#][^\"]*)\"")) {
    EXPECT_TRUE(made.files.held.contains("packet/" + link)) << link;
    linked.insert("packet/" + link);
  }
  for (const auto& [path, bytes] : made.files.held) {
    if (path == "job.json") continue;
    EXPECT_TRUE(linked.contains(path)) << path << " is not on the page";
    EXPECT_FALSE(bytes.empty()) << path;
  }
}

TEST(Shop, IdsOfThePageAreUniqueAndItsOwnLinksLeadSomewhere) {
  const Made made = MakePacket(Pedestal());
  const std::string& page = made.files.held.at("packet/index.html");
  std::set<std::string> ids;
  for (const std::string& id : AllOf(page, " id=\"([^\"]*)\"")) {
    EXPECT_TRUE(ids.insert(id).second) << id << " twice";
  }
  for (const std::string& link : AllOf(page, "href=\"#([^\"]*)\"")) {
    EXPECT_TRUE(ids.contains(link)) << link;
  }
}

TEST(Shop, ThePageNeedsNoNetwork) {
  const Made made = MakePacket(Pedestal());
  const std::string& page = made.files.held.at("packet/index.html");
  for (const std::string& address : AllOf(page, "(https?://[^\"' <]*)")) {
    EXPECT_THAT(address, HasSubstr("www.w3.org/"));  // the names of SVG, never fetched
  }
  EXPECT_EQ(page.find("<script"), std::string::npos);
}

// One list to stand in the shop with: sheets, boards with their measure, the proof, the hardware.
TEST(Shop, ToBuyListsStockAndHardware) {
  const Made made = MakePacket(Pedestal());
  const std::string& page = made.files.held.at("packet/index.html");
  const std::size_t from = page.find("<section id=\"buy\">");
  ASSERT_NE(from, std::string::npos);
  const std::string buy = page.substr(from, page.find("</section>", from) - from);
  EXPECT_THAT(buy, HasSubstr("board feet"));
  EXPECT_THAT(buy, HasSubstr("cubic meters"));
  EXPECT_THAT(buy, HasSubstr("no layout with edge-to-edge cuts"));
  EXPECT_THAT(buy, HasSubstr("black cherry"));
  EXPECT_THAT(buy, HasSubstr("wood glue"));
  EXPECT_LT(from, page.find("<section id=\"cuts\">"));
}

// A packet made over a larger one names what is left of it, and deletes nothing.
TEST(Shop, NamesTheFilesOfAnEarlierPacketThatAreNotPartOfThisOne) {
  MemoryFiles files;
  files.held["job.json"] = Pedestal();
  const Called first = testing::Call({"shop", "job.json", "-o", "packet"}, files);
  EXPECT_EQ(first.err.find("earlier packet"), std::string::npos);
  files.held["packet/mine.txt"] = "my own notes";
  files.held["job.json"] = R"({"opening": {"width": 15, "height": 20, "depth": 20},
      "drawers": [{}]})";
  const Called second = testing::Call({"shop", "job.json", "-o", "packet"}, files);
  EXPECT_EQ(second.status, 0) << second.err;
  EXPECT_THAT(second.err, HasSubstr("packet/dxf/box-side-d4.dxf is left over from an earlier packet"));
  EXPECT_EQ(second.err.find("mine.txt"), std::string::npos);
  EXPECT_EQ(second.err.find("index.html is left"), std::string::npos);
  EXPECT_TRUE(files.held.contains("packet/mine.txt"));
}

TEST(Shop, TheSameJobGivesTheSameBytes) {
  EXPECT_EQ(MakePacket(Pedestal()).files.held, MakePacket(Pedestal()).files.held);
}

TEST(Shop, AFailingCheckStillGivesTheWholePacketAndSaysSo) {
  const Made made = MakePacket(R"({"opening": {"width": 15, "height": 20, "depth": 20},
      "drawers": [{"exact": 10}, {"exact": 11}]})");
  EXPECT_EQ(made.called.status, 1);
  EXPECT_THAT(made.files.held.at("packet/index.html"), HasSubstr("Do not cut yet"));
}

TEST(Shop, PartsWithoutAPlaceFailThePacketToo) {
  const Made made = MakePacket(R"({"opening": {"width": 15, "height": 20, "depth": 20},
      "drawers": [{}], "stock": {"sheets": [{"length": 12, "width": 9}]}})");
  EXPECT_EQ(made.called.status, 1);
  EXPECT_THAT(made.files.held.at("packet/index.html"), HasSubstr("did not fit"));
  EXPECT_FALSE(made.files.held.contains("packet/stock.pdf"));
}

TEST(Shop, AFolderMayEndInASlash) {
  MemoryFiles files;
  files.held["job.json"] = Pedestal();
  const Called called = testing::Call({"shop", "job.json", "-o", "packet/"}, files);
  EXPECT_EQ(called.status, 0) << called.err;
  EXPECT_THAT(called.err, HasSubstr("wrote packet/index.html"));
  EXPECT_TRUE(files.held.contains("packet/index.html"));
}

TEST(Stock, AFormatAsksForAFolder) {
  for (const char* format : {"svg", "pdf", "png"}) {
    MemoryFiles files;
    files.held["job.json"] = Pedestal();
    const Called called = testing::Call({"stock", "job.json", "--format", format}, files);
    EXPECT_EQ(called.status, 2) << format;
    EXPECT_EQ(called.out, "") << format;
    EXPECT_THAT(called.err, HasSubstr("name a folder with -o")) << format;
  }
}

TEST(Shop, OneFileOnStandardOutputIsRefused) {
  MemoryFiles files;
  files.held["job.json"] = Pedestal();
  EXPECT_EQ(testing::Call({"shop", "job.json", "-o", "-"}, files).status, 2);
}

// HTML Tidy (Debian: tidy) as the reader that is not ours; it warns of what HTML5 does not allow.
TEST(Shop, TheHtmlIsValid) {
  if (testing::RunShell("command -v tidy").status != 0) GTEST_SKIP() << "tidy is not installed";
  const Made made = MakePacket(Pedestal());
  const testing::TemporaryFolder folder;
  testing::WriteFile(folder / "index.html", made.files.held.at("packet/index.html"));
  const std::string file = (folder / "index.html").string();
  EXPECT_EQ(testing::RunShell("tidy -e -q -utf8 '" + file + "' 2>&1").out, "");
}

}  // namespace
}  // namespace tillwright
