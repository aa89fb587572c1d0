import type { Figure, Id, Reason, RigTest, Run } from "#domain";
import type { Choices } from "../laps/choices.ts";
import { testFigure } from "./testFigure.ts";
import { type RunInTest, testRuns } from "./testRuns.ts";

/** A run in a rig test, and nothing of how fast it was. */
export interface DrivenRun {
  readonly runId: Id;
  readonly sessionId: Id;
  /** Its place in the session as stored; what it is called by counts only runs that hold laps. */
  readonly n: number;
  /** Clean laps; five make it count. */
  readonly laps: number;
}

/** A place in a rig test: a run to be driven, or being driven. */
export interface TestPlace {
  /** From 1. */
  readonly pair: number;
  readonly side: "A" | "B";
  /** The first of its pair. */
  readonly isFirst: boolean;
}

/** One pair with the runs that count for it. */
export interface TestPair {
  /** From 1. */
  readonly n: number;
  readonly first: "A" | "B";
  readonly a?: DrivenRun;
  readonly b?: DrivenRun;
}

/**
 * Why a run of a test does not count. `void`: the driver said so · a reason: too few clean laps, or not to be compared ·
 * `alone`: its pair was not finished in that session, and both runs of a pair are of one · `second first`: driven before
 * the one its pair begins with · `again`: its place was filled already · `not planned`: the test has no such pair
 */
export type WhyAside =
  | { readonly because: "void"; readonly words: string }
  | { readonly because: "alone" | "second first" | "again" | "not planned" }
  | { readonly because: "figure"; readonly reason: Reason };

/** A run of a test that does not count, and why. */
export interface RunAside extends DrivenRun {
  readonly pair: number;
  readonly side: "A" | "B";
  readonly why: WhyAside;
}

/** How far a rig test is: what has been driven and what comes next, and nothing of how the settings compare. */
export interface TestProgress {
  /** All planned pairs in their order. */
  readonly pairs: readonly TestPair[];
  /** Pairs with both runs. */
  readonly complete: number;
  readonly planned: number;
  /** Runs that do not count, in the order they were driven. */
  readonly voided: readonly RunAside[];
  /** The run being driven: until it has ended it is in hand, neither counted nor failed. */
  readonly inHand: (TestPlace & DrivenRun) | undefined;
  /** The first place that no run fills; that of the run in hand while there is one. Undefined once the test is over. */
  readonly next: TestPlace | undefined;
  /** Ended, or every planned pair driven. */
  readonly isOver: boolean;
}

/**
 * How far a rig test is. A run counts when it is not void and has a figure (`testFigure`: five clean laps). Both runs of a
 * pair are of one session and in the drawn order, else the pair is begun anew; of several runs that count for a place the
 * first stands, so that nobody can drive until the time is right. A pair begun in the session is finished before another
 * is begun.
 * @param runs any runs, without deleted ones
 * @param sessionId the session in which the next run would be driven; null: one not begun yet. A pair half driven in another is
 * begun anew. Without it the half of the latest session stands.
 */
export function testProgress(
  test: RigTest,
  runs: readonly Run[],
  choices: Choices,
  sessionId?: Id | null,
): TestProgress {
  const inTest = testRuns(test, runs);
  const voided: (RunAside & { readonly order: number })[] = [];
  const slots = test.pairs.map((): Slot => ({}));
  let held: Turn | undefined;
  const setAside: SetAside = (turn, why) => {
    voided.push({ ...asideOf(turn), why, order: turn.order });
  };
  inTest.forEach(({ run, place }, order) => {
    const isFirst = test.pairs[place.pair - 1]?.first === place.side;
    const { laps, figure } = testFigure(run, test, choices);
    const turn: Turn = { run, place, order, isFirst, driven: drivenOf(run, laps) };
    const slot = slots[place.pair - 1];
    const isLast = order === inTest.length - 1;
    if (slot === undefined) setAside(turn, { because: "not planned" });
    else if (place.void !== undefined) setAside(turn, { because: "void", words: place.void });
    else if (isLast && test.endedAt === undefined && isInHand(run, figure, sessionId)) held = turn;
    else if (figure.known) take(slot, turn, setAside);
    else setAside(turn, { because: "figure", reason: figure.reason });
  });
  for (const slot of slots) dropOtherEvening(slot, sessionId, setAside);
  const notHeld = held && whyNotTaken(slots[held.place.pair - 1] ?? {}, held);
  if (held && notHeld) setAside(held, notHeld);
  else if (held?.isFirst) beginAnew(slots[held.place.pair - 1] ?? {}, setAside);

  const pairs = test.pairs.map(({ first }, index): TestPair => pairOf(index + 1, first, slots[index] ?? {}));
  const complete = pairs.filter(isComplete).length;
  const isOver = test.endedAt !== undefined || complete >= test.pairsPlanned;
  const inHand = isOver || held === undefined || notHeld ? undefined : { ...placeOf(held), ...held.driven };
  return {
    pairs,
    complete,
    planned: test.pairsPlanned,
    voided: voided.sort((a, b) => a.order - b.order).map(({ order: _, ...aside }) => aside),
    inHand,
    next: isOver ? undefined : held && inHand ? placeOf(held) : nextPlace(pairs),
    isOver,
  };
}

