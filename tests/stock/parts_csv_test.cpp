// The parts lists as CSV, read by Python's csv module, a reader that shares nothing with the
// writer.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "support/files.h"
#include "support/memory_files.h"
#include "support/specs.h"
#include "write/csv.h"

namespace tillwright {
namespace {

using Json = nlohmann::json;
using testing::Call;
using testing::Called;
using ::testing::HasSubstr;
using testing::L;
using testing::MemoryFiles;
using ::testing::StartsWith;
using testing::TemporaryFolder;

constexpr const char* kSpec = R"({
  "title": "Lists", "case": {"width": "20", "height": "24 3/8", "depth": "22",
                             "material": "=maple, \"best\"\nply"},
  "fronts": {"material": "+cherry"}, "box": {"side": {"material": "-ash"}},
  "drawers": [{"name": "@one"}, {}] })";

Called Parts(const std::vector<std::string>& more, const char* spec = kSpec) {
  MemoryFiles files;
  files.held["a.json"] = spec;
  std::vector<std::string> args{"parts", "a.json"};
  args.insert(args.end(), more.begin(), more.end());
  return Call(args, files);
}

// The rows as Python reads them, each a list of texts.
Json ReadByPython(const std::string& csv) {
  const TemporaryFolder folder;
  testing::WriteFile(folder / "list.csv", csv);
  const testing::Ran ran = testing::RunShell(
      "python3 -c \"import csv, json, sys; print(json.dumps(list(csv.reader(open(sys.argv[1], "
      "newline='', encoding='utf-8'), strict=True))))\" " +
      (folder / "list.csv").string());
  EXPECT_EQ(ran.status, 0);
  return Json::parse(ran.out);
}

TEST(PartsCsv, PythonReadsWhatTheJsonHolds) {
  const Json lists = Json::parse(Parts({"--json"}).out);
  const Json rows = ReadByPython(Parts({"--format", "csv"}).out);
  ASSERT_EQ(rows.size(), lists["cuts"].size() + 1);
  const auto column = [&](const char* name) {
    for (std::size_t i = 0; i < rows[0].size(); ++i) {
      if (rows[0][i] == name) return i;
    }
    ADD_FAILURE() << "no column " << name;
    return std::size_t{0};
  };
  for (std::size_t i = 1; i < rows.size(); ++i) {
    const Json& row = rows[i];
    const Json& line = lists["cuts"][i - 1];
    ASSERT_EQ(row.size(), rows[0].size());
    EXPECT_EQ(row[column("part")], line["label"]);
    EXPECT_EQ(std::stoi(row[column("pieces")].get<std::string>()), line["count"]);
    for (const char* size : {"length", "width", "thickness", "rough_length", "rough_width"}) {
      const std::string name = size;
      const double mm = std::stod(row[column((name + "_mm").c_str())].get<std::string>());
      EXPECT_DOUBLE_EQ(mm, line[name + "_mm"].get<double>());
      EXPECT_NEAR(std::stod(row[column((name + "_in").c_str())].get<std::string>()), mm / 25.4,
                  0.51e-6);
      const std::string text = row[column(size)];
      ASSERT_TRUE(text.ends_with("\"")) << text;
      EXPECT_EQ(ToMillimeters(L(text.c_str())), mm);
    }
  }
}

TEST(PartsCsv, NoCellStartsAFormula) {
  const Called csv = Parts({"--format", "csv"});
  const Json rows = ReadByPython(csv.out);
  std::size_t guarded = 0;
  for (const Json& row : rows) {
    for (const Json& cell : row) {
      const std::string text = cell;
      if (text.empty()) continue;
      EXPECT_EQ(std::string("=+-@\t\r").find(text[0]), std::string::npos) << text;
      guarded += text[0] == '\'';
    }
  }
  EXPECT_GT(guarded, 3U);
  EXPECT_THAT(csv.out, HasSubstr("\"'=maple, \"\"best\"\" ply\""));
}

