#include <algorithm>
#include <array>

#include "draw/sheets_pack.h"
#include "draw/stick/page.h"
#include "draw/stick/strip.h"
#include "draw/title_block.h"
#include "tillwright/stick.h"

namespace tillwright {
namespace {

constexpr std::array<std::string_view, 5> kPapers{"A4", "A3", "Letter", "Tabloid", "roll"};
constexpr double kBetweenPieces = 4;  // mm

std::optional<Paper> PaperOf(std::string_view name) {
  for (const Paper paper : {Paper::kA4, Paper::kA3, Paper::kLetter, Paper::kTabloid}) {
    if (SizeOf(paper, Orientation::kPortrait).name == name) return paper;
  }
  return std::nullopt;
}

// One page in the making.
struct OpenPage {
  SheetPacker packer;
  std::vector<SheetGroup> groups;
};

// Puts pieces on pages of one size, each where the first page has room for it.
class Pager {
 public:
  Pager(const Bank& bank, const StickOptions& options, const TextMetrics& metrics)
      : options_(options), metrics_(metrics) {
    style_.unit = bank.units;
    style_.units = options.units;
    style_.datum_up = options.datum_up;
    style_.mirror = options.mirror;
    style_.correction = {options.correct_x, options.correct_y};
    out_.sticks = MakeSticks(bank, options);
    page_.title = bank.title.empty() ? "Drawer bank" : bank.title;
    page_.margin = options.margin;
    page_.correction = style_.correction;
    page_.style = style_;
    for (const Stick& stick : out_.sticks) {
      for (const StickMark& mark : stick.marks) page_.longest = Max(page_.longest, mark.at);
    }
    const std::string paper =
        !options.paper.empty() ? options.paper : bank.units == Unit::kInch ? "Letter" : "A4";
    const PaperSize size =
        SizeOf(PaperOf(paper).value_or(Paper::kA4), Orientation::kPortrait);
    page_.width = size.width;
    page_.height = size.height;
    space_ = PieceSpace(page_, metrics);
  }

  StickSheets Run() {
    for (std::size_t i = 0; i < out_.sticks.size() && out_.fault.empty(); ++i) AddStick(i);
    if (out_.fault.empty()) Finish();
    return std::move(out_);
  }

 private:
  void AddStick(std::size_t index) {
    const Stick& stick = out_.sticks[index];
    const std::vector<Strip> strips =
        StripsOf(stick, style_, {space_.Width(), space_.Height()}, metrics_);
    if (strips.empty()) {
      out_.fault = "the paper is too small for the stick \"" + stick.title + "\"";
      return;
    }
    int most = 1;
    for (const Strip& strip : strips) most = std::max(most, strip.pieces());
    for (int piece = 1; piece <= most; ++piece) {
      for (const Strip& strip : strips) {
        if (piece <= strip.pieces()) AddPiece(index, strip, piece);
      }
    }
  }

  void AddPiece(std::size_t stick, const Strip& strip, int piece) {
    const double height = PieceHeight(strip, piece, style_, metrics_);
    std::size_t sheet = 0;
    const PaperPoint corner = PlaceOf(strip.width, height, sheet);
    SheetGroup group;
    group.id = strip.stick->name + "-" + std::string(ToText(strip.lane)) + "-" +
               std::to_string(strip.part) + "-" + std::to_string(piece);
    group.title = strip.stick->title + ", " + std::string(ToText(strip.lane)) + ", piece " +
                  std::to_string(piece);
    StickPiece placed = DrawPiece(group, strip, piece, corner, style_, metrics_);
    placed.stick = stick;
    placed.sheet = sheet;
    out_.pieces.push_back(std::move(placed));
    open_[sheet].groups.push_back(std::move(group));
  }

  PaperPoint PlaceOf(double width, double height, std::size_t& sheet) {
    for (sheet = 0; sheet < open_.size(); ++sheet) {
      if (const auto corner = open_[sheet].packer.Place(width, height)) return *corner;
    }
    open_.push_back({SheetPacker(space_, kBetweenPieces), {}});
    const auto corner = open_.back().packer.Place(width, height);
    if (corner) return *corner;
    out_.fault = "the paper is too small for a piece of a stick";
    return {space_.left, space_.top};
  }

  void Finish() {
    for (std::size_t i = 0; i < open_.size(); ++i) {
      Sheet sheet =
          MakePage(page_, static_cast<int>(i) + 1, static_cast<int>(open_.size()), metrics_);
      for (SheetGroup& group : open_[i].groups) sheet.groups.push_back(std::move(group));
      out_.sheets.push_back(std::move(sheet));
    }
  }

  const StickOptions& options_;
  const TextMetrics& metrics_;
  StripStyle style_;
  StickPage page_;
  PaperBox space_;
  std::vector<OpenPage> open_;
  StickSheets out_;
};

}  // namespace

std::span<const std::string_view> StickPaperNames() { return kPapers; }

StickSheets DrawSticks(const Bank& bank, const StickOptions& options, const TextMetrics& metrics) {
  return Pager(bank, options, metrics).Run();
}

}  // namespace tillwright
