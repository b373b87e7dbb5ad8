// Sheet parts for a router or laser: one file for every kind of part, hand and face.
#include <algorithm>

#include "bank/part_roles.h"
#include "stock/part_seats.h"
#include "stock/part_shape.h"
#include "tillwright/write.h"
#include "write/dxf.h"

namespace tillwright {
namespace {

constexpr Length kHoleRadius = Length::Picometers(5 * Length::kPerMillimeter / 2);  // M4 with play
constexpr Length kTextHeight = Length::Millimeters(10);

// How much is sawn off less at each edge for the band that comes on.
struct Bands {
  Length left, right, lower, upper;
};

Bands BandsOf(const CutLine& line, PartRole role) {
  const Length along = line.width - line.rough_width;  // of all bands along the length
  if (line.banding.where.empty()) return {};
  switch (Facts(role).seen_at) {
    case FaceEdge::kAll: {
      const Length one = HalfBelow(along);
      return {one, one, one, one};
    }
    case FaceEdge::kUpper:
      return {{}, {}, {}, along};
    case FaceEdge::kLeft:
      return {along, {}, {}, {}};
    case FaceEdge::kLower:
      return {{}, {}, along, {}};
    case FaceEdge::kNone:
      break;
  }
  return {};
}

std::string LayerOf(std::string_view operation, Length depth) {
  std::string name;
  for (const char c : operation) {
    name += c == '-' || c == ' ' ? '_' : c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c;
  }
  name += "_D" + FormatMillimeters(depth) + "MM";
  std::ranges::replace(name, '.', '_');
  return name;
}

class PartDxf {
 public:
  PartDxf(const Bank& bank, const CutLine& line)
      : bank_(bank),
        line_(line),
        part_(bank.parts[line.kind.parts.front()]),
        shape_(ShapeOf(bank, part_)),
        seats_(SeatsIn(bank, part_)) {}

  // The file of one hand and face. `mirrored`: left for right. `other_face`: the seats of the other
  // face. `cuts`: with the drawn face's cuts and holes, else with those behind.
  std::string File(bool mirrored, bool other_face, bool cuts, std::string_view hand) {
    Dxf dxf;
    mirrored_ = mirrored;
    Outline(dxf);
    for (const CutBand& band : shape_.bands) {
      if (!band.seat && band.behind != cuts) Band(dxf, OperationOf(band), band);
    }
    for (const Seat& seat : seats_) {
      if (seat.other_face == other_face) Band(dxf, "dado", BandOf(seat));
    }
    if (cuts) Holes(dxf);
    dxf.Layer("LABEL", 7);
    std::string label = line_.label;
    if (!hand.empty()) label += ", " + std::string(hand);
    dxf.Text("LABEL", {Length(), -2 * kTextHeight}, kTextHeight, label);
    return dxf.Take("1 unit is 1 mm. " + label + ", " + FormatMillimeters(part_.thickness) +
                    " mm thick");
  }

  [[nodiscard]] bool HasOtherFace() const {
    return std::ranges::any_of(seats_, [](const Seat& seat) { return seat.other_face; }) ||
           std::ranges::any_of(shape_.bands, &CutBand::behind);
  }

 private:
  DxfPoint At(Length x, Length y) const { return {mirrored_ ? shape_.right - x : x, y}; }

  void Rectangle(Dxf& dxf, const std::string& layer, Length left, Length lower, Length right,
                 Length upper) const {
    dxf.Polygon(layer, {At(left, lower), At(right, lower), At(right, upper), At(left, upper)});
  }

  void Outline(Dxf& dxf) const {
    const Bands bands = BandsOf(line_, part_.role);
    dxf.Layer("OUTLINE", 7);
    const Length right = shape_.right - bands.right;
    const Length upper = shape_.up - bands.upper;
    const Notch& notch = shape_.notch;
    if (notch.IsNone()) return Rectangle(dxf, "OUTLINE", bands.left, bands.lower, right, upper);
    dxf.Polygon("OUTLINE", {At(notch.width, Length()), At(right, Length()), At(right, upper),
                            At(bands.left, upper), At(bands.left, notch.height),
                            At(notch.width, notch.height)});
  }

  std::string_view OperationOf(const CutBand& band) const {
    return ToText(part_.cuts[band.cut].kind);
  }

  static CutBand BandOf(const Seat& seat) {
    CutBand band;
    band.upright = seat.upright;
    band.low = seat.offset;
    band.high = seat.offset + seat.width;
    band.depth = seat.depth;
    return band;
  }

  void Band(Dxf& dxf, std::string_view operation, const CutBand& band) const {
    const std::string layer = LayerOf(operation, band.depth);
    dxf.Layer(layer, band.joint ? 6 : 5);
    if (band.upright) return Rectangle(dxf, layer, band.low, Length(), band.high, shape_.up);
    Rectangle(dxf, layer, Length(), band.low, shape_.right, band.high);
  }

  void Holes(Dxf& dxf) const {
    for (const PullHole& hole : shape_.holes) {
      const std::string layer = LayerOf("hole", part_.thickness);
      dxf.Layer(layer, 1);
      dxf.Circle(layer, At(hole.x, hole.y), kHoleRadius);
    }
  }

  const Bank& bank_;
  const CutLine& line_;
  const Part& part_;
  PartShape shape_;
  std::vector<Seat> seats_;
  bool mirrored_ = false;
};

}  // namespace

std::vector<NamedText> PartDxfFiles(const Bank& bank, const std::vector<CutLine>& lines) {
  std::vector<NamedText> files;
  for (const CutLine& line : lines) {
    if (line.solid) continue;
    PartDxf dxf(bank, line);
    const std::string name = PartKindStem(bank, line.kind);
    const bool hands = line.kind.mirrored > 0;
    const bool side = bank.parts[line.kind.parts.front()].role == PartRole::kCaseSide;
    files.push_back({name + (hands ? "-left" : "") + ".dxf",
                     dxf.File(false, false, true, hands ? "left" : "")});
    if (hands) files.push_back({name + "-right.dxf", dxf.File(true, side, true, "right")});
    if (!side && dxf.HasOtherFace()) {
      files.push_back({name + "-other-face.dxf", dxf.File(true, true, false, "other face")});
    }
  }
  return files;
}

}  // namespace tillwright