TEST(PartsCsv, LinesEndInCrLfAndTheFirstIsTheHeader) {
  const std::string text = Parts({"--format", "csv"}).out;
  EXPECT_THAT(text, StartsWith("part,pieces,mirrored,length_mm,length_in,length,"));
  EXPECT_TRUE(text.ends_with("\r\n"));
  for (std::size_t i = 0; i < text.size(); ++i) {
    ASSERT_EQ(text[i] == '\n', i > 0 && text[i - 1] == '\r') << i;
  }
}

TEST(PartsCsv, HardwareIsReadToo) {
  const Json rows = ReadByPython(Parts({"--format", "hardware-csv"}).out);
  const Json lists = Json::parse(Parts({"--json"}).out);
  ASSERT_EQ(rows.size(), lists["hardware"].size() + 1);
  for (std::size_t i = 1; i < rows.size(); ++i) {
    ASSERT_EQ(rows[i].size(), rows[0].size());
    EXPECT_EQ(rows[i][1], lists["hardware"][i - 1]["what"]);
    EXPECT_EQ(std::stoll(rows[i][2].get<std::string>()), lists["hardware"][i - 1]["amount"]);
  }
}

// A real spreadsheet (LibreOffice Calc, headless), told to read numbers and dates as it likes,
// shows every cell as it was written: no size becomes a date, no name a formula.
TEST(PartsCsv, ASpreadsheetShowsWhatWasWritten) {
  if (testing::RunShell("command -v soffice").status != 0) {
    GTEST_SKIP() << "needs LibreOffice Calc (apt-get install libreoffice-calc-nogui)";
  }
  const TemporaryFolder folder;
  for (const char* format : {"csv", "hardware-csv"}) {
    const std::string csv = Parts({"--format", format}).out;
    testing::WriteFile(folder / "list.csv", csv);
    const std::string at = folder.path().string();
    const std::string numbers_detected = "44,34,76,1,,0,false,true";
    ASSERT_EQ(
        testing::RunShell("soffice -env:UserInstallation=file://" + at +
                          "/profile --headless --infilter='CSV:" + numbers_detected +
                          "' --convert-to 'csv:Text - txt - csv (StarCalc):" + numbers_detected +
                          ",false' --outdir " + at + "/shown " + at + "/list.csv 2>/dev/null")
            .status,
        0);
    EXPECT_EQ(ReadByPython(testing::ReadFile(folder / "shown/list.csv")), ReadByPython(csv));
  }
}

TEST(PartsCsv, MillimetersAreMarkedToo) {
  const Called csv = Parts({"--format", "csv"}, R"({"units": "mm", "drawers": [{}],
    "opening": {"width": 400.5, "height": 300, "depth": 500}})");
  EXPECT_THAT(csv.out, HasSubstr(",12,0.472441,12 mm,"));
}

TEST(Csv, DecimalInchesToSixPlaces) {
  EXPECT_EQ(DecimalInches(L("15 3/8")), "15.375");
  EXPECT_EQ(DecimalInches(L("1/64")), "0.015625");
  EXPECT_EQ(DecimalInches(L("18 mm")), "0.708661");  // 0.70866141…
  EXPECT_EQ(DecimalInches(L("1 mm")), "0.03937");    // 0.0393700787…
  EXPECT_EQ(DecimalInches(L("25.4 mm")), "1");
  EXPECT_EQ(DecimalInches(-L("3/8")), "-0.375");
  EXPECT_EQ(DecimalInches(Length()), "0");
}

TEST(PartsText, GoesToAFileAndFailsAsChecksDo) {
  const Called called = Parts({});
  EXPECT_EQ(called.status, 0);
  EXPECT_THAT(called.out, HasSubstr("Cut list"));
  EXPECT_THAT(called.out, HasSubstr("Hardware"));
  EXPECT_THAT(called.out, HasSubstr("Before you cut"));
  const Called failing = Parts({}, R"({"opening": {"width": 15, "height": 24, "depth": 21},
    "drawers": [{"exact": 12}, {"exact": 12}]})");
  EXPECT_EQ(failing.status, 1);
  EXPECT_THAT(failing.out, HasSubstr("Cut list"));
}

}  // namespace
}  // namespace tillwright
