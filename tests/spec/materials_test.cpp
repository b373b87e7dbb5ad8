// Which names of materials are solid wood, and which are panels or nothing known.
#include "spec/materials.h"

#include <gtest/gtest.h>

#include <string>

#include "spec/species.h"

namespace tillwright {
namespace {

TEST(Materials, AWoodWithoutAPanelWordIsSolid) {
  for (const char* name : {"cherry", "Cherry", "black cherry", "yellow birch", "white oak, quarter",
                           "hard maple (8/4)", "SAPELE mahogany", "western redcedar", "oak/ash"}) {
    EXPECT_TRUE(IsSolidWood(name)) << name;
  }
}

TEST(Materials, PanelWordsWinOverTheWoodOnTheirFaces) {
  for (const char* name : {"birch plywood", "Baltic birch ply", "oak-veneered MDF", "walnut veneer",
                           "cherry PLYWOOD", "maple melamine", "pine blockboard", "oak panel"}) {
    EXPECT_FALSE(IsSolidWood(name)) << name;
  }
}

TEST(Materials, WhatIsNotKnownIsNotSolid) {
  for (const char* name : {"", " ", "unobtainium", "MDF", "steel", "7", "\xc3\xa9",
                           // words that only hold a wood's name
                           "oaken", "pineapple", "ashlar", "beechnut", "firm"}) {
    EXPECT_FALSE(IsSolidWood(name)) << name;
  }
}

TEST(Materials, EveryKnownWoodIsSolidByItselfAndAPanelAsPlywood) {
  EXPECT_GE(AllSpecies().size(), 19U);
  for (const Species& species : AllSpecies()) {
    EXPECT_TRUE(IsSolidWood(species.word)) << species.label;
    EXPECT_FALSE(IsSolidWood(std::string(species.word) + " plywood")) << species.label;
  }
}

}  // namespace
}  // namespace tillwright
