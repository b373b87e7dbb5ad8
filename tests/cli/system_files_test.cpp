// The real files: written whole or not at all, and the real program at the end of real pipes.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <string>

#include "cli/files.h"
#include "cli/staging.h"
#include "support/files.h"
#include "tillwright/read.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::ReadFile;
using testing::RunShell;
using testing::TemporaryFolder;
using testing::WriteFile;

std::vector<std::string> Names(const fs::path& folder) {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(folder)) {
    names.push_back(entry.path().filename().string());
  }
  std::sort(names.begin(), names.end());
  return names;
}

TEST(SystemFiles, WritesAndReadsAndLeavesNothingElse) {
  const TemporaryFolder folder;
  SystemFiles files;
  const std::string path = (folder / "with space and \xc3\xa9.txt").string();
  ASSERT_TRUE(files.WriteAll({{path, "one"}}).ok);
  EXPECT_EQ(ReadFile(path), "one");
  ASSERT_TRUE(files.WriteAll({{path, "two"}}).ok);
  EXPECT_EQ(files.Read(path, 100).text, "two");
  EXPECT_EQ(Names(folder.path()).size(), 1U) << "a temporary file was left";
}

TEST(SystemFiles, MakesTheFoldersOfItsTargets) {
  const TemporaryFolder folder;
  SystemFiles files;
  const fs::path path = folder / "a" / "b" / "c.txt";
  ASSERT_TRUE(files.WriteAll({{path.string(), "x"}, {(folder / "a" / "d.txt").string(), "y"}}).ok);
  EXPECT_EQ(ReadFile(path), "x");
  EXPECT_EQ(ReadFile(folder / "a" / "d.txt"), "y");
}

TEST(SystemFiles, KeepsTheModeOfAFileAndGivesNewOnesTheUsual) {
  const TemporaryFolder folder;
  SystemFiles files;
  const fs::path old_file = folder / "old";
  WriteFile(old_file, "before");
  fs::permissions(old_file, static_cast<fs::perms>(0640));
  const mode_t mask = ::umask(022);
  ASSERT_TRUE(files.WriteAll({{old_file.string(), "x"}, {(folder / "new").string(), "y"}}).ok);
  ::umask(mask);
  EXPECT_EQ(static_cast<int>(fs::status(old_file).permissions()), 0640);
  EXPECT_EQ(static_cast<int>(fs::status(folder / "new").permissions()), 0644);
}

TEST(SystemFiles, KeepsALinkAndWritesWhatItLeadsTo) {
  const TemporaryFolder folder;
  SystemFiles files;
  WriteFile(folder / "real", "before");
  fs::create_symlink("real", folder / "link");
  ASSERT_TRUE(files.WriteAll({{(folder / "link").string(), "after"}}).ok);
  EXPECT_TRUE(fs::is_symlink(folder / "link"));
  EXPECT_EQ(ReadFile(folder / "real"), "after");
}

TEST(SystemFiles, WritesWhereALinkThatLeadsNowhereYetLeads) {
  const TemporaryFolder folder;
  SystemFiles files;
  fs::create_directory(folder / "there");
  fs::create_symlink("there/real", folder / "link");
  ASSERT_TRUE(files.WriteAll({{(folder / "link").string(), "new"}}).ok);
  EXPECT_TRUE(fs::is_symlink(folder / "link"));
  EXPECT_EQ(ReadFile(folder / "there" / "real"), "new");
  fs::create_symlink("round", folder / "round");
  EXPECT_FALSE(files.WriteAll({{(folder / "round").string(), "x"}}).ok) << "a link to itself";
}

TEST(SystemFiles, TakesNamesAsLongAsTheSystemDoes) {
  const TemporaryFolder folder;
  SystemFiles files;
  for (const std::size_t length : {248U, 249U, 255U}) {
    const std::string name(length, 'n');
    EXPECT_TRUE(files.WriteAll({{(folder / name).string(), "x"}}).ok) << length;
    EXPECT_EQ(ReadFile(folder / name), "x");
  }
}

