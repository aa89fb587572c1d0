import { useCallback, useMemo, useRef } from "react";
import { rigTests, runsOfTest } from "#db";
import { type Id, lapsInOrder, type Preferences, type RigTest, type Run } from "#domain";
import { useRows } from "#live";
import { useDevice } from "#state/device.ts";
import { type TestProgress, testProgress, type WhyAside, whyAside } from "#stats";
import { type SaidSides, saidSides } from "#words";
import type { SessionData } from "../session/useSession.ts";

/** A rig test of the session's combo, as far as Log has to do with it. */
export interface TestTonight {
  readonly test: RigTest;
  readonly sides: SaidSides;
  /** How far it is; while laps are typed, how far it was before them. */
  readonly progress: TestProgress;
  /** The run of it that is being driven here. */
  readonly run: Run | undefined;
  /** Why that run will not count however many laps are driven: it is a race, say; undefined where it can. */
  readonly why: WhyAside | undefined;
  /** The last run here, where it is one of the test and has ended: it can still be void. */
  readonly last: Run | undefined;
}

export interface TestsHere {
  /** The test that waits for its next run, or whose run is being driven; undefined where there is none, or not tonight. */
  readonly tonight: TestTonight | undefined;
  /** Whether nothing may be told of how fast a run was: it is one of a test that lasts. */
  readonly isSilent: (run: Run) => boolean;
  /** The test that was put off in this session and could still be driven. */
  readonly isPutOff: boolean;
  /** The test waits for another evening. */
  readonly putOff: () => void;
  /** It is driven in this session after all. */
  readonly takeUp: () => void;
}

type OtherRuns = readonly { readonly id: Id; readonly runs: readonly Run[] }[] | undefined;

/** Neither stopped nor decided: a test whose pairs are all driven is told on its own page first. */
const isLasting = ({ endedAt, kept }: RigTest) => endedAt === undefined && kept === undefined;

/** A run short of clean laps is still being driven; one of another kind stays what it is. */
function whyNotComparable(run: Run, test: RigTest, preferences: Preferences): WhyAside | undefined {
  const why = whyAside(run, test, preferences);
  return why?.because === "figure" && "needs" in why.reason ? undefined : why;
}

/** So many sessions are remembered as those in which a test was put off. */
const mostPutOff = 20;

/**
 * The rig test of a session's combo. Its runs of other evenings are read when the session is opened and between two runs: while
 * laps are typed nothing is asked.
 */
export function useTestTonight(data: SessionData, current: Run | undefined, isBetween: boolean): TestsHere {
  const { session, runs, preferences, rigs } = data;
  const { comboId } = session;
  const isOpen = session.endedAt === undefined;
  const tests = useRows((book) => rigTests(book, comboId), [comboId]);
  const lasting = useMemo(() => tests?.filter(isLasting), [tests]);
  const asked = lasting?.map(({ id }) => id).join(" ") ?? "";
  const elsewhere = useRef<OtherRuns>(undefined);
  const isAsked = isBetween || elsewhere.current === undefined;
  const read = useRows(
    async (book): Promise<OtherRuns> => {
      if (!isAsked || !isOpen || asked === "") return undefined;
      const all = (await rigTests(book, comboId)).filter(({ id }) => asked.includes(id));
      return Promise.all(
        all.map(async (test) => ({
          id: test.id,
          runs: (await runsOfTest(book, test)).filter(({ sessionId }) => sessionId !== session.id),
        })),
      );
    },
    [isAsked, isOpen, asked, comboId, session.id],
  );
  if (read !== undefined) elsewhere.current = read;
  const others = read ?? elsewhere.current;
  const isPutOff = useDevice(({ testsPutOff = [] }) => testsPutOff.includes(session.id));
  const change = useDevice((device) => device.change);
  const run = current?.rigTest !== undefined && current.rigTest.void === undefined ? current : undefined;
  const tonight = useMemo(() => {
    if (!isOpen || lasting === undefined) return undefined;
    const held = lasting.flatMap((test) => {
      // Opened in the middle of its run: what was driven on other evenings is asked for once that has ended.
      const unread = test.id === run?.rigTest?.id ? [] : undefined;
      const before = others?.find(({ id }) => id === test.id)?.runs ?? unread;
      if (before === undefined) return [];
      return [{ test, progress: testProgress(test, [...before, ...runs], preferences, session.id) }];
    });
    const driven = run && held.find(({ test }) => test.id === run.rigTest?.id);
    const last = runs.findLast((one) => one !== current && lapsInOrder(one).length > 0);
    const isLastOf = (id: Id) => last?.rigTest?.id === id && last.rigTest.void === undefined;
    const one = driven ?? held.find(({ test, progress }) => !progress.isOver || isLastOf(test.id));
    if (one === undefined) return undefined;
    return {
      ...one,
      sides: saidSides(one.test, rigs),
      run: driven && run,
      why: driven && run && whyNotComparable(run, driven.test, preferences),
      last: isLastOf(one.test.id) ? last : undefined,
    };
  }, [isOpen, lasting, others, runs, preferences, session.id, rigs, run, current]);
  const isSilent = useCallback(
    ({ rigTest }: Run) =>
      rigTest !== undefined && (tests?.some((test) => test.id === rigTest.id && isLasting(test)) ?? true),
    [tests],
  );
  const isWaiting = isPutOff && tonight !== undefined && tonight.run === undefined;
  return {
    tonight: isWaiting ? undefined : tonight,
    isPutOff: isWaiting,
    isSilent,
    putOff: () =>
      change(({ testsPutOff = [] }) => ({ testsPutOff: [...testsPutOff, session.id].slice(-mostPutOff) })),
    takeUp: () =>
      change(({ testsPutOff = [] }) => ({ testsPutOff: testsPutOff.filter((id) => id !== session.id) })),
  };
}
