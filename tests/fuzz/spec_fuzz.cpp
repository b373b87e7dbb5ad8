// Any text as a spec, through solving and every writer: no crash, places inside the text, JSON that
// another parser takes, tables within a page and without control characters.
#include <cstdint>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <string>

#include "tillwright/check.h"
#include "tillwright/dimensions.h"
#include "tillwright/gap_check.h"
#include "tillwright/read.h"
#include "tillwright/solve.h"
#include "tillwright/write.h"

namespace {

using tillwright::Bank;
using tillwright::Diagnostics;
using tillwright::Outcome;
using tillwright::Spec;

void Demand(bool holds) {
  if (!holds) std::abort();
}

// Newlines are the only control characters that text for people may hold.
void DemandPlain(const std::string& text) {
  for (const char c : text) Demand(c == '\n' || static_cast<unsigned char>(c) >= 0x20);
}

void Refused(const Diagnostics& diagnostics, const std::string& text) {
  Demand(!diagnostics.empty());
  for (const tillwright::Diagnostic& d : diagnostics) {
    Demand(!d.place.IsSomewhere() || d.place.offset <= text.size());
    Demand(!d.message.empty());
  }
  DemandPlain(tillwright::DiagnosticsText(diagnostics, "spec", text, {}));
  Demand(nlohmann::json::accept(tillwright::DiagnosticsJson(diagnostics, "spec", text)));
}

// Small banks only: what is wrong shows in them too, and many more of them are tried.
void GapsChecked(const Spec& spec, const Bank& bank, const std::string& text) {
  constexpr std::size_t kMostSpaces = 60;
  if (bank.spaces.size() > kMostSpaces) return;
  const Outcome<tillwright::GapCheck> check = tillwright::CheckGaps(spec, bank);
  if (!check.ok()) return Refused(check.diagnostics(), text);
  const std::vector<tillwright::Finding>& findings = check.value().findings;
  Demand(nlohmann::json::accept(tillwright::CheckJson(spec, bank, check.value(), findings)));
  DemandPlain(tillwright::CheckTables(spec, bank, check.value(), findings, {}));
}

void Solved(const Spec& spec, const std::string& text) {
  const Outcome<Bank> bank = tillwright::SolveBank(spec);
  tillwright::Trace trace;
  const Outcome<Bank> traced = tillwright::SolveBank(spec, trace);
  Demand(bank.ok() == traced.ok());
  if (!bank.ok()) return Refused(bank.diagnostics(), text);
  const std::vector<tillwright::Finding> findings = tillwright::CheckBank(spec, bank.value());
  const std::string json = tillwright::ResultJson(bank.value(), findings);
  Demand(nlohmann::json::accept(json));
  Demand(json == tillwright::ResultJson(traced.value(), findings));
  DemandPlain(tillwright::ResultTables(bank.value(), findings, {}));
  GapsChecked(spec, bank.value(), text);
  const std::vector<std::string> paths = tillwright::DimensionPaths(traced.value());
  for (std::size_t i = 0; i < paths.size(); i += paths.size() / 20 + 1) {
    const std::string why =
        tillwright::WhyText(traced.value(), trace, paths[i], "spec", text);
    Demand(!why.empty());
    DemandPlain(why);
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text(data, data + size);
  const Outcome<Spec> spec = tillwright::ReadSpec(text);
  if (spec.ok()) {
    Solved(spec.value(), text);
  } else {
    Refused(spec.diagnostics(), text);
  }
  return 0;
}
