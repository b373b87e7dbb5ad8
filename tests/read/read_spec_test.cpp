// Reading a spec: all faults in one run, each at its place, and what the entries hold.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "support/specs.h"
#include "tillwright/read.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

constexpr const char* kHead = R"({"opening": {"width": 15, "height": 24, "depth": 21}, )";

std::vector<std::string> Faults(const std::string& text) {
  std::vector<std::string> lines;
  for (const Diagnostic& d : ReadSpec(text).diagnostics()) {
    EXPECT_TRUE(d.place.IsSomewhere()) << d.message;
    lines.push_back(std::string(CodeText(d.code)) + " " +
                    text.substr(d.place.offset, d.place.length));
  }
  return lines;
}

std::vector<std::string> FaultsOf(const std::string& rest) { return Faults(kHead + rest + "}"); }

TEST(ReadSpec, AWholeSpecIsAnOpeningAndDrawers) {
  const Spec spec = testing::MustRead(std::string(kHead) + R"("drawers": [{}, {}, {}]})");
  EXPECT_EQ(spec.layout.children.size(), 3U);
  EXPECT_EQ(spec.leaves.size(), 3U);
  EXPECT_EQ(spec.opening->width.value, Length::Inches(15));
  EXPECT_FALSE(spec.round.typed);
}

TEST(ReadSpec, AllFaultsAreToldInOneRunEachAtItsPlace) {
  EXPECT_THAT(
      Faults(R"({ "titel": "x", "units": "inch",
        "opening": { "width": "15 3/8", "height": "24 3/4 inn", "depth": -1 },
        "fronts": { "overlay": { "botom": 1 } }, "slides": { "type": "undermont" },
        "box": { "side": { "thickness": 0 }, "bottom": [] },
        "graduate": { "scheme": "arithmetic", "step": "1/2", "first": 4 },
        "drawers": [ {}, { "min": true }, { "exact": 6, "weight": 2 }, 7 ] })"),
      ElementsAre("unknown-key \"titel\"", "bad-choice \"inch\"", "length-syntax inn",
                  "length-range -1", "unknown-key \"botom\"", "bad-choice \"undermont\"",
                  "length-range 0", "wrong-type [", "conflict \"first\"", "wrong-type true",
                  "wrong-type 7", "conflict 6", "not-applicable 2"));
}

TEST(ReadSpec, FaultsInALengthStandWhereTheyAreThroughEscapes) {
  EXPECT_THAT(FaultsOf(R"("round": "3 1/0 in", "drawers": [{}])"), ElementsAre("length-syntax 0"));
  EXPECT_THAT(FaultsOf(R"("round": "1\" 5 x", "drawers": [{}])"),
              ElementsAre("length-syntax 5 x"));
  EXPECT_THAT(FaultsOf(R"("round": "\u0031\u2033 9\"", "drawers": [{}])"),
              ElementsAre("length-syntax 9\\\""));
  EXPECT_THAT(FaultsOf(R"("round": "1\ud83d\ude00", "drawers": [{}])"),
              ElementsAre("length-syntax \\ud83d\\ude00"));
  EXPECT_THAT(FaultsOf(R"("round": "1\t\u00bdX\u00e9", "drawers": [{}])"),
              ElementsAre("length-syntax X\\u00e9"));
  EXPECT_THAT(FaultsOf("\"round\": \"1\xe2\x80\xb3 \xc3\xa9z\", \"drawers\": [{}]"),
              ElementsAre("length-syntax \xc3\xa9z"));
  EXPECT_THAT(FaultsOf(R"("round": "", "drawers": [{}])"), ElementsAre("length-syntax \"\""));
  EXPECT_THAT(FaultsOf(R"("round": "1/3", "drawers": [{}])"),
              ElementsAre("length-inexact \"1/3\""));
  EXPECT_THAT(FaultsOf(R"("round": 1e-1, "drawers": [{}])"), ElementsAre("length-syntax 1e-1"));
}

struct Case {
  const char* rest;
  const char* fault;  // empty: it reads
};

