// The schema: valid by the 2020-12 meta-schema, and of one mind with the reader. The validator is
// Debian's python3-jsonschema.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "support/files.h"
#include "tillwright/read.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

using Json = nlohmann::ordered_json;

// Reads the schema and documents, one JSON text a line; prints a word for each document.
constexpr const char* kValidator = R"(
import json, sys
from jsonschema import Draft202012Validator
schema = json.load(open(sys.argv[1]))
Draft202012Validator.check_schema(schema)
validator = Draft202012Validator(schema)
for line in open(sys.argv[2], encoding='utf-8'):
    print('valid' if validator.is_valid(json.loads(line)) else 'invalid')
)";

std::vector<bool> Verdicts(const std::vector<std::string>& documents) {
  const testing::TemporaryFolder folder;
  testing::WriteFile(folder / "validate.py", kValidator);
  testing::WriteFile(folder / "schema.json", SpecSchema());
  std::string lines;
  for (const std::string& document : documents) {
    // Without comments, on one line.
    lines += Json::parse(document, nullptr, true, true).dump() + "\n";
  }
  testing::WriteFile(folder / "documents", lines);
  const testing::Ran ran = testing::RunShell(
      "/usr/bin/python3 '" + (folder / "validate.py").string() + "' '" +
      (folder / "schema.json").string() + "' '" + (folder / "documents").string() + "'");
  EXPECT_EQ(ran.status, 0) << "is python3-jsonschema there?";
  std::vector<bool> verdicts;
  for (std::size_t at = 0; at < ran.out.size();) {
    const std::size_t end = ran.out.find('\n', at);
    verdicts.push_back(ran.out.substr(at, end - at) == "valid");
    at = end + 1;
  }
  EXPECT_EQ(verdicts.size(), documents.size());
  verdicts.resize(documents.size());
  return verdicts;
}

TEST(Schema, IsTheSameEveryTimeAndPinsItsDraft) {
  EXPECT_EQ(SpecSchema(), SpecSchema());
  EXPECT_EQ(Json::parse(SpecSchema())["$schema"], "https://json-schema.org/draft/2020-12/schema");
}

TEST(Schema, TakesEveryCuratedSpecAndTheStarter) {
  std::vector<std::string> documents{StarterSpec()};
  for (const auto& path : testing::CuratedSpecs()) documents.push_back(testing::ReadFile(path));
  ASSERT_GT(documents.size(), 1U) << "specs/ holds no specs";
  const std::vector<bool> verdicts = Verdicts(documents);
  for (std::size_t i = 0; i < documents.size(); ++i) {
    EXPECT_TRUE(verdicts[i]) << documents[i];
    EXPECT_TRUE(ReadSpec(documents[i]).ok()) << documents[i];
  }
}

// Faults of a kind that a schema can see.
const std::vector<std::string> kBroken{
    R"(7)",
    R"([])",
    R"({})",
    R"({"opening": OPENING})",
    R"({"drawers": [{}]})",
    R"({"opening": OPENING, "drawers": []})",
    R"({"opening": OPENING, "drawers": {}})",
    R"({"opening": OPENING, "drawers": [7]})",
    R"({"opening": OPENING, "drawers": [{}], "layout": {"drawer": {}}})",
    R"({"opening": OPENING, "case": {"width": 9, "height": 9, "depth": 9}, "drawers": [{}]})",
    R"({"opening": {"width": 9, "height": 9}, "drawers": [{}]})",
    R"({"opening": {"width": 9, "height": 9, "depth": null}, "drawers": [{}]})",
    R"({"opening": {"width": 0, "height": 9, "depth": 9}, "drawers": [{}]})",
    R"({"opening": {"width": -9, "height": 9, "depth": 9}, "drawers": [{}]})",
    R"({"opening": {"width": "", "height": 9, "depth": 9}, "drawers": [{}]})",
    R"({"opening": OPENING, "drawers": [{}], "color": 1})",
    R"({"opening": OPENING, "drawers": [{"heigth": 1}]})",
    R"({"opening": OPENING, "drawers": [{}], "units": "cm"})",
    R"({"opening": OPENING, "drawers": [{}], "units": "IN"})",
    R"({"opening": OPENING, "drawers": [{}], "title": 7})",
    R"({"opening": OPENING, "drawers": [{}], "$schema": 7})",
    R"({"opening": OPENING, "drawers": [{}], "round": 0})",
    R"({"opening": OPENING, "drawers": [{}], "fronts": {"gap": -1}})",
    R"({"opening": OPENING, "drawers": [{}], "fronts": {"style": "partial"}})",
    R"({"opening": OPENING, "drawers": [{}], "fronts": {"overlay": []}})",
    R"({"opening": OPENING, "drawers": [{}], "fronts": {"overlay": {"reveal": 1, "top": 1}}})",
    R"({"opening": OPENING, "drawers": [{}], "fronts": {"overlay": {"topp": 1}}})",
    R"({"opening": OPENING, "drawers": [{}], "slides": {"type": "roller"}})",
    R"({"opening": OPENING, "drawers": [{}], "slides": {"lengths": []}})",
    R"({"opening": OPENING, "drawers": [{}], "slides": {"lengths": [0]}})",
    R"({"opening": OPENING, "drawers": [{}], "box": {"bottom": {"open_back": "yes"}}})",
    R"({"opening": OPENING, "drawers": [{}], "box": {"side": 12}})",
    R"({"opening": OPENING, "drawers": [{"weight": "a"}]})",
    R"({"opening": OPENING, "drawers": [{"weight": 0}]})",
    R"({"opening": OPENING, "drawers": [{"load": []}]})",
    R"({"opening": OPENING, "layout": {}})",
    R"({"opening": OPENING, "layout": {"rows": []}})",
    R"({"opening": OPENING, "layout": {"rows": [{}]}})",
    R"({"opening": OPENING, "layout": {"rows": [{"drawer": {}}], "columns": [{"drawer": {}}]}})",
    R"({"opening": OPENING, "drawers": [{}], "season": {"dry": {"temperature": "21 C"}}})",
    R"({"opening": OPENING, "drawers": [{}], "season": {"dry": true}})",
    R"({"opening": OPENING, "drawers": [{}], "measured": {"fronts": {"D1": {"thickness": 1}}}})",
    R"({"opening": OPENING, "drawers": [{}], "spacers": [{}]})",
    R"({"opening": OPENING, "drawers": [{}], "spacers": [{"thickness": 1, "count": 0}]})",
    R"({"opening": OPENING, "drawers": [{}], "spacers": [{"thickness": 1, "count": 1.5}]})",
    R"({"case": {"width": 9, "height": 9, "depth": 9, "back": "nothing"}, "drawers": [{}]})",
    R"({"case": {"width": 9, "height": 9, "depth": 9, "top": false}, "drawers": [{}]})",
};

