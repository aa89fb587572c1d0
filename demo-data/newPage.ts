/** When the physics changed and a new page was turned. */
export const newPage = {
  combo: "moorHatch",
  date: "2026-10-28",
  clock: "20:25",
  reason: "New tyre physics",
} as const;
