# What a careful maker looks over.
tillwright_layer(check
  USES solve assembly
  HEADERS check gap_check
  SOURCES
    advice.cpp
    bank_checks.cpp
    box_movement.cpp
    case_checks.cpp
    chance.cpp
    change.cpp
    control.cpp
    drawer_checks.cpp
    figures.cpp
    finding_list.cpp
    fit_checks.cpp
    gap_check.cpp
    gap_findings.cpp
    given_layout.cpp
    movement_checks.cpp
    real_opening.cpp
    refit.cpp
    shims.cpp
    stack.cpp
    stack_text.cpp
    strength_checks.cpp
    tipping.cpp
    weights.cpp)
