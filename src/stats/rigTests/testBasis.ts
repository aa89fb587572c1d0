import { type CalendarDate, type Figure, known, leastForSpread, type TestFigure, unknown } from "#domain";
import { median, standardDeviation } from "#numbers";
import { seasonBegins } from "../combo/season.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { levelEnd } from "../level/levelModel.ts";
import { leastWorthwhile, OF_SPREAD, typicalError } from "../level/typicalError.ts";
import { pageEvents, pageHistory } from "../period/pageHistory.ts";
import { paceRuns } from "../verdict/paceRuns.ts";
import { type RunDifferences, spreadOfRunDifferences } from "./spreadOfRunDifferences.ts";

/** What of the driver's own runs a rig test is planned from. */
export interface TestBasis {
  /** The level, ms: the usual lap from which the minutes follow. */
  readonly usualMs: Figure<number>;
  /** How far neighbouring runs lie apart, by the figure the test judges. */
  readonly spread: Readonly<Record<TestFigure, Figure<RunDifferences>>>;
  /** The smallest change worth talking about, ms: offered as the smallest difference that would matter. */
  readonly worthwhile: Readonly<Record<TestFigure, Figure<number>>>;
  /** Runs of five pace laps in an evening that had any, and laps in such a run, in the middle; undefined without any. */
  readonly runsAnEvening: number | undefined;
  readonly lapsARun: number | undefined;
}

export interface TestBasisInput {
  /** Digests of the page that the test would be driven on, and of the combo on all its pages, in any order. */
  readonly page: readonly SessionDigest[];
  readonly driven: readonly SessionDigest[];
  readonly today: CalendarDate;
}

/**
 * What a rig test is planned from: the driver's own runs of the last twelve weeks, and what is worthwhile of the level
 * (a fifth of the spread between sessions, at least 0.1 % of the lap; Hopkins 2000). For the scatter the spread is that of the
 * sessions' own scatters, our choice. Our methods, §5 and §7.
 */
export function testBasis({ page, driven, today }: TestBasisInput): TestBasis {
  const history = pageHistory(page, driven);
  const end = levelEnd({ sessions: history, events: pageEvents(history, today) });
  const from = seasonBegins(today);
  const lately = page.filter(({ date }) => date >= from).toSorted((a, b) => a.startedAt - b.startedAt);
  const runs = lately.map((digest) =>
    paceRuns(digest, "dry").filter(({ times }) => times.length >= leastForSpread),
  );
  const usualMs = end.known ? known(end.value.series.usual) : end;
  return {
    usualMs,
    spread: {
      usual: spreadOfRunDifferences(lately, "usual"),
      scatter: spreadOfRunDifferences(lately, "scatter"),
    },
    worthwhile: {
      usual: end.known ? known(typicalError(end.value).worthwhile) : end,
      scatter: ofScatters(lately, usualMs),
    },
    runsAnEvening: median(runs.map(({ length }) => length).filter((length) => length > 0)),
    lapsARun: median(runs.flat().map(({ times }) => times.length)),
  };
}

function ofScatters(lately: readonly SessionDigest[], usual: Figure<number>): Figure<number> {
  if (!usual.known) return usual;
  const scatters = lately.flatMap(({ pace: { consistency } }) =>
    consistency.known ? [consistency.value.scatterMs] : [],
  );
  const spread = standardDeviation(scatters);
  if (spread === undefined) return unknown({ needs: 2, of: "session", has: scatters.length });
  return known(Math.max(OF_SPREAD * spread, leastWorthwhile * usual.value));
}
