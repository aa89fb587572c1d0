import type { ComboReview, SpreadSources } from "#stats";
import { counted } from "./counted.ts";
import { sayTooFew } from "./reason.ts";

type Reviewed = Pick<ComboReview, "spread">;
type Source = "laps" | "runs" | "evenings";

/** Where pace laps may differ, from the smallest to the largest. */
const sources: Readonly<Record<Source, string>> = {
  laps: "from lap to lap of a run",
  runs: "from run to run of an evening",
  evenings: "from evening to evening",
};

const whatToDo: Readonly<Record<Source, string>> = {
  laps: "Work on equal laps: how a run or an evening begins costs less.",
  runs: "Look at what differs from run to run: fuel, tyres, how a run begins.",
  evenings: "Look at how an evening begins, and judge nothing by a single one.",
};

/** Shares of the spread, 0 to 1, from laps to evenings, each with its name. */
export function spreadShares({ laps, runs, evenings }: Pick<SpreadSources, Source>): readonly {
  readonly source: Source;
  readonly name: string;
  readonly share: number;
}[] {
  const all = laps + runs + evenings;
  const parts = { laps, runs, evenings };
  return (["laps", "runs", "evenings"] as const).map((source) => ({
    source,
    name: sources[source],
    share: all === 0 ? 0 : parts[source] / all,
  }));
}

/**
 * Where the spread of pace laps comes from.
 * @example "Pace laps differ most from lap to lap of a run: about 71 % of the spread"
 */
export function spreadTitle({ spread }: Reviewed): string {
  if (!spread.known) return `Where the spread comes from: ${sayTooFew(spread.reason)}`;
  const most = largestOf(spread.value);
  if (most === undefined) return "All pace laps are the same";
  return `Pace laps differ most ${most.name}: about ${Math.round(most.share * 100)} % of the spread`;
}

/** What it is of, and what to work on. */
export function spreadReading({ spread }: Reviewed): string {
  if (!spread.known)
    return "Several runs on each of some evenings tell whether laps, runs or evenings differ most, and so what to work on.";
  const most = largestOf(spread.value);
  const what = most === undefined ? "" : `${whatToDo[most.source]} `;
  return `${what}From ${counted(spread.value.sessions, "session")} of this page with two runs of five pace laps, whatever the period; what you gained over the weeks is taken off. No range is known for these shares.`;
}

function largestOf(sourcesOf: SpreadSources) {
  const [most] = spreadShares(sourcesOf).toSorted((a, b) => b.share - a.share);
  return most === undefined || most.share === 0 ? undefined : most;
}
