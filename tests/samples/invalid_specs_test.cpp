// Every broken spec of specs/invalid/ gives exactly the message that stands beside it.
//
// With TILLWRIGHT_UPDATE_EXPECTED=1 the messages are written anew, to be read before they are kept;
// the test then counts as skipped.
#include <gmock/gmock.h>

#include <cstdlib>
#include <set>

#include "samples/repository.h"
#include "support/files.h"
#include "tillwright/diagnostic.h"

namespace tillwright {
namespace {

namespace fs = std::filesystem;
using testing::FilesIn;
using testing::LinesOf;
using testing::ReadFile;
using testing::RepositoryFiles;
using testing::RunLine;
using testing::SourcePath;
using testing::Told;

std::vector<fs::path> BrokenSpecs() { return FilesIn(SourcePath("specs/invalid"), ".json"); }

fs::path ExpectedOf(const fs::path& spec) { return fs::path(spec).replace_extension(".expected"); }

Told SizeOf(const fs::path& spec, const std::string& flags = "") {
  RepositoryFiles files;
  return RunLine("size specs/invalid/" + spec.filename().string() + flags, files);
}

TEST(InvalidSpecs, GiveExactlyTheMessageBesideThem) {
  ASSERT_FALSE(BrokenSpecs().empty());
  const bool update = std::getenv("TILLWRIGHT_UPDATE_EXPECTED") != nullptr;
  for (const fs::path& spec : BrokenSpecs()) {
    SCOPED_TRACE(spec.filename());
    const Told told = SizeOf(spec);
    EXPECT_EQ(told.status, ExitStatus::kSpec);
    EXPECT_EQ(told.out, "");
    if (update) {
      testing::WriteFile(ExpectedOf(spec), told.err);
    } else {
      EXPECT_EQ(told.err, ReadFile(ExpectedOf(spec)));
    }
  }
  if (update) GTEST_SKIP() << "the messages were written anew";
}

TEST(InvalidSpecs, HaveAMessageEachAndNoMessageIsLeftOver) {
  std::set<std::string> specs;
  std::set<std::string> messages;
  for (const fs::path& spec : BrokenSpecs()) specs.insert(spec.stem());
  for (const fs::path& text : FilesIn(SourcePath("specs/invalid"), ".expected")) {
    messages.insert(text.stem());
  }
  EXPECT_EQ(specs, messages);
}

// With --json the same faults, on standard output.
TEST(InvalidSpecs, TellAsManyFaultsInJson) {
  for (const fs::path& spec : BrokenSpecs()) {
    SCOPED_TRACE(spec.filename());
    const Told told = SizeOf(spec, " --json");
    EXPECT_EQ(told.status, ExitStatus::kSpec);
    EXPECT_EQ(told.err, "");
    std::size_t in_json = 0;
    for (std::size_t at = 0; (at = told.out.find("\"code\":", at)) != std::string::npos; ++at) {
      ++in_json;
    }
    std::size_t in_text = 0;
    for (const std::string& line : LinesOf(ReadFile(ExpectedOf(spec)))) {
      if (line.find(": error: ") != std::string::npos) ++in_text;
    }
    EXPECT_EQ(in_json, in_text) << told.out;
    EXPECT_GE(in_text, 1U);
  }
}

TEST(InvalidSpecs, ShowEveryFaultASpecCanHave) {
  std::set<std::string> shown;
  std::size_t most = 0;
  for (const fs::path& spec : BrokenSpecs()) {
    std::size_t count = 0;
    for (const std::string& line : LinesOf(ReadFile(ExpectedOf(spec)))) {
      if (line.find(": error: ") == std::string::npos) continue;
      ++count;
      const std::size_t at = line.rfind('[');
      ASSERT_NE(at, std::string::npos);
      shown.insert(line.substr(at + 1, line.size() - at - 2));
    }
    most = std::max(most, count);
  }
  EXPECT_GE(most, 8U) << "one spec is to have many faults at once";
  // What the command line and the disk can do wrong is no fault of a spec.
  const std::set<DiagnosticCode> elsewhere{DiagnosticCode::kUsage, DiagnosticCode::kUnknownPath,
                                           DiagnosticCode::kFileRead, DiagnosticCode::kFileWrite};
  for (const DiagnosticCode code : AllCodes()) {
    if (elsewhere.contains(code)) continue;
    EXPECT_TRUE(shown.contains(std::string(CodeText(code)))) << CodeText(code);
  }
}

}  // namespace
}  // namespace tillwright