// What is written into a folder stays in it, whatever links stand there.
TEST(SystemFiles, FollowsNoLinkOutOfAFolder) {
  const TemporaryFolder folder;
  SystemFiles files;
  fs::create_directory(folder / "elsewhere");
  WriteFile(folder / "outside", "before");
  const std::string out = (folder / "out").string();
  fs::create_directory(out);
  fs::create_symlink("../outside", folder / "out" / "index.html");
  ASSERT_TRUE(files.WriteFolder(out, {{out + "/index.html", "page"}}).ok);
  EXPECT_EQ(ReadFile(folder / "outside"), "before");
  EXPECT_EQ(ReadFile(folder / "out" / "index.html"), "page");
  fs::create_directory_symlink("../elsewhere", folder / "out" / "dxf");
  const FileResult refused = files.WriteFolder(out, {{out + "/dxf/a.dxf", "x"}});
  EXPECT_FALSE(refused.ok);
  EXPECT_EQ(refused.text, out + "/dxf/a.dxf");
  EXPECT_THAT(Names(folder / "elsewhere"), IsEmpty());
}

TEST(SystemFiles, TakesAwayWhatAKilledRunLeftAndSaysSo) {
  const TemporaryFolder folder;
  SystemFiles files;
  fs::create_directory(folder / Staging::kName);
  WriteFile(folder / Staging::kName / "0", "half");
  const FileResult result = files.WriteAll({{(folder / "a").string(), "x"}});
  EXPECT_TRUE(result.ok);
  EXPECT_TRUE(result.cleared);
  EXPECT_EQ(Names(folder.path()), std::vector<std::string>{"a"});
  EXPECT_FALSE(files.WriteAll({{(folder / "a").string(), "y"}}).cleared);
}

TEST(SystemFiles, RemovesFoldersItMadeForWhatDidNotArrive) {
  const TemporaryFolder folder;
  SystemFiles files;
  const std::string out = (folder / "new" / "out").string();
  EXPECT_FALSE(
      files.WriteFolder(out, {{out + "/sub/a", "x"}, {out + "/" + std::string(300, 'n'), "x"}}).ok);
  EXPECT_THAT(Names(folder.path()), IsEmpty());
}

// As root a read-only folder can be written, so the ways to fail are others.
TEST(SystemFiles, WritesAllOrNoneAndNamesTheOneThatFailed) {
  const TemporaryFolder folder;
  SystemFiles files;
  const std::string good = (folder / "good").string();
  WriteFile(good, "before");
  WriteFile(folder / "file", "");
  fs::create_directory(folder / "folder");
  for (const std::string& bad : {(folder / "file" / "below").string(),       // a path below a file
                                 (folder / "folder").string(),               // a folder
                                 (folder / std::string(300, 'n')).string(),  // too long a name
                                 std::string("/dev/full")}) {
    const FileResult result = files.WriteAll({{good, "after"}, {bad, "x"}});
    EXPECT_FALSE(result.ok) << bad;
    EXPECT_EQ(result.text, bad);
    EXPECT_FALSE(result.problem.empty());
    EXPECT_EQ(ReadFile(good), "before") << bad;
    EXPECT_EQ(Names(folder.path()), (std::vector<std::string>{"file", "folder", "good"})) << bad;
  }
}

TEST(SystemFiles, KnowsAFileUnderEveryName) {
  const TemporaryFolder folder;
  SystemFiles files;
  const std::string path = (folder / "spec").string();
  WriteFile(path, "");
  fs::create_symlink("spec", folder / "link");
  fs::create_hard_link(folder / "spec", folder / "hard");
  WriteFile(folder / "other", "");
  EXPECT_TRUE(files.Same(path, path));
  EXPECT_TRUE(files.Same(path, (folder / "." / "spec").string()));
  EXPECT_TRUE(files.Same(path, (folder / "link").string()));
  EXPECT_TRUE(files.Same(path, (folder / "hard").string()));
  EXPECT_FALSE(files.Same(path, (folder / "other").string()));
  EXPECT_FALSE(files.Same(path, (folder / "not there").string()));
}

