import type { Preferences } from "#domain";

/** The driver's choices that the figures depend on. */
export type Choices = Pick<Preferences, "settlingLaps" | "displayDecimals" | "marginPercent">;