// Forms of everything a schema might be too narrow for.
const std::vector<std::string> kSound{
    R"({"opening": OPENING, "drawers": [{}]})",
    R"({"$schema": "tillwright.schema.json", "opening": OPENING, "drawers": [{}]})",
    R"({"opening": OPENING, "drawers": [{"weight": "4/3"}, {"weight": 1.5}, {"weight": "1 1/2"}]})",
    R"({"opening": OPENING, "drawers": [{"load": 20}, {"load": "20 lb"}]})",
    R"({"opening": OPENING, "drawers": [{}], "fronts": {"overlay": -1}})",
    R"({"case": {"width": 20, "height": 30, "depth": 20, "top": "none", "back": "none"},
        "fronts": {"overlay": "flush"}, "drawers": [{}]})",
    R"({"case": {"width": 20, "height": 30, "depth": 20},
        "fronts": {"overlay": {"top": "flush", "left": {"reveal": 0}, "right": "1/2"}},
        "drawers": [{}]})",
    R"({"opening": OPENING, "fronts": {"style": "inset", "edge": {"top": 0}}, "drawers": [{}]})",
    R"({"opening": OPENING, "divider": "none", "gap": 0, "drawers": [{}]})",
    R"({"opening": OPENING, "slides": {"length": "auto", "lengths": [12, "14 in"]},
        "drawers": [{}]})",
    R"({"opening": OPENING, "graduate": {"scheme": "arithmetic", "step": 0}, "drawers": [{}, {}]})",
    R"({"opening": OPENING, "layout": {"rows": [{"columns": [{"drawer": {}}, {"open": {}}]},
        {"blank": {"min": 2}, "max": 9}]}})",
    R"({"opening": OPENING, "drawers": [{}], "season": {"made": 8, "dry": "6 %",
        "humid": {"temperature": "70 F", "humidity": 45}}})",
    R"({"opening": OPENING, "drawers": [{}], "measured": {"width": [{"at": 0, "size": 15}],
        "fronts": {"D1": {"height": 3}}}, "spacers": [{"thickness": "0.3 mm", "count": 20}]})",
};

std::vector<std::string> Filled(const std::vector<std::string>& templates) {
  std::vector<std::string> documents;
  for (std::string text : templates) {
    if (const std::size_t at = text.find("OPENING"); at != std::string::npos) {
      text.replace(at, 7, R"({"width": 15, "height": 24, "depth": 21})");
    }
    documents.push_back(text);
  }
  return documents;
}

TEST(Schema, RefusesWhatTheReaderRefusesWhereASchemaCanSeeIt) {
  const std::vector<std::string> documents = Filled(kBroken);
  const std::vector<bool> verdicts = Verdicts(documents);
  for (std::size_t i = 0; i < documents.size(); ++i) {
    EXPECT_FALSE(verdicts[i]) << "the schema takes " << documents[i];
    EXPECT_FALSE(ReadSpec(documents[i]).ok()) << "the reader takes " << documents[i];
  }
}

TEST(Schema, TakesWhatTheReaderTakes) {
  std::vector<std::string> documents = Filled(kSound);
  for (const std::string& text : testing::RandomSpecs(80'000, 300)) {
    if (ReadSpec(text).ok()) documents.push_back(text);
  }
  EXPECT_GT(documents.size(), 150U);
  const std::vector<bool> verdicts = Verdicts(documents);
  for (std::size_t i = 0; i < documents.size(); ++i) {
    EXPECT_TRUE(verdicts[i]) << "the schema refuses " << documents[i];
    const Outcome<Spec> read = ReadSpec(documents[i]);
    EXPECT_TRUE(read.ok()) << DiagnosticsText(read.diagnostics(), "", documents[i], {});
  }
}

}  // namespace
}  // namespace tillwright