TEST(SystemFiles, ReadsNoMoreThanItMust) {
  const TemporaryFolder folder;
  SystemFiles files;
  WriteFile(folder / "big", std::string(1'000'000, 'x'));
  const FileResult read = files.Read((folder / "big").string(), 1000);
  EXPECT_TRUE(read.ok);
  EXPECT_GT(read.text.size(), 1000U);
  EXPECT_LT(read.text.size(), 200'000U);
  EXPECT_FALSE(files.Read(folder.path().string(), 1000).ok) << "a folder is no file";
  EXPECT_FALSE(files.Read((folder / "none").string(), 1000).ok);
}

// --- The real program ---------------------------------------------------------------------------

class Program : public ::testing::Test {
 protected:
  void SetUp() override {
    WriteFile(folder_ / "spec.json", StarterSpec());
    WriteFile(folder_ / "wrong.json", "{");
  }
  // Runs a command line in the folder; TILL stands for the program.
  testing::Ran Do(std::string command) {
    for (std::size_t at = 0; (at = command.find("TILL", at)) != std::string::npos;) {
      command.replace(at, 4, "'" TILLWRIGHT_PROGRAM "'");
      at += sizeof(TILLWRIGHT_PROGRAM);
    }
    return RunShell("cd '" + folder_.path().string() + "' && exec 2>err && " + command);
  }
  std::string Errors() { return ReadFile(folder_ / "err"); }

  TemporaryFolder folder_;
};

TEST_F(Program, RunsAndGivesTheStatusesOfTheContract) {
  EXPECT_EQ(Do("TILL size spec.json").status, 0);
  EXPECT_THAT(Errors(), IsEmpty());
  EXPECT_EQ(Do("TILL").status, 2);
  EXPECT_EQ(Do("TILL size wrong.json").status, 3);
  EXPECT_THAT(Errors(), HasSubstr("wrong.json:1:2: error:"));
  EXPECT_EQ(Do("TILL size none.json").status, 4);
  EXPECT_EQ(Do("TILL size .").status, 4);
  EXPECT_EQ(Do("TILL size spec.json -o spec.json/below").status, 4);
  EXPECT_EQ(Do("TILL size - < spec.json").out, Do("TILL size spec.json").out);
  EXPECT_EQ(Do("TILL new | TILL size - -o -").out, Do("TILL size spec.json").out);
}

TEST_F(Program, RefusesToOverwriteTheSpecUnderAnyName) {
  fs::create_symlink("spec.json", folder_ / "link.json");
  for (const char* name : {"spec.json", "./spec.json", "link.json", "x/../spec.json"}) {
    fs::create_directory(folder_ / "x");
    EXPECT_EQ(Do("TILL size spec.json -o " + std::string(name)).status, 2) << name;
    EXPECT_EQ(ReadFile(folder_ / "spec.json"), StarterSpec());
  }
}

TEST_F(Program, AFullDeviceGivesFour) {
  EXPECT_EQ(Do("TILL size spec.json > /dev/full").status, 4);
  EXPECT_THAT(Errors(), HasSubstr("standard output cannot be written"));
  EXPECT_EQ(Do("TILL size spec.json -o /dev/full").status, 4);
  EXPECT_EQ(Do("TILL schema >&-").status, 4) << "closed altogether";
  EXPECT_EQ(Do("TILL size spec.json -o /dev/null").status, 0);
}

TEST_F(Program, APipeThatIsClosedEarlyEndsQuietly) {
  // Far more than a pipe holds, to a reader that takes one line.
  std::string drawers = "{}";
  for (int i = 0; i < 400; ++i) drawers += ", {}";
  WriteFile(
      folder_ / "many.json",
      R"({"units": "mm", "round": "0.01", "opening": {"width": 400, "height": 90000, "depth": 500},
               "drawers": [)" +
          drawers + "]}");
  const testing::Ran ran = Do("(TILL size many.json --json; echo $? > status) | head -n 1");
  EXPECT_EQ(ran.out, "{\n");
  EXPECT_THAT(ReadFile(folder_ / "status"), ::testing::AnyOf("0\n", "1\n"));
  EXPECT_THAT(Errors(), IsEmpty());
}

// Interrupted at many moments, a packet's folder holds a whole packet or nothing, and nothing else.
TEST_F(Program, AnInterruptLeavesNothingBehind) {
  for (const char* signal : {"INT", "TERM", "HUP"}) {
    for (int i = 0; i < 12; ++i) {
      const std::string wait = "0." + std::to_string(100 + 7 * i).substr(1);
      Do("true; TILL shop spec.json -o out & sleep " + wait + "; kill -" + signal + " $!; wait $!");
      EXPECT_FALSE(fs::exists(folder_ / "out" / Staging::kName)) << signal << " after " << wait;
      const bool whole = fs::exists(folder_ / "out" / "files.txt");
      if (fs::exists(folder_ / "out")) {
        EXPECT_EQ(whole, !Names(folder_ / "out").empty()) << signal << " after " << wait;
      }
      fs::remove_all(folder_ / "out");
    }
  }
}

// Killed without a chance, it leaves what the next run takes away, and says so.
TEST_F(Program, TheNextRunTakesAwayWhatAKilledOneLeft) {
  fs::create_directories(folder_ / "out" / Staging::kName);
  WriteFile(folder_ / "out" / Staging::kName / "3", "half a drawing");
  EXPECT_EQ(Do("TILL draw spec.json -o out --view front").status, 0);
  EXPECT_THAT(Errors(), HasSubstr("interrupted run"));
  EXPECT_FALSE(fs::exists(folder_ / "out" / Staging::kName));
}

// Two packets into one folder at once: the folder holds one of them, not some of each.
TEST_F(Program, TwoPacketsAtOnceDoNotMix) {
  WriteFile(folder_ / "other.json",
            R"({"title": "Other", "opening": {"width": 20, "height": 30, "depth": 22},
               "drawers": [{}, {}, {}, {}]})");
  for (const char* name : {"spec", "other"}) {
    Do("TILL shop " + std::string(name) + ".json -o alone-" + name);
  }
  const auto as = [&](const std::string& name) {
    return RunShell("diff -r '" + (folder_ / "out").string() + "' '" +
                    (folder_ / ("alone-" + name)).string() + "' | grep -v '^Only in .*out'");
  };
  for (int i = 0; i < 3; ++i) {
    Do("true; TILL shop spec.json -o out & TILL shop other.json -o out; wait");
    EXPECT_TRUE(as("spec").out.empty() || as("other").out.empty()) << as("spec").out;
    fs::remove_all(folder_ / "out");
  }
}

