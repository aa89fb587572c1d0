import fc from "fast-check";
import { expect, test } from "vitest";
import { believedUpTo, mergeRows, putRowsRight } from "#db";
import { type AllRows, noRows, type Session, stampsKeptSince } from "#domain";
import { stampChanged, stampDeleted, stampNew } from "../../../src/db/writes/stamp.ts";
import { World as Devices, histories, seenIn, type World } from "../../support/clockHistories.ts";

/** More histories, or others, by the environment. */
const runs = {
  seed: Number(process.env["LAP_LEDGER_SEED"] ?? 20_261_128),
  numRuns: Number(process.env["LAP_LEDGER_HISTORIES"] ?? 800),
};
const nothing = () => undefined;

const bySession = ({ sessions }: AllRows) => new Map(sessions.map((row) => [row.id, row]));

/** Every row as it was on both sides and as it is now. */
function* met(here: AllRows, came: AllRows, now: AllRows) {
  const [mine, theirs] = [bySession(here), bySession(came)];
  for (const row of now.sessions) yield { is: row, mine: mine.get(row.id), theirs: theirs.get(row.id) };
}

const truthOf = (world: World, row: Session) => {
  const truth = world.truths.get(seenIn(row));
  if (truth === undefined) throw new Error(`nobody wrote ${seenIn(row)}`);
  return truth;
};

test("an edit made after seeing a row stays against that row, on every device, whatever clocks say", () => {
  fc.assert(
    fc.property(histories, (history) => {
      new Devices((here, came, now, { world }) => {
        for (const { is, mine, theirs } of met(here, came, now))
          for (const other of [mine, theirs])
            if (other) expect(truthOf(world, other).before.has(seenIn(is)), `${seenIn(is)} lost`).toBe(false);
      }).live(history);
    }),
    runs,
  );
});

test("merging the same file again changes nothing", () => {
  fc.assert(
    fc.property(histories, (history) => {
      const world = new Devices(nothing).live(history);
      for (const device of world.devices)
        for (const file of world.files) {
          const once = world.merged(device, file);
          if (once === undefined) continue;
          expect(world.merged({ ...device, rows: once }, file)).toEqual(once);
        }
    }),
    runs,
  );
});

/**
 * Whether time has overtaken what a clock ahead stamped: of a clock that was 40 days ahead nothing can be told once 40 days
 * have passed, so it wins where it comes before the copy in which it was put right.
 */
const isOvertaken = ({ truths, now }: World) =>
  [...truths.values()].some(({ at, offset }) => offset > 0 && at + offset <= believedUpTo(now));

test("neither order nor repetition of files matters where the date is confirmed", () => {
  fc.assert(
    fc.property(histories, fc.array(fc.nat(9), { maxLength: 6 }), (history, order) => {
      const world = new Devices(nothing).live(history);
      fc.pre(!isOvertaken(world));
      const device = { rows: world.devices[0]?.rows as AllRows, offset: 0 };
      const all = (files: readonly AllRows[]) => {
        const one = { ...device };
        for (const file of files) one.rows = world.merged(one, file) ?? one.rows;
        return one.rows;
      };
      const shuffled = order.flatMap((n) => world.files[n % Math.max(1, world.files.length)] ?? []);
      const straight = all(world.files);
      expect(all([...shuffled, ...world.files.toReversed()])).toEqual(straight);
      expect(all([...world.files, ...shuffled])).toEqual(straight);
    }),
    runs,
  );
});

/** The same of what the writer of one version had seen. */
const wasOvertaken = (world: World, row: Session) =>
  [...truthOf(world, row).before].some((note) => {
    const truth = world.truths.get(note);
    return truth !== undefined && truth.offset > 0 && truth.at + truth.offset <= believedUpTo(world.now);
  });

test("a stamp ahead of a confirmed clock never beats a real edit made since its writer last saw a real one", () => {
  const contests = { realStays: 0, aheadStays: 0 };
  fc.assert(
    fc.property(histories, (history) => {
      new Devices((here, came, now, { world, isClockRight }) => {
        for (const { is, mine, theirs } of isClockRight ? met(here, came, now) : []) {
          if (mine === undefined || theirs === undefined) continue;
          const isAhead = (row: Session) => row.updatedAt > believedUpTo(world.now);
          const isReal = (row: Session) => {
            const { at, offset } = truthOf(world, row);
            return offset === 0 && row.updatedAt === at;
          };
          const ahead = [mine, theirs].find(isAhead);
          const real = [mine, theirs].find(isReal);
          if (ahead === undefined || real === undefined || wasOvertaken(world, ahead)) continue;
          if (seenIn(is) === seenIn(real)) {
            contests.realStays += 1;
            continue;
          }
          contests.aheadStays += 1;
          const seen = [...truthOf(world, ahead).before].map((note) => world.truths.get(note));
          const lastReal = Math.max(0, ...seen.map((one) => (one?.offset === 0 ? one.at : 0)));
          expect(lastReal).toBeGreaterThanOrEqual(truthOf(world, real).at);
        }
      }).live(history);
    }),
    runs,
  );
  // Both happen: the stamp ahead loses to what it has not seen, and stays against what it has.
  expect(contests.realStays).toBeGreaterThan(runs.numRuns / 50);
  expect(contests.aheadStays).toBeGreaterThan(runs.numRuns / 50);
});

