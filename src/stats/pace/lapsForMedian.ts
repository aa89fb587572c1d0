import { leastForSpread } from "#domain";

/** What a session must hold for its median to count among others, as it stands in a reason. */
export const lapsForMedian = { needs: leastForSpread, of: "pace lap" } as const;
