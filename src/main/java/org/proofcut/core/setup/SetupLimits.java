package org.proofcut.core.setup;

/** Limits of set-ups, by what cuts. From {@code content/setup/limits}. */
public record SetupLimits(
    SettingLimits settings,
    RouterLimits router,
    SawLimits saw,
    KnifeLimits knives,
    DrillLimits drill) {}
