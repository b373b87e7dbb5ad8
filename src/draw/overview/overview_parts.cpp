#include "draw/overview/overview_parts.h"

#include <algorithm>
#include <array>

#include "bank/part_roles.h"

namespace tillwright {
namespace {

// The order in which a drawer's parts are drawn and numbered.
constexpr std::array kDrawerRoles{PartRole::kFront, PartRole::kBoxFront, PartRole::kBoxSide,
                                  PartRole::kBoxBottom, PartRole::kBoxBack};

SolidPart SolidAs(const PlacedPart& piece, const Block& b) {
  return {&piece, {{b.x, b.y, b.z}, b.width, b.height, b.depth}};
}

PartOwner OwnerAt(std::size_t space) { return {PartOwner::Kind::kSpace, static_cast<int>(space)}; }

std::vector<SolidPart> SolidsOf(const Assembly& assembly, std::size_t space,
                                Block PlacedPart::*block) {
  std::vector<SolidPart> solids;
  for (const PartRole role : kDrawerRoles) {
    for (const std::size_t i : assembly.OfOwner(OwnerAt(space))) {
      const PlacedPart& piece = assembly.pieces()[i];
      if (piece.role == role) solids.push_back(SolidAs(piece, piece.*block));
    }
  }
  return solids;
}

// Sides, bottom and top first, then what stands before and between them, back and members last.
int RankOf(PartRole role) {
  if (role == PartRole::kCaseBack) return 2;
  const PartGroup group = Facts(role).group;
  if (group == PartGroup::kMember) return 3;
  return group == PartGroup::kCarcass ? 0 : 1;
}

}  // namespace

SolidPart FrontSolid(const Assembly& assembly, std::size_t space) {
  const PlacedPart& front = *assembly.Find(PartRole::kFront, OwnerAt(space));
  return SolidAs(front, front.block);
}

std::vector<SolidPart> DrawerSolids(const Assembly& assembly, std::size_t space) {
  return SolidsOf(assembly, space, &PlacedPart::block);
}

std::vector<SolidPart> GluedSolids(const Assembly& assembly, std::size_t space) {
  std::vector<SolidPart> solids = SolidsOf(assembly, space, &PlacedPart::clear);
  // The sides from end to end: of a dovetail's lap nothing shows.
  Length front = solids.front().box.Rear();
  Length rear = front;
  for (const SolidPart& solid : solids) {
    if (solid.piece->role == PartRole::kBoxFront) front = solid.box.at.z;
    if (solid.piece->body == PartBody::kBox) rear = Max(rear, solid.box.Rear());
  }
  for (SolidPart& solid : solids) {
    if (solid.piece->role != PartRole::kBoxSide) continue;
    solid.box.at.z = front;
    solid.box.depth = rear - front;
  }
  return solids;
}

std::vector<SolidPart> CaseSolids(const Assembly& assembly) {
  std::vector<SolidPart> solids;
  for (const PlacedPart& piece : assembly.pieces()) {
    if (piece.body == PartBody::kCase) solids.push_back(SolidAs(piece, piece.clear));
  }
  std::ranges::stable_sort(solids, {},
                           [](const SolidPart& solid) { return RankOf(solid.piece->role); });
  return solids;
}

}  // namespace tillwright
