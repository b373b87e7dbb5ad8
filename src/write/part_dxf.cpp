// Sheet parts for a router or laser: one file for every kind of part, hand and face.
#include <algorithm>

#include "bank/part_roles.h"
#include "tillwright/assembly.h"
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
      : line_(line), part_(bank.parts[line.kind.parts.front()]) {}

  // The file of one hand or face: the piece seen from its drawn face or, `behind`, from the other
  // one.
  std::string File(const PlacedPart& piece, bool behind, std::string_view hand) {
    Dxf dxf;
    mirrored_ = piece.mirrored || behind;
    right_ = RightSize(piece);
    up_ = UpSize(piece);
    Outline(dxf);
    for (const PlacedCut& cut : piece.cuts) {
      if (IsBand(cut) && cut.behind == behind) Band(dxf, cut);
      if (cut.run == CutRun::kBore && !behind) Hole(dxf, piece, cut);
    }
    dxf.Layer("LABEL", 7);
    std::string label = line_.label;
    if (!hand.empty()) label += ", " + std::string(hand);
    dxf.Text("LABEL", {Length(), -2 * kTextHeight}, kTextHeight, label);
    return dxf.Take("1 unit is 1 mm. " + label + ", " + FormatMillimeters(part_.thickness) +
                    " mm thick");
  }

 private:
  DxfPoint At(Length x, Length y) const { return {mirrored_ ? right_ - x : x, y}; }

  void Rectangle(Dxf& dxf, const std::string& layer, Length left, Length lower, Length right,
                 Length upper) const {
    dxf.Polygon(layer, {At(left, lower), At(right, lower), At(right, upper), At(left, upper)});
  }

  void Outline(Dxf& dxf) const {
    const Bands bands = BandsOf(line_, part_.role);
    dxf.Layer("OUTLINE", 7);
    const Length right = right_ - bands.right;
    const Length upper = up_ - bands.upper;
    const Notch& notch = part_.notch;
    if (notch.IsNone()) return Rectangle(dxf, "OUTLINE", bands.left, bands.lower, right, upper);
    dxf.Polygon("OUTLINE", {At(notch.width, Length()), At(right, Length()), At(right, upper),
                            At(bands.left, upper), At(bands.left, notch.height),
                            At(notch.width, notch.height)});
  }

  // By the word of what is cut; of what takes a member: dado or groove.
  void Band(Dxf& dxf, const PlacedCut& cut) const {
    const std::string layer = LayerOf(ToText(cut.kind), cut.depth);
    dxf.Layer(layer, cut.partly ? 6 : 5);
    if (cut.IsUpright()) return Rectangle(dxf, layer, cut.low, Length(), cut.high, up_);
    Rectangle(dxf, layer, Length(), cut.low, right_, cut.high);
  }

  void Hole(Dxf& dxf, const PlacedPart& piece, const PlacedCut& cut) const {
    const std::string layer = LayerOf("hole", part_.thickness);
    dxf.Layer(layer, 1);
    dxf.Circle(layer, At(cut.block.x - piece.block.x, cut.block.y - piece.block.y), kHoleRadius);
  }

  const CutLine& line_;
  const Part& part_;
  Length right_, up_;
  bool mirrored_ = false;
};

}  // namespace

std::vector<NamedText> PartDxfFiles(const Bank& bank, const std::vector<CutLine>& lines) {
  std::vector<NamedText> files;
  for (const CutLine& line : lines) {
    if (line.solid) continue;
    PartDxf dxf(bank, line);
    const std::string name = PartKindStem(bank, line.kind);
    const std::vector<PlacedPart> pieces = PiecesOf(bank, line.kind.parts.front());
    const PlacedPart& piece = pieces.front();
    const bool hands = line.kind.mirrored > 0;
    files.push_back(
        {name + (hands ? "-left" : "") + ".dxf", dxf.File(piece, false, hands ? "left" : "")});
    if (hands) files.push_back({name + "-right.dxf", dxf.File(pieces.back(), false, "right")});
    if (std::ranges::any_of(piece.cuts, &PlacedCut::behind)) {
      files.push_back({name + "-other-face.dxf", dxf.File(piece, true, "other face")});
    }
  }
  return files;
}

}  // namespace tillwright