test("devices that have all set their clocks right hold the same after sending each other their files", () => {
  fc.assert(
    fc.property(histories, (history) => {
      const world = new Devices(nothing).live(history);
      for (const device of world.devices) device.offset = 0;
      for (const _ of [1, 2])
        for (const to of world.devices) for (const from of world.devices) world.receive(to, from.rows);
      const [first, ...others] = world.devices;
      for (const other of others) expect(other.rows).toEqual(first?.rows);
    }),
    runs,
  );
});

/** No stamp in it has been put right yet, so nobody has heard of a clock that stood ahead. */
const isAsWritten = ({ sessions }: AllRows) =>
  sessions.every(
    ({ updatedAt, had = [], disproved }) =>
      disproved === undefined && had.every((stamp) => stamp < updatedAt),
  );

test("without a clock, two copies merge alike from either side, and three in whatever grouping", () => {
  fc.assert(
    fc.property(histories, (history) => {
      const { files } = new Devices(nothing).live(history);
      for (const a of files)
        for (const b of files) {
          const merged = mergeRows(a, b);
          expect(mergeRows(b, a)).toEqual(merged);
          expect(mergeRows(merged, b)).toEqual(merged);
        }
      const [a, b, c] = files.filter(isAsWritten);
      if (a && b && c) expect(mergeRows(mergeRows(a, b), c)).toEqual(mergeRows(a, mergeRows(b, c)));
    }),
    runs,
  );
});

const day = 86_400_000;
const at = Date.UTC(2027, 2, 10);
const tenYears = 3652 * day;
const book = (...sessions: Session[]): AllRows => ({ ...noRows, sessions });
const aSession = (note: string, now: number) => stampNew<Session>({ note } as Session, "a", now);
const edited = (row: Session, note: string, now: number) => stampChanged(row, { note }, now);
const onConfirmed = (here: AllRows, came: AllRows, now: number) => {
  const upTo = believedUpTo(now);
  return mergeRows(putRowsRight(here, upTo), putRowsRight(came, upTo));
};
const notes = ({ sessions }: AllRows) => sessions.map(({ note }) => note);

test("a copy of 2037 loses to a real edit, at every merge of the same file, also when its time has come", () => {
  const phone = aSession("as driven", at);
  const wrong = book(edited(phone, "under the wrong clock", at + tenYears));
  const real = book(edited(phone, "mended on the phone", at + day));
  let mine = onConfirmed(real, wrong, at + 2 * day);
  expect(notes(mine)).toEqual(["mended on the phone"]);
  expect(onConfirmed(mine, wrong, at + 3 * day)).toEqual(mine);
  mine = book(edited(mine.sessions[0] as Session, "mended again", at + 4 * day));
  for (const later of [5 * day, tenYears + 30 * day])
    expect(notes(onConfirmed(mine, wrong, at + later))).toEqual(["mended again"]);
  expect(notes(mergeRows(wrong, mine))).toEqual(["mended again"]);
});

test("a deletion made since is not undone by a copy of 2037", () => {
  const phone = aSession("as driven", at);
  const wrong = book(edited(phone, "under the wrong clock", at + tenYears));
  const deleted = book(stampDeleted(phone, at + day));
  const mine = onConfirmed(deleted, wrong, at + 2 * day);
  expect(mine.sessions[0]?.deletedAt).toBe(at + day);
  expect(onConfirmed(mine, wrong, at + 3 * day)).toEqual(mine);
});

test("an edit made under a wrong clock stays against the row it was made from", () => {
  const phone = book(edited(aSession("as driven", at), "mended on the phone", at + 1000));
  for (const off of [tenYears, 40 * day, -tenYears]) {
    const pc = book(edited(phone.sessions[0] as Session, "edited on the PC", at + day + off));
    expect(notes(onConfirmed(phone, pc, at + 2 * day))).toEqual(["edited on the PC"]);
    expect(notes(onConfirmed(pc, phone, at + 2 * day))).toEqual(["edited on the PC"]);
  }
});

test("a row that only a wrong clock has seen enters with a stamp of this world, and gives way to the real one", () => {
  const phone = aSession("as driven", at);
  const wrong = book(edited(phone, "under the wrong clock", at + tenYears));
  const fresh = onConfirmed(noRows, wrong, at + 2 * day);
  expect(notes(fresh)).toEqual(["under the wrong clock"]);
  expect(fresh.sessions[0]?.updatedAt).toBe(at + 1);
  const real = book(edited(phone, "mended on the phone", at + day));
  expect(notes(onConfirmed(fresh, real, at + 3 * day))).toEqual(["mended on the phone"]);
  const edit = book(edited(fresh.sessions[0] as Session, "edited since", at + 3 * day));
  expect(notes(onConfirmed(edit, wrong, at + tenYears + 30 * day))).toEqual(["edited since"]);
  const born = book(aSession("begun in 2037", at + tenYears));
  expect(onConfirmed(noRows, born, at + day).sessions[0]?.updatedAt).toBe(stampsKeptSince + 1);
});

test("a row that is edited every evening keeps few stamps, and among them those before a clock leapt", () => {
  let row = aSession("as driven", at);
  const seen = edited(row, "read on the phone", at + day);
  row = edited(seen, "under the wrong clock", at + tenYears);
  for (let n = 1; n < 60; n += 1) row = edited(row, `again ${n}`, at + tenYears + n * 1000);
  expect(row.had?.length).toBeLessThanOrEqual(20);
  expect(notes(onConfirmed(book(seen), book(row), at + 2 * day))).toEqual(["again 59"]);
});
