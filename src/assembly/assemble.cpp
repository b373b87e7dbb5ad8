#include "assembly/cut_places.h"
#include "assembly/part_places.h"
#include "bank/part_roles.h"

namespace tillwright {
namespace {

PartOwner OwnerOf(const Part& part) {
  if (part.space >= 0) return {PartOwner::Kind::kSpace, part.space};
  if (part.divider >= 0) return {PartOwner::Kind::kMember, part.divider};
  return {};
}

PartBody BodyOf(PartGroup group) {
  if (group == PartGroup::kFront) return PartBody::kFront;
  return group == PartGroup::kBox ? PartBody::kBox : PartBody::kCase;
}

PlacedPart PlacedAt(const Bank& bank, std::size_t index, const Block& block, bool right,
                    const std::vector<Seat>& seats) {
  const Part& part = bank.parts[index];
  PlacedPart piece;
  piece.part = index;
  piece.role = part.role;
  piece.owner = OwnerOf(part);
  piece.body = BodyOf(Facts(part.role).group);
  piece.mirrored = right;
  piece.block = block;
  piece.clear = ClearOf(bank, part, block);
  piece.frame = Facts(part.role).frame;
  if (right) piece.frame.into.against = !piece.frame.into.against;
  PlaceCuts(bank, part, seats, piece);
  return piece;
}

// Adds the pieces of a part. Parts of the roles in Bank::pieces follow these in their order, those
// alike that follow one another as one part: `next` is the first one's index, if it is one of them.
void AddPieces(const Bank& bank, std::size_t index, std::size_t next,
               std::vector<PlacedPart>& out) {
  const Part& part = bank.parts[index];
  const std::vector<Seat> seats = SeatsIn(bank, part);
  for (int n = 0; n < part.count; ++n) {
    if (IsInPieces(Facts(part.role).group)) {
      const Block& block = bank.pieces[next++].block;
      const bool right = Facts(part.role).group == PartGroup::kBlocking && block.x >= Length();
      out.push_back(PlacedAt(bank, index, block, right, seats));
    } else {
      out.push_back(PlacedAt(bank, index, PlaceOf(bank, part, n > 0), n > 0, seats));
    }
  }
}

std::size_t PiecesIn(const Part& part) {
  return IsInPieces(Facts(part.role).group) ? static_cast<std::size_t>(part.count) : 0;
}

}  // namespace

class Assembler {
 public:
  explicit Assembler(const Bank& bank) : bank_(bank) {
    made_.spaces_.resize(bank.spaces.size());
    made_.members_.resize(bank.dividers.size());
    made_.first_.reserve(bank.parts.size() + 1);
    made_.pieces_.reserve(bank.parts.size() + bank.spaces.size() + bank.pieces.size() + 1);
  }

  Assembly Run() {
    std::size_t next = 0;
    for (std::size_t i = 0; i < bank_.parts.size(); ++i) {
      made_.first_.push_back(made_.pieces_.size());
      AddPieces(bank_, i, next, made_.pieces_);
      next += PiecesIn(bank_.parts[i]);
    }
    made_.first_.push_back(made_.pieces_.size());
    for (std::size_t i = 0; i < made_.pieces_.size(); ++i) {
      OwnersList(made_.pieces_[i].owner).push_back(i);
    }
    return std::move(made_);
  }

 private:
  std::vector<std::size_t>& OwnersList(PartOwner owner) {
    const auto at = static_cast<std::size_t>(owner.index);
    if (owner.kind == PartOwner::Kind::kSpace) return made_.spaces_[at];
    return owner.kind == PartOwner::Kind::kMember ? made_.members_[at] : made_.case_;
  }

  const Bank& bank_;
  Assembly made_;
};

std::vector<PlacedPart> PiecesOf(const Bank& bank, std::size_t part) {
  std::size_t next = 0;
  for (std::size_t i = 0; i < part; ++i) next += PiecesIn(bank.parts[i]);
  std::vector<PlacedPart> pieces;
  AddPieces(bank, part, next, pieces);
  return pieces;
}

Assembly Assemble(const Bank& bank) { return Assembler(bank).Run(); }

std::span<const PlacedPart> Assembly::OfPart(std::size_t part) const {
  return pieces().subspan(first_[part], first_[part + 1] - first_[part]);
}

std::span<const std::size_t> Assembly::OfOwner(PartOwner owner) const {
  const auto at = static_cast<std::size_t>(owner.index);
  if (owner.kind == PartOwner::Kind::kSpace) return spaces_[at];
  return owner.kind == PartOwner::Kind::kMember ? members_[at] : case_;
}

const PlacedPart* Assembly::Find(PartRole role, PartOwner owner) const {
  for (const std::size_t i : OfOwner(owner)) {
    if (pieces_[i].role == role) return &pieces_[i];
  }
  return nullptr;
}

}  // namespace tillwright