/** A run as it is looked at, and its turn among the runs of the test. */
interface Turn extends RunInTest {
  readonly order: number;
  /** Its side is the one its pair begins with. */
  readonly isFirst: boolean;
  readonly driven: DrivenRun;
}

interface Slot {
  first?: Turn;
  second?: Turn;
}

type SetAside = (turn: Turn, why: WhyAside) => void;

function take(slot: Slot, turn: Turn, setAside: SetAside): void {
  const why = whyNotTaken(slot, turn);
  if (why !== undefined) setAside(turn, why);
  else if (!turn.isFirst) slot.second = turn;
  else {
    beginAnew(slot, setAside);
    slot.first = turn;
  }
}

/** Why a run that would count has no place in its pair. */
function whyNotTaken({ first, second }: Slot, { run, isFirst }: Turn): WhyAside | undefined {
  if (second !== undefined) return { because: "again" };
  const isSameEvening = first?.run.sessionId === run.sessionId;
  if (isFirst) return isSameEvening ? { because: "again" } : undefined;
  return isSameEvening ? undefined : { because: "second first" };
}

/** What was driven of a pair that is not finished does not count, and the pair is begun anew. */
function beginAnew(slot: Slot, setAside: SetAside): void {
  if (slot.first === undefined) return;
  setAside(slot.first, { because: "alone" });
  delete slot.first;
}

function dropOtherEvening(slot: Slot, sessionId: Id | null | undefined, setAside: SetAside): void {
  const { first, second } = slot;
  if (first === undefined || second !== undefined) return;
  if (sessionId === undefined || first.run.sessionId === sessionId) return;
  beginAnew(slot, setAside);
}

/** A run not ended, in the session that is asked about: laps are still to come, and its figure could change with each. */
function isInHand(run: Run, figure: Figure<unknown>, sessionId: Id | null | undefined): boolean {
  const isHere = sessionId === undefined || run.sessionId === sessionId;
  return isHere && run.endedAt === undefined && (figure.known || "needs" in figure.reason);
}

function drivenOf({ id, sessionId, n }: Run, laps: number): DrivenRun {
  return { runId: id, sessionId, n, laps };
}

const asideOf = ({ driven, place: { pair, side } }: Turn) => ({ ...driven, pair, side });

const placeOf = ({ place: { pair, side }, isFirst }: Turn): TestPlace => ({ pair, side, isFirst });

function pairOf(n: number, first: "A" | "B", slot: Slot): TestPair {
  const [a, b] = first === "A" ? [slot.first, slot.second] : [slot.second, slot.first];
  return { n, first, ...(a && { a: a.driven }), ...(b && { b: b.driven }) };
}

const isComplete = ({ a, b }: TestPair) => a !== undefined && b !== undefined;

function nextPlace(pairs: readonly TestPair[]): TestPlace | undefined {
  const half = pairs.find((pair) => (pair.a === undefined) !== (pair.b === undefined));
  if (half) return { pair: half.n, side: half.first === "A" ? "B" : "A", isFirst: false };
  const empty = pairs.find((pair) => !isComplete(pair));
  return empty && { pair: empty.n, side: empty.first, isFirst: true };
}
