// The lists a maker works from: what is sawn, and what is bought. One line for every kind of part,
// under the label that the drawings have too.
//
// Counts, screw lengths and the like that the spec does not tell are common practice, no source;
// the amount of glue is an estimate and says so.
#ifndef TILLWRIGHT_PARTS_H_
#define TILLWRIGHT_PARTS_H_

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/spec.h"

namespace tillwright {

// Parts that are made alike: same role, sizes, grain, material, cuts and holes.
struct PartKind {
  std::vector<std::size_t> parts;  // indices into Bank::parts, ascending; the first is drawn
  int count = 0;                   // pieces in all
  int mirrored = 0;                // of which are the mirror image of what is drawn
};

// Every part of the bank in exactly one kind, kinds in the order of their first parts.
[[nodiscard]] std::vector<PartKind> PartKinds(const Bank& bank);

// What the parts are for, runs of numbers drawn together: "D1–D3, D5", "H1"; empty for a part of
// the case.
[[nodiscard]] std::string PartKindIds(const Bank& bank, const PartKind& kind);

// What lists, drawings and sticks call a kind: "box side D1–D3, D5", "case bottom".
[[nodiscard]] std::string PartKindLabel(const Bank& bank, const PartKind& kind);

// The same in letters, digits and '-', for names of files: "box-side-d1-to-d3-d5"; of many ids the
// first, and how many more there are.
[[nodiscard]] std::string PartKindStem(const Bank& bank, const PartKind& kind);

// Edges of a sheet part that get a band: how many along its length, how many along its width.
struct Banding {
  int along = 0;
  int across = 0;
  std::string_view where;  // "front edge", "upper edge", "all edges"; empty for none
};

// One line of the cut list.
struct CutLine {
  PartKind kind;
  std::string label;                 // PartKindLabel()
  Length length, width, thickness;   // finished, length along the grain
  Length rough_length, rough_width;  // what is sawn first: with the allowance, less the bands
  std::string material;
  Grain grain = Grain::kNone;
  bool solid = false;  // solid wood, by its material's name
  Banding banding;
  int boards = 1;                   // glued up from so many
  Length board_width{};             // of each, rough; zero when it is of one
  std::vector<std::string> runs{};  // the labels of the runs that its pieces stand in
};

// For the saw: by material, then the thickest, widest and longest first.
[[nodiscard]] std::vector<CutLine> CutList(const Spec& spec, const Bank& bank);
// The same where boards come from another spec's stock: several banks that share one.
[[nodiscard]] std::vector<CutLine> CutList(const Spec& spec, const Bank& bank,
                                           const StockListSpec& stock);

// Fronts that are cut out of one piece in their order, a kerf between neighbors, so that the grain
// runs on from each to the next.
struct FrontRun {
  std::string label;               // "R1"
  std::vector<std::size_t> parts;  // indices into Bank::parts: left to right, or top to bottom
  bool across = false;             // edge to edge across the grain; else end to end along it
  Length length, width;            // of the piece as it is sawn, its length along the grain
};

// The runs that the spec's `match` asks for, in reading order. A solid piece has the allowance
// once, in place of that of each front. REQUIRES: the lines are the bank's cut list.
[[nodiscard]] std::vector<FrontRun> FrontRuns(const Spec& spec, const Bank& bank,
                                              const std::vector<CutLine>& lines);

// "left to right" or "top to bottom": the order of a run.
[[nodiscard]] std::string_view OrderWords(FrontMatch match);

// The fronts of a run by their ids, in order: "D1–D3, B1".
[[nodiscard]] std::string FrontsOf(const Bank& bank, const FrontRun& run);

// The runs that the pieces of a line stand in: "R1–R3"; empty for none.
[[nodiscard]] std::string RunLabels(const CutLine& line);

enum class HardwareKind : std::uint8_t {
  kSlide,
  kScrew,
  kDowel,
  kPull,
  kBand,
  kGlue,
  kAnchor,
  kFoot
};
[[nodiscard]] std::string_view ToText(HardwareKind kind);

enum class HardwareUnit : std::uint8_t { kPairs, kPieces, kMillimeters, kInches, kMillilitres };
[[nodiscard]] std::string_view ToText(HardwareUnit unit);

// One line of the shopping list.
struct HardwareLine {
  HardwareKind kind = HardwareKind::kSlide;
  std::string what;        // "side-mount slide", "front screw"
  Length length;           // of one; zero where there is no such, or the maker must choose it
  bool suggested = false;  // the length is not the spec's but suits the stock
  std::int64_t amount = 0;
  HardwareUnit unit = HardwareUnit::kPieces;
  bool estimate = false;
  std::string use;     // "D1–D4"; empty when it is for the whole piece
  std::string remark;  // empty, or one clause
};

[[nodiscard]] std::vector<HardwareLine> HardwareList(const Spec& spec, const Bank& bank);

// Both lists of a bank.
struct PartsLists {
  std::vector<CutLine> cuts;
  std::vector<HardwareLine> hardware;
  std::vector<FrontRun> runs;
};
[[nodiscard]] PartsLists MakePartsLists(const Spec& spec, const Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_PARTS_H_
