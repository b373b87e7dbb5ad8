// What a plane cuts of a piece: outlines with the cuts taken away, exactly.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "assembly/assembly_cases.h"
#include "tillwright/assembly.h"

namespace tillwright {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

Length Mm(int n) { return Length::Millimeters(n); }
PlanePoint P(int u, int v) { return {Mm(u), Mm(v)}; }
Block Cube(int x, int y, int z, int width, int height, int depth) {
  return {Mm(x), Mm(y), Mm(z), Mm(width), Mm(height), Mm(depth)};
}

PlacedPart PieceOf(const Block& block, const std::vector<Block>& cuts) {
  PlacedPart piece;
  piece.block = block;
  for (const Block& cut : cuts) piece.cuts.emplace_back().block = cut;
  return piece;
}

TEST(PlaneCut, OfAPlainPieceIsARectangle) {
  const PlacedPart piece = PieceOf(Cube(1, 2, 3, 10, 20, 30), {});
  EXPECT_THAT(CutByPlane(piece, JobAxis::kX, Mm(5), JointBands::kKeep),
              ElementsAre(ElementsAre(P(3, 2), P(33, 2), P(33, 22), P(3, 22))));
  EXPECT_THAT(CutByPlane(piece, JobAxis::kY, Mm(5), JointBands::kKeep),
              ElementsAre(ElementsAre(P(1, 3), P(11, 3), P(11, 33), P(1, 33))));
  EXPECT_THAT(CutByPlane(piece, JobAxis::kZ, Mm(5), JointBands::kKeep),
              ElementsAre(ElementsAre(P(1, 2), P(11, 2), P(11, 22), P(1, 22))));
  EXPECT_THAT(CutByPlane(piece, JobAxis::kX, Mm(1), JointBands::kKeep), IsEmpty()) << "touches";
}

// A groove in the face, a rabbet at the edge.
TEST(PlaneCut, LeavesOutWhatIsCutAway) {
  const PlacedPart piece =
      PieceOf(Cube(0, 0, 0, 10, 30, 100), {Cube(6, 5, 0, 4, 6, 100), Cube(7, 24, 0, 3, 6, 100)});
  EXPECT_THAT(CutByPlane(piece, JobAxis::kZ, Mm(50), JointBands::kKeep),
              ElementsAre(ElementsAre(P(0, 0), P(10, 0), P(10, 5), P(6, 5), P(6, 11), P(10, 11),
                                      P(10, 24), P(7, 24), P(7, 30), P(0, 30))));
}

TEST(PlaneCut, FallsApartAndHasHoles) {
  const PlacedPart apart = PieceOf(Cube(0, 0, 0, 10, 30, 100), {Cube(0, 10, 0, 10, 5, 100)});
  EXPECT_THAT(CutByPlane(apart, JobAxis::kZ, Mm(50), JointBands::kKeep),
              ElementsAre(ElementsAre(P(0, 0), P(10, 0), P(10, 10), P(0, 10)),
                          ElementsAre(P(0, 15), P(10, 15), P(10, 30), P(0, 30))));
  const PlacedPart hollow = PieceOf(Cube(0, 0, 0, 10, 30, 100), {Cube(4, 10, 0, 2, 5, 100)});
  EXPECT_THAT(CutByPlane(hollow, JobAxis::kZ, Mm(50), JointBands::kKeep),
              ElementsAre(ElementsAre(P(0, 0), P(10, 0), P(10, 30), P(0, 30)),
                          ElementsAre(P(4, 15), P(6, 15), P(6, 10), P(4, 10))));
}

// Two corners that only touch belong to rings of their own.
TEST(PlaneCut, PartsAtACornerThatTouchesNothing) {
  const PlacedPart piece =
      PieceOf(Cube(0, 0, 0, 10, 10, 1000), {Cube(0, 0, 0, 5, 5, 1000), Cube(5, 5, 0, 5, 5, 1000)});
  EXPECT_THAT(CutByPlane(piece, JobAxis::kZ, Mm(50), JointBands::kKeep),
              ElementsAre(ElementsAre(P(5, 0), P(10, 0), P(10, 5), P(5, 5)),
                          ElementsAre(P(0, 5), P(5, 5), P(5, 10), P(0, 10))));
}

// Twice the area of a ring, anticlockwise positive, in square millimeters.
double Area(const PlaneRing& ring) {
  double sum = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const PlanePoint& a = ring[i];
    const PlanePoint& b = ring[(i + 1) % ring.size()];
    sum += ToMillimeters(a.u) * ToMillimeters(b.v) - ToMillimeters(b.u) * ToMillimeters(a.v);
  }
  return sum / 2;
}

// Planes between all faces of a piece, each with the stretch it stands for: areas times stretches
// are the volume of its solid.
void ExpectVolume(const PlacedPart& piece, JobAxis across) {
  std::vector<Length> places;
  const auto add = [&](const Block& block) {
    places.push_back(ExtentOf(block, across).low);
    places.push_back(ExtentOf(block, across).high);
  };
  add(piece.block);
  for (const PlacedCut& cut : piece.cuts) add(cut.block);
  std::ranges::sort(places);
  double sliced = 0;
  for (std::size_t i = 0; i + 1 < places.size(); ++i) {
    const Length middle = places[i] + HalfBelow(places[i + 1] - places[i]);
    for (const PlaneRing& ring : CutByPlane(piece, across, middle, JointBands::kTakeAway)) {
      for (std::size_t k = 0; k < ring.size(); ++k) {
        const PlanePoint& a = ring[k];
        const PlanePoint& b = ring[(k + 1) % ring.size()];
        ASSERT_NE(a.u == b.u, a.v == b.v) << "edges run along the axes";
      }
      sliced += Area(ring) * ToMillimeters(places[i + 1] - places[i]);
    }
  }
  double solid = 0;
  for (const Block& b : SolidOf(piece, JointBands::kTakeAway)) {
    solid += ToMillimeters(b.width) * ToMillimeters(b.height) * ToMillimeters(b.depth);
  }
  EXPECT_NEAR(sliced, solid, 1e-9 * solid);
}

TEST(PlaneCut, SlicesAddUpToTheSolid) {
  const int solved = testing::ForRandomBanks(60, [](const Bank& bank) {
    const Assembly assembly = Assemble(bank);
    for (const PlacedPart& piece : assembly.pieces()) {
      for (const JobAxis across : kJobAxes) ExpectVolume(piece, across);
    }
  });
  EXPECT_GE(solved, 30);
}

}  // namespace
}  // namespace tillwright
