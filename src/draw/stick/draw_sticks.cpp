#include <algorithm>
#include <array>
#include <optional>

#include "bank/headings.h"
#include "draw/stick/find_parts.h"
#include "draw/stick/key.h"
#include "draw/stick/page.h"
#include "draw/stick/strip.h"
#include "draw/stick/templates.h"
#include "sheet/sheet_packer.h"
#include "sheet/title_block.h"
#include "tillwright/stick.h"

namespace tillwright {
namespace {

constexpr double kBetweenPieces = 3;     // mm
constexpr double kLongestAlone = 20000;  // mm, of a file for a plotter

// How pages come about: cut sheets of one size, a roll cut to length, or a file of its own size for
// each stick.
enum class Feed : std::uint8_t { kSheets, kRoll, kAlone };

// Something to be placed: a piece of a strip, or a template.
struct Block {
  double width = 0;
  double height = 0;
};

// One page in the making.
struct OpenPage {
  StickPage page;
  SheetPacker packer;
  std::string name;  // of a file that stands alone
  std::vector<SheetGroup> groups;
};

class Pager {
 public:
  Pager(const Bank& bank, const StickOptions& options, bool alone, const TextMetrics& metrics)
      : bank_(bank), options_(options), metrics_(metrics) {
    feed_ = alone ? Feed::kAlone : options.roll ? Feed::kRoll : Feed::kSheets;
    style_.unit = bank.units;
    style_.units = options.units;
    style_.datum_up = options.datum_up;
    style_.mirror = options.mirror;
    style_.correction = {options.correct_x, options.correct_y};
    page_.title = TitleOr(bank.title);
    page_.margin = options.margin;
    page_.style = style_;
    SizePage();
  }

  StickSheets Run() {
    out_.sticks = MakeSticks(bank_, options_);
    for (const Stick& stick : out_.sticks) {
      for (const StickMark& mark : stick.marks) page_.longest = Max(page_.longest, mark.at);
    }
    WordsFor(page_);
    for (std::size_t i = 0; options_.sticks && i < out_.sticks.size(); ++i) AddStick(i);
    if (options_.sticks) AddKey();
    if (options_.templates) AddTemplates();
    if (open_.empty() && out_.fault.empty()) out_.fault = "there is nothing to draw";
    if (out_.fault.empty()) Finish();
    return std::move(out_);
  }

 private:
  void SizePage() {
    if (feed_ == Feed::kSheets) {
      const PaperSize size =
          SizeOf(options_.paper.value_or(UsualPaper(bank_.units)), Orientation::kPortrait);
      page_.width = size.width;
      page_.height = size.height;
      return;
    }
    const bool roll = feed_ == Feed::kRoll;
    page_.width = roll && options_.roll_width > 0 ? options_.roll_width : kWidest;
    page_.height = roll ? options_.max_length : kLongestAlone;
    fits_width_ = !(roll && options_.roll_width > 0);
  }

  // Words for a page that may become as wide as it needs are reckoned for the least width, where
  // they take the most room.
  void WordsFor(StickPage& page) const {
    const double width = page.width;
    if (fits_width_) page.width = kLeastWidth;
    SetWords(page, metrics_);
    page.width = width;
  }

  [[nodiscard]] PieceRoom Room() const {
    const PaperBox space = PieceSpace(page_);
    return {space.Width(), space.Height()};
  }

  void AddStick(std::size_t index) {
    const Stick& stick = out_.sticks[index];
    const std::vector<Strip> strips = StripsOf(stick, style_, Room(), metrics_);
    if (strips.empty()) {
      out_.fault = "the paper is too small for the stick \"" + stick.title + "\"";
      return;
    }
    int most = 1;
    double width = 0;  // of all side by side
    for (const Strip& strip : strips) {
      most = std::max(most, strip.pieces());
      const int beside = feed_ == Feed::kAlone ? strip.pieces() : 1;
      width += beside * (strip.width + kBetweenPieces);
    }
    if (feed_ != Feed::kSheets) NewPage(stick.name, width);
    for (int piece = 1; piece <= most; ++piece) {
      for (const Strip& strip : strips) {
        if (piece <= strip.pieces()) AddPiece(index, strip, piece);
      }
    }
  }

