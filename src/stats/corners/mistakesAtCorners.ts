import { aboutRemark, type Remark, type RemarkKind, type Run, remarkKinds, type Session } from "#domain";
import { mean } from "#numbers";
import { type LapInAccount, lineOf } from "../account/accountSteps.ts";
import { accountsOfLaps } from "../account/timeAccount.ts";
import { accountLaps } from "../digest/lapsOfDigest.ts";
import { type SessionDigest, sessionDigest } from "../digest/sessionDigest.ts";
import type { Choices } from "../laps/choices.ts";
import { sessionLaps } from "../laps/sessionLaps.ts";
import { type Share, wilsonInterval } from "../sample/wilsonInterval.ts";
import { wholeParts } from "./wholeParts.ts";

/** A session with the runs driven in it, without deleted ones. */
export interface DrivenSession {
  readonly session: Session;
  readonly runs: readonly Run[];
}

/** What the driver's own mistakes at a corner cost in the last sessions. */
export interface MistakesAtCorner {
  /** Laps with an own mistake or a cut that name the corner, by kind, the kind noted most first. */
  readonly counts: readonly { readonly kind: RemarkKind; readonly count: number }[];
  /** Timed and untimed laps written one by one that were looked at, and those with an own mistake there. */
  readonly laps: number;
  readonly mistakes: number;
  /** Share of laps with a mistake there, with Wilson's 90 % interval. */
  readonly share: Share | undefined;
  /** Its part of the account's line of mistakes, whole ms a lap; undefined where there is no account. */
  readonly ms: number | undefined;
}

/** The mistakes of some sessions, corner by corner. */
export interface CornerMistakes {
  /** Of a corner by its number; of one that no lap names all is none. */
  readonly at: (corner: number) => MistakesAtCorner;
  /** The corners named with an own mistake or a cut, in lap order. */
  readonly named: readonly number[];
  /** Part of the line of mistakes that names no corner, ms a lap; undefined where there is no account. */
  readonly unnamedMs: number | undefined;
  /** The sessions and the driver's own laps that were looked at. */
  readonly laps: number;
  readonly digests: readonly SessionDigest[];
}

/** Stands for no corner. */
const UNNAMED = 0;

interface NamingLap extends LapInAccount {
  readonly remarks: readonly Remark[];
}

/**
 * The time account's line of mistakes split by the corners that the laps name, session by session and weighted by laps as the
 * account itself is (`accountsOfLaps`), so that all corners and what names none add up to the line to the millisecond. A lap
 * whose mistakes name two corners is shared between them. Beside it how many laps name a corner. Laps of guests are in
 * nothing. Our methods, §3.
 */
export function mistakesAtCorners(sessions: readonly DrivenSession[], choices: Choices): CornerMistakes {
  const digests = sessions.map(({ session, runs }) => sessionDigest(session, runs, choices));
  const laps = sessions.map(({ session, runs }, index): NamingLap[] => {
    const { laps: placed } = sessionLaps(session, runs, choices);
    const inAccount = accountLaps(digests[index] as SessionDigest);
    return placed.map(({ lap }, at) => ({ ...(inAccount[at] as LapInAccount), remarks: lap.remarks }));
  });
  const all = laps.flat();
  const parts = partsOfLine(laps);
  const named = [...new Set(all.flatMap(({ remarks }) => cornersOf(remarks, isOwn)))].sort((a, b) => a - b);
  return {
    at: (corner) => {
      const mistakes = all.filter(({ remarks }) => cornersOf(remarks, isMistake).includes(corner)).length;
      return {
        counts: countsAt(all, corner),
        laps: all.length,
        mistakes,
        share: wilsonInterval(mistakes, all.length, 0.9),
        ms: parts && (parts.get(corner) ?? 0),
      };
    },
    named,
    unnamedMs: parts && (parts.get(UNNAMED) ?? 0),
    laps: all.length,
    digests,
  };
}

const isMistake = (kind: RemarkKind) => aboutRemark(kind).mistake;
/** What a corner is worked on for: a mistake of one's own, or the track limits cut. */
const isOwn = (kind: RemarkKind) => isMistake(kind) || aboutRemark(kind).place === "cut";

/** The corners named in a lap's remarks of some kinds, each once. */
function cornersOf(remarks: readonly Remark[], isMeant: (kind: RemarkKind) => boolean): number[] {
  const corners = remarks.flatMap(({ kind, corner }) =>
    corner !== undefined && isMeant(kind) ? [corner] : [],
  );
  return [...new Set(corners)];
}

function countsAt(laps: readonly NamingLap[], corner: number): MistakesAtCorner["counts"] {
  return remarkKinds
    .map(({ kind }) => ({
      kind,
      count: laps.filter(({ remarks }) => cornersOf(remarks, (one) => one === kind).includes(corner)).length,
    }))
    .filter(({ kind, count }) => isOwn(kind) && count > 0)
    .sort((a, b) => b.count - a.count);
}

/** The parts of the line by corner, whole ms that add up to it; undefined where no session has an account. */
function partsOfLine(sessions: readonly (readonly NamingLap[])[]): Map<number, number> | undefined {
  // The line is a difference of two means, so whatever they are measured against falls out.
  const { whole, each } = accountsOfLaps(sessions, 0);
  if (!whole.known) return undefined;
  const parts = new Map<number, number>();
  sessions.forEach((laps, index) => {
    const account = each[index];
    if (account === undefined || !account.known) return;
    const ofLine = (line: "repeatability" | "mistakes") =>
      laps.flatMap((lap) => (lineOf(lap) === line && lap.ms !== undefined ? [{ ...lap, ms: lap.ms }] : []));
    const [pace, lost] = [ofLine("repeatability"), ofLine("mistakes")];
    const usual = mean(pace.map(({ ms }) => ms)) ?? 0;
    const weight = account.value.laps / whole.value.laps / (pace.length + lost.length);
    for (const { ms, remarks } of lost) {
      const corners = cornersOf(remarks, isMistake);
      const shared = corners.length === 0 ? [UNNAMED] : corners;
      for (const corner of shared)
        parts.set(corner, (parts.get(corner) ?? 0) + ((ms - usual) * weight) / shared.length);
    }
  });
  const corners = [...parts.keys()];
  const inMs = wholeParts(whole.value.mistakes, [...parts.values()]);
  return new Map(corners.map((corner, index) => [corner, inMs[index] as number]));
}
