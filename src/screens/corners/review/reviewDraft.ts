import type { LearntCorners } from "#db";
import type {
  Bend,
  Corner,
  CornerReview,
  FieldProblem,
  FormReading,
  GapScale,
  GapUnit,
  Id,
  ReviewedCorner,
  Straight,
} from "#domain";
import { readGaps, writeGaps } from "#entry";
import { roadOf } from "./crossSection.ts";

/** What is said of a corner on the way through its layout's unknown ones. */
export interface SaidKind {
  readonly bend?: Bend | undefined;
  readonly after?: Straight | undefined;
}

/** The lap looked at; without a lap, the usual lap of that session. */
export interface LookedAt {
  readonly sessionId: Id;
  readonly lapId?: Id | undefined;
}

/** A review as it is typed, kept at every key. */
export interface ReviewDraft {
  /** Undefined is the usual lap, of no session in particular. */
  readonly lap?: LookedAt | undefined;
  /** Numbers told here, of corners that the layout may not have; it learns them with the review. */
  readonly told: readonly number[];
  /** The corners looked at; undefined while nobody chose other ones than stand ready. */
  readonly chosen?: readonly number[] | undefined;
  /** The corner being looked at, or the table of all. */
  readonly at?: number | "all" | undefined;
  /** That corner was opened from the table, and leads back to it. */
  readonly isFromTable?: boolean | undefined;
  /** The unit that the lines are typed in; undefined while none is. */
  readonly unit?: GapUnit | undefined;
  readonly lines: Readonly<Record<number, string>>;
  readonly kinds: Readonly<Record<number, SaidKind>>;
  /** What stood in lines that were emptied, to be put back. */
  readonly emptied?: Readonly<Record<number, string>> | undefined;
}

export const nothingSeen: ReviewDraft = { told: [], lines: {}, kinds: {} };

/** A review that is there, as the lines that would give it again: first the table of all its corners. */
export function draftOf(review: CornerReview, scale: GapScale): ReviewDraft {
  const { sessionId, lapId, corners } = review;
  const numbers = corners.map(({ number }) => number);
  return {
    lap: sessionId === undefined ? undefined : { sessionId, lapId },
    told: [],
    chosen: numbers,
    at: "all",
    lines: Object.fromEntries(corners.map((corner) => [corner.number, writeGaps(corner, scale)])),
    kinds: {},
  };
}

/** Lines typed in one unit as lines of another; what cannot be read stays as it is. */
export function inOtherUnit(
  lines: ReviewDraft["lines"],
  from: GapScale,
  unit: GapUnit,
): ReviewDraft["lines"] {
  return Object.fromEntries(
    Object.entries(lines).map(([number, line]) => {
      const reading = readGaps(line, from);
      return [number, reading.ok ? writeGaps(reading.seen, { ...from, unit }) : line];
    }),
  );
}

/** What the driver would know a draft by. */
export function draftWords({ lines }: ReviewDraft): string {
  return Object.entries(lines)
    .filter(([, line]) => line.trim() !== "")
    .map(([number, line]) => `corner ${number}: ${line}`)
    .join("; ");
}

/** What a review will be: its corners, and what the layout learns. */
export interface ReadReview {
  readonly corners: readonly ReviewedCorner[];
  readonly learnt: LearntCorners["corners"];
}

const nothingNoted: FieldProblem = {
  wrong: "Nothing was noted at any corner",
  right: "Choose one in the table and type what was left there, such as h . 0.3",
};

/**
 * Reads all lines of the chosen corners. Corners of which nothing was seen are left out; one that stands as it was stored is
 * stored as it was, to the last digit.
 * @param known the layout's corners
 * @param before the review that is being changed
 */
export function readReview(
  draft: ReviewDraft,
  about: {
    readonly chosen: readonly number[];
    readonly scale: GapScale;
    readonly known: readonly Corner[];
    readonly before?: CornerReview | undefined;
  },
): FormReading<ReadReview, "lines"> {
  const { chosen, scale, known, before } = about;
  const corners: ReviewedCorner[] = [];
  for (const number of chosen) {
    const line = draft.lines[number] ?? "";
    const stored = before?.corners.find((corner) => corner.number === number);
    if (stored !== undefined && line === writeGaps(stored, scale)) {
      corners.push(stored);
      continue;
    }
    const corner = known.find((one) => one.number === number) ?? { number };
    const reading = readGaps(line, scale, roadOf(corner, scale.carWidth));
    if (!reading.ok) {
      const { wrong, right } = reading.problem;
      return { ok: false, problems: { lines: { wrong: `Corner ${number}: ${wrong}`, right } } };
    }
    if (Object.keys(reading.seen).length > 0) corners.push({ ...unknownOf(stored), number, ...reading.seen });
  }
  if (corners.length === 0) return { ok: false, problems: { lines: nothingNoted } };
  return { ok: true, value: { corners, learnt: learntOf(draft, known) } };
}

/** What a newer app keeps of a corner besides what is typed here. */
function unknownOf(stored: ReviewedCorner | undefined): object {
  if (stored === undefined) return {};
  const { number, entry, apex, exit, braking, throttle, isOffLine, note, ...rest } = stored;
  return rest;
}

function learntOf({ told, kinds }: ReviewDraft, known: readonly Corner[]): ReadReview["learnt"] {
  const said = Object.keys(kinds).map(Number);
  return [...new Set([...told, ...said])]
    .sort((a, b) => a - b)
    .flatMap((number) => {
      const { bend, after } = kinds[number] ?? {};
      const isNew = told.includes(number) && !known.some((corner) => corner.number === number);
      if (!isNew && bend === undefined && after === undefined) return [];
      return [{ number, ...(bend !== undefined && { bend }), ...(after !== undefined && { after }) }];
    });
}
