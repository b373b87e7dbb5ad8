// Holes for pulls, worked by hand.
#include <gtest/gtest.h>

#include "support/specs.h"

namespace tillwright::testing {
namespace {

// A shut case of one front: 16 in wide from -1/2, 10 in high from -1/2.
std::string Spec(const std::string& pull, const std::string& own = "", const char* width = "15") {
  return std::string(R"({"opening": {"width": ")") + width +
         R"(", "height": "9", "depth": "20"}, "fronts": {"overlay": "1/2", "pull": )" + pull +
         R"(}, "drawers": [{)" + (own.empty() ? "" : R"("front": {"pull": )" + own + "}") + "}]}";
}

std::vector<PullHole> Holes(const std::string& text) {
  const Bank bank = MustSolve(text).bank;
  return bank.spaces.empty() ? std::vector<PullHole>() : bank.spaces[0].front.pulls;
}

struct Hole {
  const char* x;
  const char* y;
};
struct PullCase {
  const char* name;
  std::string text;
  std::vector<Hole> holes;
};

TEST(PullsTest, HolesByHand) {
  const std::vector<PullCase> cases{
      {"a knob in the middle", Spec("{}"), {{"7 1/2", "4 1/2"}}},
      {"zero is a knob", Spec(R"({"centers": 0})"), {{"7 1/2", "4 1/2"}}},
      {"a handle", Spec(R"({"centers": "3 3/4"})"), {{"5 5/8", "4 1/2"}, {"9 3/8", "4 1/2"}}},
      {"from the top", Spec(R"({"down": "2"})"), {{"7 1/2", "7 1/2"}}},
      {"two knobs", Spec(R"({"count": 2})"), {{"3 1/2", "4 1/2"}, {"11 1/2", "4 1/2"}}},
      {"two handles",
       Spec(R"({"count": 2, "centers": "3"})"),
       {{"2", "4 1/2"}, {"5", "4 1/2"}, {"10", "4 1/2"}, {"13", "4 1/2"}}},
      {"own none", Spec(R"({"centers": "3"})", "\"none\""), {}},
      {"own over bank's none", Spec("\"none\"", R"({"down": "1"})"), {{"7 1/2", "8 1/2"}}},
      {"merged key by key",
       Spec(R"({"centers": "3", "down": "2"})", R"({"count": 2, "centers": 0})"),
       {{"3 1/2", "7 1/2"}, {"11 1/2", "7 1/2"}}},
      {"24 in is one pull", Spec("{}", "", "23"), {{"11 1/2", "4 1/2"}}},
      {"wider is two", Spec("{}", "", "23 1/8"), {{"5 17/32", "4 1/2"}, {"17 19/32", "4 1/2"}}},
      {"one when asked", Spec(R"({"count": 1})", "", "31"), {{"15 1/2", "4 1/2"}}},
  };
  for (const PullCase& c : cases) {
    SCOPED_TRACE(c.name);
    const std::vector<PullHole> holes = Holes(c.text);
    ASSERT_EQ(holes.size(), c.holes.size());
    for (std::size_t i = 0; i < holes.size(); ++i) {
      EXPECT_EQ(holes[i].x, L(c.holes[i].x)) << FormatInches(holes[i].x);
      EXPECT_EQ(holes[i].y, L(c.holes[i].y)) << FormatInches(holes[i].y);
    }
  }
}

// Between centers stays as typed where its half is no whole picometer; the left hole gives way.
TEST(PullsTest, OddCentersStayWhole) {
  const auto holes = Holes(Spec(R"({"centers": "75.000000001 mm"})"));
  ASSERT_EQ(holes.size(), 2U);
  EXPECT_EQ(holes[1].x - holes[0].x, Length::Picometers(75'000'000'001));
  EXPECT_EQ(L("7 1/2") - holes[0].x, Length::Picometers(37'500'000'000));
}

TEST(PullsTest, MetricLimitIs610) {
  const auto count = [](const char* width) {
    const std::string text =
        std::string(R"({"units": "mm", "opening": {"width": )") + width +
        R"(, "height": 200, "depth": 500}, "fronts": {"overlay": 0, "pull": {}}, "drawers": [{}]})";
    return Holes(text).size();
  };
  EXPECT_EQ(count("610"), 1U);
  EXPECT_EQ(count("610.5"), 2U);
}

TEST(PullsTest, BlanksHaveThemAndOpenSpacesNot) {
  const Bank bank = MustSolve(R"({"opening": {"width": "15", "height": "30", "depth": "20"},
      "fronts": {"pull": {}}, "layout": {"rows": [{"blank": {}}, {"open": {}}, {"drawer": {}}]}})")
                        .bank;
  EXPECT_EQ(bank.spaces[0].front.pulls.size(), 1U);
  EXPECT_TRUE(bank.spaces[1].front.pulls.empty());
  EXPECT_EQ(bank.spaces[2].front.pulls.size(), 1U);
}

TEST(PullsTest, NoneWithoutTheKey) {
  const Bank bank = MustSolve(R"({"opening": {"width": "15", "height": "9", "depth": "20"},
      "drawers": [{}]})")
                        .bank;
  EXPECT_TRUE(bank.spaces[0].front.pulls.empty());
}

TEST(PullsTest, HolesThatMissTheFrontAreRefused) {
  for (const char* pull : {R"({"down": "10"})", R"({"down": "11"})", R"({"centers": "16"})",
                           R"({"centers": "8", "count": 2})"}) {
    const Diagnostics found = MustFail(Spec(pull));
    ASSERT_EQ(found.size(), 1U) << pull;
    EXPECT_EQ(found[0].code, DiagnosticCode::kNoRoom) << pull;
    EXPECT_NE(found[0].message.find("D1"), std::string::npos) << found[0].message;
  }
  EXPECT_EQ(Holes(Spec(R"({"down": "9 31/32"})")).size(), 1U);
  EXPECT_EQ(Holes(Spec(R"({"centers": "15 31/32"})")).size(), 2U);
}

TEST(PullsTest, BadKeysAreRefused) {
  const std::vector<std::pair<const char*, DiagnosticCode>> cases{
      {R"({"count": 3})", DiagnosticCode::kNumberRange},
      {R"({"count": 1.5})", DiagnosticCode::kNumberRange},
      {R"({"centers": "-1"})", DiagnosticCode::kLengthRange},
      {R"({"down": 0})", DiagnosticCode::kLengthRange},
      {R"({"centre": 3})", DiagnosticCode::kUnknownKey},
      {R"("nil")", DiagnosticCode::kWrongType}};
  for (const auto& [pull, code] : cases) {
    const Diagnostics found = MustFail(Spec(pull));
    ASSERT_FALSE(found.empty()) << pull;
    EXPECT_EQ(found[0].code, code) << pull << ": " << found[0].message;
  }
}

// The result says where, and only where there are pulls.
TEST(PullsTest, StandInTheResult) {
  const auto json = [](const std::string& text) {
    const Solved solved = MustSolve(text);
    return ResultJson(solved.bank, {});
  };
  EXPECT_NE(json(Spec(R"({"down": "2"})")).find(R"("pulls": [{"x_mm": 190.5, "y_mm": 190.5}])"),
            std::string::npos);
  EXPECT_EQ(json(Spec("\"none\"")).find("pulls"), std::string::npos);
}

}  // namespace
}  // namespace tillwright::testing
