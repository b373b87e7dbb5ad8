// Which names of materials are solid wood, and which are panels or nothing known.
#include "spec/materials.h"

#include <gtest/gtest.h>

#include <string>

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
  EXPECT_GE(KnownWoods().size(), 15U);
  for (const std::string_view wood : KnownWoods()) {
    EXPECT_TRUE(IsSolidWood(wood)) << wood;
    EXPECT_FALSE(IsSolidWood(std::string(wood) + " plywood")) << wood;
  }
}

}  // namespace
}  // namespace tillwright