TEST_F(Program, RefusesAnEmptyName) {
  for (const char* line : {"draw spec.json -o ''", "shop spec.json --output ''",
                           "size spec.json -o ''", "check spec.json --sheet ''", "new -o ''"}) {
    EXPECT_EQ(Do("TILL " + std::string(line)).status, 2) << line;
    EXPECT_THAT(Errors(), HasSubstr("empty name")) << line;
  }
  EXPECT_EQ(Do("TILL size ''").status, 4);
}

// The list of an earlier packet is a file like any other: nobody is led out of the folder by it,
// and nothing waits at a pipe of its name.
TEST_F(Program, TrustsNoListOfAnEarlierPacket) {
  fs::create_directory(folder_ / "out");
  WriteFile(folder_ / "out" / "files.txt", "../spec.json\n/etc/passwd\nold.pdf\n");
  WriteFile(folder_ / "out" / "old.pdf", "");
  EXPECT_EQ(Do("TILL shop spec.json -o out").status, 0);
  EXPECT_THAT(Errors(), HasSubstr("old.pdf"));
  EXPECT_THAT(Errors(), ::testing::Not(HasSubstr("../spec.json")));
  EXPECT_THAT(Errors(), ::testing::Not(HasSubstr("passwd")));
  fs::remove_all(folder_ / "out");
  EXPECT_EQ(Do("mkdir out; mkfifo out/files.txt; timeout 20 TILL shop spec.json -o out").status, 0);
}

TEST_F(Program, ObeysNoColorAndTheOption) {
  EXPECT_THAT(Do("TILL size spec.json --color always").out, HasSubstr("\x1b"));
  EXPECT_EQ(Do("TILL size spec.json").out.find('\x1b'), std::string::npos);
  // A terminal of script(1), where there is one.
  if (RunShell("command -v script > /dev/null").status != 0) return;
  EXPECT_THAT(Do("env -u NO_COLOR TERM=xterm script -qec \"TILL size spec.json\" /dev/null").out,
              HasSubstr("\x1b["));
  for (const char* quiet : {"NO_COLOR=1 TERM=xterm", "TERM=dumb"}) {
    EXPECT_EQ(Do("env " + std::string(quiet) + " script -qec \"TILL size spec.json\" /dev/null")
                  .out.find('\x1b'),
              std::string::npos)
        << quiet;
  }
}

TEST_F(Program, DrawsIntoAFolderWithSpacesThatIsNotThereYet) {
  EXPECT_EQ(Do("TILL draw spec.json -o 'new folder/in it' --format pdf").status, 0) << Errors();
  EXPECT_THAT(ReadFile(folder_ / "new folder" / "in it" / "drawings.pdf"),
              ::testing::StartsWith("%PDF-"));
  EXPECT_EQ(Names(folder_ / "new folder/in it").size(), 1U);
}

}  // namespace
}  // namespace tillwright
