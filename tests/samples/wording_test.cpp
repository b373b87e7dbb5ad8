// What people read is written in the words of the trade in the United States: the words and
// spellings below are in no message, caption, document, comment of a spec or sample.
#include <gmock/gmock.h>

#include "samples/prose.h"
#include "support/files.h"

namespace tillwright {
namespace {

namespace fs = std::filesystem;
using testing::CommentsIn;
using ::testing::ElementsAre;
using testing::FilesIn;
using ::testing::IsEmpty;
using testing::LiteralsIn;
using testing::ReadFile;
using testing::SourcePath;
using testing::TextsIn;
using testing::WordsFound;

// A word that ends in '*' is also found where it only begins a word.
const std::vector<std::string> kNotSaid{
    // British spellings
    "colour*", "centre*", "grey*", "metre*", "millimetre*", "centimetre*", "picometre*",
    "neighbour*", "behaviour*", "labelled", "labelling", "levelling", "fibre*", "mould*", "mitre*",
    "towards", "whilst", "catalogue*", "programme*", "analyse*", "organis*", "recognis*",
    // Terms
    "box front end", "box back end", "front and back ends", "box ends", "the back end", "overlap*",
    "stave*", "sliver*", "taken apart", "reckon*", "stands twice", "second time", "told", "tells",
    "thrown", "at worst", "housing*", "flaws", "flaw", "upright", "moved most by", "rebate*",
    "at hand", "dados",
    // Sentences that were stumbled over
    "by the estimate", "screw it fast", "finds a hand", "catch fire by themselves", "bit's turning",
    "with tension close", "parts of one size are of one size", "joint the case", "glue grabs",
    "air the room", "all faces alike", "to leave today", "with all of it", "no such sheet",
    "no place for", "finds no place", "a tenth to spare", "as the pull asks",
    "of an earlier packet", "overlap past", "ways the parts go in", "to the line drawn",
    "none of these in", "find no room", "worst, at least", "moves with damp",
    "your slide has decide", "is not a choice", "is no value", "comes out at", "held exactly",
    "exclude one another", "lower the box", "lower than its cell", "too low for",
    "exceed the depth", "stands under the groove", "leaves nothing of an end", "wood stands behind",
    "do not suit stock", "so none moves", "come to stand short", "cell asks", "any more",
    "no nearer", "is no weight", "under the least", "over the greatest",
    "what is made already is held", "blanks for what", "when they are off", "should run on",
    "grain runs on", "grain run on", "stands there", "graded as you like", "judge what",
    "made up from the worktop", "gone over", "stays free behind", "comes to rest", "how true",
    "the least any gap", "the greatest any gap"};

// Names that the contract of specs and results fixes, words of other tongues that a spec may use
// for a material or unit, and old words that a hint answers.
const std::vector<std::string> kFixed{"centred",
                                      "`overlaps`",
                                      "overlaps",
                                      "overlap_mm",
                                      "`overlap`",
                                      "overlap.",
                                      "face_frame.overlap",
                                      "\"overlap\"",
                                      "2 overlap \u2212 2 stile",
                                      "stile \u2212 overlap"};

std::vector<std::string> Hits(const std::vector<std::string>& texts) {
  std::vector<std::string> hits;
  for (const std::string& text : texts) {
    for (const std::string& word : WordsFound(text, kNotSaid, kFixed)) {
      hits.push_back(word + ": " + text.substr(0, 200));
    }
  }
  return hits;
}

TEST(Wording, FindsEveryWordOfTheList) {
  for (std::string word : kNotSaid) {
    if (word.ends_with('*')) word.back() = 'x';
    EXPECT_THAT(WordsFound("Mark the " + word + ", then cut.", kNotSaid, kFixed),
                ::testing::Not(IsEmpty()))
        << word;
    EXPECT_THAT(WordsFound("Mark theX" + word.substr(0, 1) + ".", {word}, {}), IsEmpty());
  }
  EXPECT_THAT(WordsFound("a retold tale, on\n  THE Back\n end", kNotSaid, kFixed),
              ElementsAre("the back end"));
  EXPECT_THAT(WordsFound("\"overlaps\" and `overlap` are keys, centred a word", kNotSaid, kFixed),
              IsEmpty());
}

TEST(Wording, ReadsWhatPeopleReadAndNothingElse) {
  EXPECT_THAT(
      LiteralsIn("#include \"colour.h\"\n"
                 "f('\"', \"a \\\"b\\\"\"  // colour \"x\"\n  \"c\", /* \"d\" */ R\"(e\"f)\");"),
      ElementsAre("a \"b\"c", "e\"f"));
  EXPECT_THAT(LiteralsIn("f(\"on two \"\n    \"lines\", \"alone\")"),
              ElementsAre("on two lines", "alone"));
  EXPECT_THAT(CommentsIn("{ \"a\": \"b // c\", // one\n// two"), ElementsAre(" one", " two"));
  EXPECT_THAT(TextsIn("<a href=\"x>\">one</a> <b/>two<c d='e'/>"), ElementsAre("\">one", "two"));
}

// A unit, and the names of materials, that a maker may write as he is used to.
bool IsInput(const std::string& literal) {
  return literal == "millimetres" || literal == "fibreboard" || literal == "overlap";
}

TEST(Wording, OfTheSources) {
  std::size_t read = 0;
  for (const fs::directory_entry& entry : fs::recursive_directory_iterator(SourcePath("src"))) {
    const fs::path& path = entry.path();
    if (path.extension() != ".cpp" && path.extension() != ".h") continue;
    if (path.filename() == "nearest.cpp") continue;  // the old words, and the new for each
    std::vector<std::string> literals = LiteralsIn(ReadFile(path));
    std::erase_if(literals, IsInput);
    EXPECT_THAT(Hits(literals), IsEmpty()) << path;
    read += literals.size();
  }
  EXPECT_GT(read, 1000U);
}

TEST(Wording, OfTheDocumentsAndSpecs) {
  for (const char* name : {"README.md", "specs/README.md", "specs/schema.json"}) {
    EXPECT_THAT(Hits({ReadFile(SourcePath(name))}), IsEmpty()) << name;
  }
  std::size_t comments = 0;
  for (const fs::path& spec : testing::CuratedSpecs()) {
    const std::vector<std::string> texts = CommentsIn(ReadFile(spec));
    EXPECT_THAT(Hits(texts), IsEmpty()) << spec;
    comments += texts.size();
  }
  EXPECT_GT(comments, 20U);
}

TEST(Wording, OfTheSamples) {
  std::size_t read = 0;
  for (const fs::directory_entry& entry :
       fs::recursive_directory_iterator(SourcePath("output-samples"))) {
    const fs::path& path = entry.path();
    const std::string ending = path.extension();
    if (ending == ".svg" || ending == ".html") {
      std::string joined;  // one search a word, not one for each of very many labels
      for (const std::string& text : TextsIn(ReadFile(path))) joined += text + " | ";
      EXPECT_THAT(WordsFound(joined, kNotSaid, kFixed), IsEmpty()) << path;
      ++read;
    } else if (ending == ".txt" || ending == ".csv") {
      EXPECT_THAT(Hits({ReadFile(path)}), IsEmpty()) << path;
      ++read;
    }
  }
  EXPECT_GT(read, 100U);
}

}  // namespace
}  // namespace tillwright