  void AddPiece(std::size_t stick, const Strip& strip, int piece) {
    const Block block{strip.width, PieceHeight(strip, piece, style_)};
    std::size_t sheet = 0;
    const PaperPoint corner =
        PlaceOf(block, "a piece of the stick \"" + strip.stick->title + "\"", sheet);
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

  // What is no strip stands on a page of its own where pages are as long as they need be.
  [[nodiscard]] PieceRoom BlockRoom() const {
    const PieceRoom room = Room();
    if (feed_ == Feed::kSheets) return room;
    return {std::min(room.width, 180.0), std::min(room.height, 250.0)};
  }

  void AddKey() {
    out_.parts = FindParts(bank_, out_.sticks);
    AddBlocks("key", KeyOf(out_, style_, BlockRoom(), metrics_));
  }

  void AddTemplates() {
    AddBlocks("templates", TemplatesOf(bank_, style_, options_.screws.value_or(ScrewRow()),
                                       BlockRoom(), metrics_));
  }

  void AddBlocks(const std::string& name, std::vector<Template> templates) {
    if (templates.empty()) return;
    if (feed_ != Feed::kSheets) {
      double width = 0;
      for (const Template& t : templates) width = std::max(width, t.width);
      NewPage(name, width);
    }
    for (Template& t : templates) {
      std::size_t sheet = 0;
      const PaperPoint corner = PlaceOf({t.width, t.height}, "\"" + t.group.title + "\"", sheet);
      Shift(t.group, corner.x, corner.y);
      open_[sheet].groups.push_back(std::move(t.group));
    }
  }

  // `width` of what shall stand side by side, where the page may be as wide as it needs.
  void NewPage(const std::string& name, double width) {
    StickPage page = page_;
    if (fits_width_) {
      const double beside = page.width - Room().width;
      page.width = std::max(width + beside, kLeastWidth);
      SetWords(page, metrics_);
    }
    if (feed_ == Feed::kSheets && !open_.empty()) SetFewWords(page, metrics_);
    if (feed_ == Feed::kSheets)
      first_open_ = 0;
    else
      first_open_ = open_.size();
    const PaperBox space = PieceSpace(page);
    open_.push_back({page, SheetPacker(space, kBetweenPieces), name, {}});
  }

  PaperPoint PlaceOf(const Block& block, const std::string& what, std::size_t& sheet) {
    for (sheet = first_open_; sheet < open_.size(); ++sheet) {
      if (const auto corner = open_[sheet].packer.Place(block.width, block.height)) return *corner;
    }
    const std::size_t first = first_open_;
    NewPage(open_.empty() ? "sticks" : open_.back().name, block.width);
    first_open_ = first;
    const auto corner = open_.back().packer.Place(block.width, block.height);
    if (corner) return *corner;
    out_.fault = "the paper is too small for " + what;
    return {0, 0};
  }

  void Finish() {
    const int count = static_cast<int>(open_.size());
    for (int i = 0; i < count; ++i) {
      OpenPage& open = open_[static_cast<std::size_t>(i)];
      if (feed_ != Feed::kSheets) open.page.height = LengthOf(open);
      Sheet sheet = MakePage(open.page, i + 1, count, metrics_);
      if (feed_ == Feed::kAlone) sheet.name = open.name;
      for (SheetGroup& group : open.groups) sheet.groups.push_back(std::move(group));
      out_.sheets.push_back(std::move(sheet));
    }
  }

  // As long as what stands on it asks for, and a bar of 150 mm and 6 in beside it.
  [[nodiscard]] double LengthOf(const OpenPage& open) const {
    const double below = open.page.height - PieceSpace(open.page).bottom;
    const double bar = open.page.margin + 154 * std::max(1.0, style_.correction.y);
    return std::max(Bounds(std::span<const SheetGroup>(open.groups)).bottom + 2, bar) + below;
  }

  static constexpr double kWidest = 5080;
  static constexpr double kLeastWidth = 180;

  const Bank& bank_;
  const StickOptions& options_;
  const TextMetrics& metrics_;
  Feed feed_ = Feed::kSheets;
  StripStyle style_;
  StickPage page_;
  bool fits_width_ = false;
  std::size_t first_open_ = 0;  // the first page that may still take pieces
  std::vector<OpenPage> open_;
  StickSheets out_;
};

}  // namespace

StickSheets DrawSticks(const Bank& bank, const StickOptions& options, const TextMetrics& metrics) {
  return Pager(bank, options, false, metrics).Run();
}

StickSheets DrawSticksAlone(const Bank& bank, const StickOptions& options,
                            const TextMetrics& metrics) {
  return Pager(bank, options, true, metrics).Run();
}

}  // namespace tillwright
