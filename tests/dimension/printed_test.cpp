// Every figure that is printed has a path, which the registry knows and `why` explains down to the
// lines of the spec and the defaults: walked over all specs and random ones.
#include <gtest/gtest.h>

#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "draw/view_numbers.h"
#include "support/files.h"
#include "support/random_case.h"
#include "support/random_spec.h"
#include "support/specs.h"
#include "tillwright/dimensions.h"
#include "tillwright/draw.h"
#include "tillwright/render.h"
#include "tillwright/stick.h"

namespace tillwright::testing {
namespace {

using Json = nlohmann::ordered_json;

// "D2.front.pull.3.x" is of the kind "D.front.pull.N.x".
std::string KindOf(std::string_view path) {
  std::string kind;
  bool in_number = false;
  for (const char c : path) {
    const bool digit = c >= '0' && c <= '9';
    if (digit && !in_number && (kind.empty() || kind.back() == '.')) kind += 'N';
    if (!digit) kind += c;
    in_number = digit;
  }
  return kind;
}

// One job, and what its paths have shown so far.
class Walk {
 public:
  explicit Walk(const std::string& text) : spec_(ReadSpec(text)) {
    if (spec_.ok()) bank_ = SolveBank(spec_.value(), trace_);
  }

  [[nodiscard]] bool ok() const { return bank_ && bank_->ok(); }
  [[nodiscard]] const Bank& bank() const { return bank_->value(); }
  [[nodiscard]] const Spec& spec() const { return spec_.value(); }
  [[nodiscard]] const std::set<std::string>& walked() const { return walked_; }

  // That the path has this value, and that its explanation has it too and ends where it must.
  void Expect(const std::string& path, Length printed) {
    const std::optional<Length> value = DimensionValue(bank(), path);
    ASSERT_TRUE(value.has_value()) << "no " << path;
    EXPECT_EQ(*value, printed) << path;
    Explained(path);
  }

  void Explained(const std::string& path) {
    if (!walked_.insert(path).second) return;
    const int node = ExplainDimension(bank(), trace_, path);
    ASSERT_GE(node, 0) << path << " is not explained";
    EXPECT_EQ(trace_.At(node).value, DimensionValue(bank(), path)) << path;
    EXPECT_TRUE(Ends(node)) << path;
  }

 private:
  // Whether all that a node rests on comes down to the spec, to defaults, or to nothing.
  bool Ends(int node) {
    if (node < 0 || !ended_.insert(node).second) return true;
    const TraceNode at = trace_.At(node);
    switch (at.kind) {
      case TraceNode::Kind::kTyped:  // or a length that a stick was asked for
        return at.place.IsSomewhere() || at.name.ends_with(" mm");
      case TraceNode::Kind::kDefault:
        return !at.name.empty();
      case TraceNode::Kind::kChosen:
        return at.name == "zero" || (at.left >= 0 && Ends(at.left) && Ends(at.right));
      case TraceNode::Kind::kAdd:
      case TraceNode::Kind::kSubtract:
      case TraceNode::Kind::kTimes:
      case TraceNode::Kind::kFloor:
      case TraceNode::Kind::kHalfBelow:
      case TraceNode::Kind::kHalfAbove:
      case TraceNode::Kind::kPartBelow:
      case TraceNode::Kind::kGreater:
      case TraceNode::Kind::kLesser:
      case TraceNode::Kind::kSame:
        break;
    }
    return at.left >= 0 && Ends(at.left) && Ends(at.right);
  }