TEST(ReadSpec, KeysThatExcludeOrNeedOneAnother) {
  for (const Case& row : {
           Case{R"("drawers": [])", "missing-key \"drawers\""},
           Case{R"("layout": {"rows": []})", "missing-key \"rows\""},
           Case{R"("layout": {})", "missing-key {"},
           Case{R"("layout": {"gap": 1})", "missing-key {"},
           Case{R"("layout": {"drawer": {}})", ""},
           Case{R"("layout": {"drawer": {}, "blank": {}})", "conflict \"blank\""},
           Case{R"("layout": {"drawer": {}, "gap": 1})", "not-applicable \"gap\""},
           Case{R"("layout": {"drawer": {}, "min": 1})", "conflict \"min\""},
           Case{R"("layout": {"drawer": {"min": 1}})", "conflict 1"},
           Case{R"("layout": {"rows": [{"drawer": {"min": 1}, "max": 2}]})", ""},
           Case{R"("layout": {"rows": [{"drawer": {"min": 1}, "min": 1}]})", "conflict \"min\""},
           Case{R"("layout": {"rows": [{"drawer": {}}]}, "gap": 1)", "conflict \"gap\""},
           Case{R"("layout": {"rows": [{"drawer": {}}]}, "divider": 1)", "conflict \"divider\""},
           Case{R"("layout": {"rows": [{"drawer": {}}]}, "drawers": [{}])", "conflict \"layout\""},
           Case{R"("drawers": [{}], "divider": "none", "gap": 0)", ""},
           Case{R"("drawers": [{"exact": 1, "min": 1}])", "conflict 1"},
           Case{R"("drawers": [{"weight": "4/3"}])", ""},
           Case{R"("drawers": [{"weight": 0}])", "number-range 0"},
           Case{R"("drawers": [{"weight": -1}])", "number-syntax -1"},
           Case{R"("drawers": [{"weight": "1/0"}])", "number-syntax \"1/0\""},
           Case{R"("drawers": [{"weight": 2}], "graduate": {"scheme": "geometric", "ratio": 2})",
                "not-applicable 2"},
           Case{R"("drawers": [{}], "graduate": {"scheme": "shares"})", "missing-key {"},
           Case{R"("drawers": [{}], "graduate": {"scheme": "shares", "shares": [1, 2]})",
                "conflict ["},
           Case{R"("drawers": [{}], "graduate": {"scheme": "geometric"})", "missing-key {"},
           Case{R"("drawers": [{}], "graduate": {"ratio": 2})", "not-applicable \"ratio\""},
           Case{R"("drawers": [{}], "graduate": {"scheme": "arithmetic", "step": "-1/8"})", ""},
           Case{R"("drawers": [{}], "fronts": {"edge": 1})", "not-applicable \"edge\""},
           Case{R"("drawers": [{}], "fronts": {"style": "inset", "edge": 0})", ""},
           Case{R"("drawers": [{}], "fronts": {"style": "inset", "overlay": 1})",
                "not-applicable \"overlay\""},
           Case{R"("drawers": [{}], "fronts": {"overlay": {"reveal": 0, "top": 1}})",
                "unknown-key \"top\""},
           Case{R"("drawers": [{}], "fronts": {"overlay": {"top": "flush", "left": -1}})", ""},
           Case{R"("drawers": [{}], "slides": {"lengths": []})", "missing-key ["},
           Case{R"("drawers": [{}], "season": {"made": 31})", "number-range 31"},
           Case{R"("drawers": [{}], "season": {"dry": {"temperature": "70 F", "humidity": 45}})",
                ""},
           Case{R"("drawers": [{}], "season": {"dry": {"temperature": "70", "humidity": 45}})",
                "number-syntax \"70\""},
           Case{R"("drawers": [{}], "season": {"dry": {"temperature": "21 C"}})", "missing-key {"},
           Case{R"("drawers": [{}], "spacers": [{"thickness": "0.3 mm", "count": 1.5}])",
                "number-range 1.5"},
       }) {
    SCOPED_TRACE(row.rest);
    if (*row.fault == '\0') {
      EXPECT_THAT(FaultsOf(row.rest), IsEmpty());
    } else {
      const std::string wanted = row.fault;
      EXPECT_THAT(FaultsOf(row.rest), ElementsAre(wanted));
    }
  }
}

// Which keys may be zero or negative is part of the contract.
TEST(ReadSpec, ZeroAndNegativeLengthsWhereTheyMakeSense) {
  for (const char* key : {"round", "grid"}) {
    EXPECT_THAT(FaultsOf("\"" + std::string(key) + "\": 0, \"drawers\": [{}]"),
                ElementsAre("length-range 0"));
  }
  EXPECT_THAT(FaultsOf(R"("fronts": {"gap": 0, "overlay": -1}, "drawers": [{}])"), IsEmpty());
  EXPECT_THAT(FaultsOf(R"("fronts": {"gap": -1}, "drawers": [{}])"),
              ElementsAre("length-range -1"));
  EXPECT_THAT(FaultsOf(R"("slides": {"behind": 0, "clearance": 0, "line": 0},
                          "box": {"bottom": {"up": 0, "play": 0}, "corner": {"back_setback": 0},
                                  "clear_below": 0, "clear_above": 0}, "drawers": [{}])"),
              IsEmpty());
  EXPECT_THAT(FaultsOf(R"("slides": {"type": "undermount", "deduct": 0}, "drawers": [{}])"),
              IsEmpty());
  EXPECT_THAT(FaultsOf(R"("slides": {"type": "undermount", "side_max": 0, "length": 0}, "box":
                          {"height": 0}, "drawers": [{"exact": 0}])"),
              ElementsAre("length-range 0", "length-range 0", "length-range 0", "length-range 0"));
}

TEST(ReadSpec, UnitsHoldForTheWholeSpecWhereverTheyStand) {
  const Spec spec = testing::MustRead(
      R"({"opening": {"width": 300, "height": "300", "depth": "12 in"}, "drawers": [{}],
          "units": "mm"})");
  EXPECT_EQ(spec.opening->width.value, Length::Millimeters(300));
  EXPECT_EQ(spec.opening->height.value, Length::Millimeters(300));
  EXPECT_EQ(spec.opening->depth.value, Length::Inches(12));
}

}  // namespace
}  // namespace tillwright
