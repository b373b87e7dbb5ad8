// What a job is cut from: its parts laid out on sheets and boards, and what to buy.
//
// One or more banks share the stock. Parts are grouped by material and thickness; each group is a
// nesting job of its own (nest.h). Solid wood is cut from boards: what is wider than a board is
// glued up of several. Everything else is cut from sheets. Fronts that are matched stay together in
// runs (StockRun).
#ifndef TILLWRIGHT_STOCK_H_
#define TILLWRIGHT_STOCK_H_

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/nest.h"
#include "tillwright/parts.h"
#include "tillwright/spec.h"

namespace tillwright {

// One bank of the job. REQUIRES: all outlive the call.
struct StockSource {
  const Spec* spec = nullptr;
  const Bank* bank = nullptr;
  const std::vector<CutLine>* cuts = nullptr;  // its cut list, where that is known already
};

// A kind of part as it is sawn. The same index in StockGroup::parts and NestJob::parts.
struct StockPart {
  std::string label;  // "A: box side D1–D3" when there are several banks
  Length length;      // finished
  Length width;
  std::int64_t count = 1;
  int boards = 1;  // boards glued side by side to make one
};

// Fronts that are cut out of one piece of this stock in their order, so that the grain runs on. A
// run that no piece is large enough for is cut in stretches, each of them one of these; a stretch
// may be one front.
struct StockRun {
  std::string label;    // "R1", its stretches "R1a", "R1b"; "R1 of A" with several banks
  std::string whole{};  // the run it is a stretch of; empty: all of it
  std::string bank{};   // "A"; empty when there is one
  std::vector<std::string> fronts{};  // "D1", "B1", left to right or top to bottom
  FrontMatch match = FrontMatch::kRow;
  bool across = false;      // edge to edge across the grain; else end to end along it
  Length length, width;     // of the piece as it is sawn, its length along the grain
  std::int32_t panel = -1;  // cut from this one of StockGroup::parts, which is glued up first
};

// Everything of one material and thickness.
struct StockGroup {
  std::string material;  // may be empty
  Length thickness;      // finished
  bool solid = false;    // from boards
  Length rough;          // of the boards before planing; sheets: the thickness
  std::vector<StockPart> parts;
  std::vector<StockRun> runs;    // those of NestJob::runs by the same index
  std::vector<StockRun> panels;  // those that are cut from panels glued up
  NestJob job;
  NestPlan plan;
  std::int32_t usual = -1;  // of NestJob::stock: of the usual size, as no other can be bought
  // Of one of NestJob::stock: where it begins on the whole piece (defects cut a piece into
  // several).
  std::vector<Length> begins;
};

struct StockPlan {
  Unit units = Unit::kInch;
  std::string title;               // of the first bank
  std::vector<std::string> banks;  // titles of all, A, B …, where there are several
  bool priced = false;             // every piece that is bought has a price
  int waste_percent = 0;           // what boards are bought over the layouts
  std::vector<StockGroup> groups;  // sheets first; by material and thickness
};

// REQUIRES: at least one source. The first source that gives "stock" gives it for all, and the
// first gives units and title.
[[nodiscard]] StockPlan PlanStock(std::span<const StockSource> sources);

// A, B, C …: what marks the parts of a bank where there are several; those past the 26th share the
// last.
[[nodiscard]] char BankLetter(std::size_t index);

// What is used of one kind of stock.
struct StockUse {
  std::int32_t stock = 0;  // in NestJob::stock
  std::int64_t count = 0;
};
[[nodiscard]] std::vector<StockUse> UsesOf(const StockGroup& group);

// The fronts of a run by their ids, in order: "D1–D3, B1".
[[nodiscard]] std::string FrontsOf(const StockRun& run);

// Volume of the boards of a group, in cubic millimeters as bought, the waste included: an estimate.
[[nodiscard]] double BoardVolume(const StockPlan& plan, const StockGroup& group);

// Whether every part found a place.
[[nodiscard]] bool IsWhole(const StockPlan& plan);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_H_