  Outcome<Spec> spec_;
  Trace trace_;
  std::optional<Outcome<Bank>> bank_;
  std::set<std::string> walked_;
  std::set<int> ended_;
};

// --- What is printed ----------------------------------------------------------------------------

void WalkSheets(Walk& walk, const std::vector<Sheet>& sheets) {
  for (const Sheet& sheet : sheets) {
    for (const SheetGroup& group : sheet.groups) {
      for (const Primitive& primitive : group.primitives) {
        const Label* label = std::get_if<Label>(&primitive);
        if (label == nullptr || label->path.empty()) continue;
        EXPECT_EQ(FaultOf(walk.bank(), *label), "") << sheet.name;
        for (const std::string& path : PathsOf(*label)) walk.Explained(path);
      }
    }
  }
}

void WalkSticks(Walk& walk) {
  StickOptions options;
  options.screws = ScrewRow();
  const StickSheets drawn = DrawSticks(walk.bank(), options, DrawingFontMetrics());
  for (const Stick& stick : drawn.sticks) {
    for (const StickMark& mark : stick.marks) {
      for (const std::string& sum : mark.sums) walk.Expect(sum, mark.at);
    }
    for (const StickSpan& span : stick.spans) {
      if (!span.path.empty()) walk.Expect(span.path, span.to - span.from);
    }
  }
  for (const Sheet& sheet : drawn.sheets) {
    for (const SheetGroup& group : sheet.groups) {
      for (const Primitive& primitive : group.primitives) {
        const Label* label = std::get_if<Label>(&primitive);
        if (label != nullptr && !label->path.empty()) walk.Explained(label->path);
      }
    }
  }
}

// Where an element of a list stands among the paths.
std::string Element(const std::string& list, const Json& element, std::size_t index) {
  const std::string number = std::to_string(index + 1);
  if (list == "pieces") return "piece." + number;
  if (list == "cuts") return "cut." + number;
  if (list == "pulls") return "pull." + number;
  const auto word = [&](const char* key) { return element[key].get<std::string>(); };
  if (list == "gaps") return "gap." + word("from") + "." + word("to");
  if (list == "overlaps") return "overlap." + word("drawer") + "." + word("edge");
  return (list == "parts" ? "part." : "") + word("id");
}

int WalkJson(Walk& walk, const Json& json, const std::string& path) {
  int lengths = 0;
  const std::string head = path.empty() ? "" : path + ".";
  for (const auto& [key, value] : json.items()) {
    if (key == "checks") continue;  // figures of rules, not of the piece
    if (key.ends_with("_mm")) {
      const std::string name = key == "size_mm" ? path : head + key.substr(0, key.size() - 3);
      const std::optional<Length> found = DimensionValue(walk.bank(), name);
      EXPECT_TRUE(found.has_value()) << "no " << name;
      if (!found) continue;
      EXPECT_EQ(Json::parse(FormatMillimeters(*found)), value) << name;
      walk.Explained(name);
      ++lengths;
    } else if (value.is_object()) {
      lengths += WalkJson(walk, value, head + key);
    } else if (value.is_array()) {
      const bool own = key == "pulls" || key == "cuts";
      for (std::size_t i = 0; i < value.size(); ++i) {
        lengths += WalkJson(walk, value[i], (own ? head : "") + Element(key, value[i], i));
      }
    }
  }
  return lengths;
}

struct Count {
  std::set<std::string> kinds;
  std::size_t paths = 0;
  std::size_t sums = 0;
  int jobs = 0;
};

void WalkJob(Walk& walk, bool draw, Count& count) {
  const Bank& bank = walk.bank();
  for (const std::string& path : DimensionPaths(bank)) walk.Explained(path);
  EXPECT_GT(WalkJson(walk, Json::parse(ResultJson(bank, {})), ""), 3);
  if (draw) {
    DrawOptions options;
    options.hidden_boxes = true;
    WalkSheets(walk, DrawBank(bank, options, DrawingFontMetrics()).views);
    const Outcome<GapCheck> check = CheckGaps(walk.spec(), bank);
    ASSERT_TRUE(check.ok());
    WalkSheets(walk, DrawFittingSheet(walk.spec(), bank, check.value(), DrawingFontMetrics()));
    WalkSticks(walk);
  }
  for (const std::string& path : walk.walked()) {
    if (path.find(' ') != std::string::npos) {
      ++count.sums;
      continue;
    }
    count.kinds.insert(KindOf(path));
    ++count.paths;
  }
  ++count.jobs;
}

void Print(const char* what, const Count& count) {
  std::printf("%d %s: %zu kinds of path, %zu paths, %zu sums of them\n", count.jobs, what,
              count.kinds.size(), count.paths, count.sums);
}

TEST(Printed, EveryFigureOfTheSpecsHasAPathThatIsExplained) {
  Count count;
  for (const auto& file : CuratedSpecs()) {
    SCOPED_TRACE(file);
    Walk walk(ReadFile(file));
    ASSERT_TRUE(walk.ok());
    WalkJob(walk, true, count);
  }
  Print("specs", count);
  EXPECT_GT(count.kinds.size(), 150U);
}

TEST(Printed, EveryFigureOfRandomSpecsHasAPathThatIsExplained) {
  const std::uint32_t first = TestSeed();
  Count count;
  for (std::uint32_t seed = first; count.jobs < 200; ++seed) {
    const bool with_case = seed % 2 == 0;
    const Unit unit = seed % 4 < 2 ? Unit::kInch : Unit::kMillimeter;
    Walk walk(with_case ? RandomCase(seed).Text() : RandomSpec(seed, unit).Text());
    if (!walk.ok()) continue;
    WalkJob(walk, count.jobs % 8 == 0, count);  // drawings take long under sanitizers
    ASSERT_FALSE(HasFailure()) << "TILLWRIGHT_TEST_SEED=" << seed;
  }
  Print("random specs", count);
}

}  // namespace
}  // namespace tillwright::testing
