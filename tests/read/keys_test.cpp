// The table of keys, the schema and the reader know the same keys.
#include "tillwright/keys.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>

#include "support/schema_walk.h"
#include "tillwright/read.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

using testing::Json;
using testing::ReachedObject;

Json Schema() { return Json::parse(SpecSchema()); }

const Json& DefinitionOf(const Json& schema, std::string_view object) {
  return object == "spec" ? schema : schema["$defs"].at(std::string(object));
}

TEST(Keys, TheSchemaListsTheKeysOfTheTableAndNoOthers) {
  const Json schema = Schema();
  for (const ObjectRow& row : SpecObjects()) {
    SCOPED_TRACE(row.name);
    const Json& definition = DefinitionOf(schema, row.name);
    EXPECT_EQ(definition["additionalProperties"], false);
    std::set<std::string> in_schema;
    for (const auto& [key, property] : definition["properties"].items()) {
      EXPECT_TRUE(in_schema.insert(key).second);
      EXPECT_FALSE(property["description"].get<std::string>().empty()) << key;
    }
    std::set<std::string> in_table;
    for (const KeyRow& key : row.keys) {
      EXPECT_TRUE(in_table.emplace(key.key).second) << key.key << " stands twice";
    }
    EXPECT_EQ(in_schema, in_table);
  }
}

TEST(Keys, EveryObjectOfTheTableCanBeReached) {
  std::set<std::string> reached;
  for (const ReachedObject& at : testing::ReachObjects(Schema())) reached.insert(at.name);
  std::set<std::string> in_table;
  for (const ObjectRow& row : SpecObjects()) in_table.emplace(row.name);
  EXPECT_EQ(reached, in_table);
}

// The wanted error of a text: whether there is one at the place of `needle`, which stands there once.
const Diagnostic* ErrorAt(const Diagnostics& diagnostics, const std::string& text,
                          const std::string& needle) {
  const std::size_t at = text.find(needle);
  EXPECT_NE(at, std::string::npos) << text;
  EXPECT_EQ(text.find(needle, at + 1), std::string::npos) << text;
  const auto found = std::ranges::find_if(diagnostics, [&](const Diagnostic& d) {
    return d.place == Place{static_cast<std::uint32_t>(at),
                            static_cast<std::uint32_t>(needle.size())};
  });
  return found == diagnostics.end() ? nullptr : &*found;
}

// A parser that did not look at a key could not tell that its value is of a wrong type.
TEST(Keys, TheReaderLooksAtEveryKeyOfEveryObject) {
  int pairs = 0;
  for (const ReachedObject& at : testing::ReachObjects(Schema())) {
    for (const KeyRow& row : SpecObject(at.name).keys) {
      const std::string text = at.With(std::string(row.key), Json()).dump(1);
      SCOPED_TRACE(at.name + "." + std::string(row.key) + " in\n" + text);
      const Outcome<Spec> read = ReadSpec(text);
      EXPECT_FALSE(read.ok());
      EXPECT_NE(ErrorAt(read.diagnostics(), text, "null"), nullptr)
          << DiagnosticsText(read.diagnostics(), "spec", text, {});
      ++pairs;
    }
  }
  EXPECT_GT(pairs, 200);
}

TEST(Keys, AValueOfTheRightTypeIsNeverOfTheWrongType) {
  const Json schema = Schema();
  for (const ReachedObject& at : testing::ReachObjects(schema)) {
    const Json& properties = DefinitionOf(schema, at.name)["properties"];
    for (const auto& [key, property] : properties.items()) {
      const std::string text = at.With(key, testing::SampleOf(schema, property)).dump(1);
      SCOPED_TRACE(at.name + "." + key + " in\n" + text);
      for (const Diagnostic& d : ReadSpec(text).diagnostics()) {
        EXPECT_NE(d.code, DiagnosticCode::kWrongType) << d.message;
        EXPECT_NE(d.code, DiagnosticCode::kUnknownKey) << d.message;
        EXPECT_NE(d.code, DiagnosticCode::kBadChoice) << d.message;
      }
    }
  }
}

TEST(Keys, AMisspeltKeyOfAnyObjectIsRefusedWithTheRightOne) {
  for (const ReachedObject& at : testing::ReachObjects(Schema())) {
    for (const KeyRow& row : SpecObject(at.name).keys) {
      const std::string wrong = std::string(row.key) + row.key.back();
      const std::string text = at.With(wrong, Json(1)).dump(1);
      SCOPED_TRACE(at.name + "." + wrong);
      const Outcome<Spec> read = ReadSpec(text);
      const Diagnostic* error = ErrorAt(read.diagnostics(), text, "\"" + wrong + "\"");
      ASSERT_NE(error, nullptr) << text;
      EXPECT_EQ(error->code, DiagnosticCode::kUnknownKey);
      EXPECT_EQ(error->hint, "did you mean \"" + std::string(row.key) + "\"?");
    }
  }
}

TEST(Keys, AKeyLikeNoOtherGetsTheListOfThoseThereAre) {
  const Outcome<Spec> read = ReadSpec(R"({"opening": {"width": 1, "height": 1, "depth": 1,
      "xylophone": 3}, "drawers": [{}]})");
  ASSERT_EQ(read.diagnostics().size(), 1U);
  EXPECT_EQ(read.diagnostics()[0].message, "unknown key \"xylophone\" in \"opening\"");
  EXPECT_EQ(read.diagnostics()[0].hint, "write one of \"width\", \"height\", \"depth\"");
}

TEST(Nearest, AllowsAThirdOfTheWordInEdits) {
  constexpr std::string_view kWords[] = {"overlay", "edge", "gap", "thickness"};
  EXPECT_EQ(Nearest("ovrelay", kWords), "overlay");
  EXPECT_EQ(Nearest("OVERLAY", kWords), "overlay");
  EXPECT_EQ(Nearest("gpa", kWords), "gap");
  EXPECT_EQ(Nearest("thikness", kWords), "thickness");
  EXPECT_EQ(Nearest("over", kWords), "");
  EXPECT_EQ(Nearest("", kWords), "");
  EXPECT_EQ(Nearest(std::string(1000, 'a'), kWords), "");
}

// Words that were used before, or are elsewhere, far from ours in letters.
TEST(Nearest, AnswersAnOtherWordWithOurs) {
  constexpr std::string_view kWords[] = {"rabbet", "tongue-and-dado", "defects",
                                         "D1.box_front.length", "D1.box_back.width"};
  EXPECT_EQ(Nearest("groove", kWords), "tongue-and-dado");
  EXPECT_EQ(Nearest("flaws", kWords), "defects");
  EXPECT_EQ(Nearest("D1.front_end.length", kWords), "D1.box_front.length");
  EXPECT_EQ(Nearest("D1.back_end.width", kWords), "D1.box_back.width");
  constexpr std::string_view kFits[] = {"applied", "gap"};
  EXPECT_EQ(Nearest("groove", kFits), "") << "only where our word is one of the choices";
}

}  // namespace
}  // namespace tillwright
