// How a lane becomes strips and pieces that fit.
#include <algorithm>
#include <cmath>
#include <map>

#include "draw/stick/strip.h"
#include "draw/stick/strip_room.h"
#include "draw/stick/strip_text.h"

namespace tillwright {
namespace {

constexpr int kLeastPiece = 60;  // mm, so that no joint is followed by a scrap
constexpr int kMostParts = 64;

// Joints fall on whole inches, or on whole 50 mm.
Length JointGrid(Unit unit) {
  return unit == Unit::kInch ? Length::Inches(1) : Length::Millimeters(50);
}

class StripPlanner {
 public:
  StripPlanner(const Stick& stick, const StripStyle& style, const PieceRoom& room,
               const TextMetrics& metrics)
      : stick_(stick), style_(style), room_(room), metrics_(metrics) {}

  // The strips of a lane: as few as hold all its marks.
  std::vector<Strip> Lane(StickLane lane) {
    std::vector<std::size_t> marks;
    for (std::size_t i = 0; i < stick_.marks.size(); ++i) {
      if (stick_.marks[i].lane == lane) marks.push_back(i);
    }
    for (int parts = 1; parts <= kMostParts; ++parts) {
      std::vector<Strip> strips = Shared(lane, marks, parts);
      if (strips.empty()) return {};
      if (std::ranges::all_of(strips, [&](const Strip& strip) { return HoldsLabels(strip); })) {
        return strips;
      }
    }
    return {};
  }

 private:
  std::vector<Strip> Shared(StickLane lane, const std::vector<std::size_t>& marks, int parts) {
    std::vector<Strip> strips(static_cast<std::size_t>(parts));
    for (int part = 1; part <= parts; ++part) {
      Strip& strip = strips[static_cast<std::size_t>(part) - 1];
      strip.stick = &stick_;
      strip.lane = lane;
      strip.part = part;
      strip.parts = parts;
    }
    // Marks of one drawer stay together while there are drawers enough to share out; every strip
    // has the datum.
    std::map<std::string, std::size_t> things;
    for (const std::size_t i : marks) {
      if (IsDatum(stick_.marks[i])) {
        for (Strip& strip : strips) strip.marks.push_back(i);
        continue;
      }
      const std::vector<std::string>& ids = stick_.marks[i].ids;
      const std::string thing = parts > 8     ? std::to_string(i)
                                : ids.empty() ? stick_.marks[i].what
                                              : ids[0];
      const auto at = things.try_emplace(thing, things.size()).first;
      strips[at->second % strips.size()].marks.push_back(i);
    }
    for (Strip& strip : strips) {
      if (!Size(strip)) return {};
    }
    return strips;
  }

  [[nodiscard]] bool IsDatum(const StickMark& mark) const {
    return mark.at.IsZero() && mark.what == stick_.datum;
  }

  bool Size(Strip& strip) {
    strip.begin = stick_.Begin(strip.lane);
    strip.end = Max(stick_.End(strip.lane), strip.begin + Length::Millimeters(45));
    AddLabels(strip);
    return strip.width <= room_.width && Joint(strip);
  }

  // Makes the labels, cut where the room asks for it, and the strip as wide as they need.
  void AddLabels(Strip& strip) {
    const double around = kLabelsFrom + RulerZone(strip, style_, metrics_);
    double widest = 30;  // room for the words at joints
    strip.labels.reserve(strip.marks.size());
    for (const std::size_t i : strip.marks) {
      strip.labels.push_back(
          MarkLabel(stick_, stick_.marks[i], style_, room_.width - around, metrics_));
      widest = std::max(widest, strip.labels.back().width);
    }
    strip.width = around + widest;
  }

  // Joints as far apart as the room allows, on the grid, and what is written at them.
  bool Joint(Strip& strip) {
    const Length grid = JointGrid(RulerUnit(style_));
    const std::vector<std::string> total = TotalLines(strip, style_, metrics_);
    for (Length from = strip.begin;;) {
      strip.words.push_back({FootLines(strip, strip.pieces(), style_, metrics_), total});
      if (PieceHeight(strip, strip.pieces(), style_) <= room_.height) return true;
      const double foot = FootHeight(strip, strip.pieces());
      Length joint = FloorTo(from + TrueLength(room_.height - foot - kOverlap), grid);
      const Length least = Length::Millimeters(kLeastPiece);
      if (strip.end - joint < least) joint = FloorTo(strip.end - least, grid);
      if (joint - from < grid) return false;
      strip.joints.push_back(joint);
      strip.words.back().head = JointLines(strip, strip.pieces() - 1, style_, metrics_);
      from = joint;
    }
  }

  // What comes out at most this long on paper.
  [[nodiscard]] Length TrueLength(double paper) const {
    const double mm = std::max(0.0, paper) / style_.correction.y;
    return Length::Picometers(
        static_cast<std::int64_t>(std::floor(mm * static_cast<double>(Length::kPerMillimeter))));
  }

  [[nodiscard]] bool HoldsLabels(const Strip& strip) const {
    for (int piece = 1; piece <= strip.pieces(); ++piece) {
      double need = 0;
      for (const std::size_t i : MarksOn(strip, piece)) {
        need += strip.labels[i].box.Height() + kLabelSpace;
      }
      const LabelRange range = RangeOf(strip, piece, style_);
      if (need - kLabelSpace > range.high - range.low) return false;
    }
    return true;
  }

  const Stick& stick_;
  const StripStyle& style_;
  const PieceRoom& room_;
  const TextMetrics& metrics_;
};

}  // namespace

std::vector<std::size_t> MarksOn(const Strip& strip, int piece) {
  std::vector<std::size_t> marks;
  const bool last = piece == strip.pieces();
  for (std::size_t i = 0; i < strip.marks.size(); ++i) {
    const Length at = strip.stick->marks[strip.marks[i]].at;
    if (at >= strip.From(piece) && (last || at < strip.To(piece))) marks.push_back(i);
  }
  return marks;
}

LabelRange RangeOf(const Strip& strip, int piece, const StripStyle& style) {
  const double length = ToMillimeters(strip.To(piece) - strip.From(piece)) * style.correction.y;
  return {piece == 1 ? kEndSpace : kJointSpace,
          length - (piece == strip.pieces() ? kEndSpace : kJointSpace)};
}

std::vector<Strip> StripsOf(const Stick& stick, const StripStyle& style, const PieceRoom& room,
                            const TextMetrics& metrics) {
  StripPlanner planner(stick, style, room, metrics);
  std::vector<Strip> all;
  for (const StickLane lane : {StickLane::kCase, StickLane::kBox, StickLane::kFront}) {
    if (!stick.Has(lane)) continue;
    std::vector<Strip> strips = planner.Lane(lane);
    if (strips.empty()) return {};
    for (Strip& strip : strips) all.push_back(std::move(strip));
  }
  return all;
}

}  // namespace tillwright
