import fc from "fast-check";
import { believedUpTo, mergeRows, putRowsRight, rowsAhead } from "#db";
import { type AllRows, noRows, type Session } from "#domain";
import { stampChanged, stampDeleted, stampNew } from "../../src/db/writes/stamp.ts";

const hourMs = 3_600_000;
const dayMs = 24 * hourMs;
const yearMs = 365.25 * dayMs;
/** The true time at which every history begins. */
export const beginning = Date.UTC(2027, 2, 10, 20);

/** How far a clock may be off: right, or ahead and behind by up to ten years. */
const offsets = [0, 0, 0, 10 * yearMs, -10 * yearMs, 40 * dayMs, -40 * dayMs, 10 * yearMs + 1] as const;

/** One thing that happens; `device` and `of` choose among what is there. */
export type Happening = { readonly device: number; readonly passMs: number } & (
  | { readonly kind: "make" }
  | { readonly kind: "edit"; readonly of: number }
  | { readonly kind: "delete"; readonly of: number }
  | { readonly kind: "clock"; readonly offset: number }
  | { readonly kind: "file" }
  | { readonly kind: "merge"; readonly file: number }
  | { readonly kind: "settle" }
);

const of = fc.nat(2);
const always = { device: fc.nat(2), passMs: fc.constantFrom(1, 1000, hourMs, 3 * dayMs, 50 * dayMs) };
const one = <K extends string>(kind: K) => ({ ...always, kind: fc.constant(kind) });
const happening: fc.Arbitrary<Happening> = fc.oneof(
  { weight: 1, arbitrary: fc.record(one("make")) },
  { weight: 5, arbitrary: fc.record({ ...one("edit"), of }) },
  { weight: 1, arbitrary: fc.record({ ...one("delete"), of }) },
  { weight: 2, arbitrary: fc.record({ ...one("clock"), offset: fc.constantFrom(...offsets) }) },
  { weight: 3, arbitrary: fc.record(one("file")) },
  { weight: 4, arbitrary: fc.record({ ...one("merge"), file: fc.nat(9) }) },
  { weight: 1, arbitrary: fc.record(one("settle")) },
) as fc.Arbitrary<Happening>;

/** Some weeks on two or three devices. */
export const histories = fc.array(happening, { minLength: 5, maxLength: 60, size: "max" });

/** What is true of one version of a row, whatever its stamps say. */
export interface Truth {
  /** The versions its writer had before them, and those these were made from. */
  readonly before: ReadonlySet<string>;
  readonly at: number;
  /** How far the clock was off under which it was written. */
  readonly offset: number;
}

interface Device {
  rows: AllRows;
  offset: number;
}

/** What the driver sees of a version, one text for each that was ever written. */
export const seenIn = (session: Session) => session.note;

/** Is called at every merge: what was here, what came, and what is here now. */
type Check = (
  here: AllRows,
  came: AllRows,
  now: AllRows,
  around: { readonly world: World; readonly isClockRight: boolean },
) => void;

/** Devices that begin with the same two rows, every version that was ever written, and every file. */
export class World {
  now = beginning;
  readonly devices: Device[] = [0, 1, 2].map(() => ({ rows: noRows, offset: 0 }));
  readonly files: AllRows[] = [];
  readonly truths = new Map<string, Truth>();
  private made = 0;

  private readonly check: Check;

  constructor(check: Check) {
    this.check = check;
    const [first] = this.devices as [Device];
    for (const _ of [1, 2]) this.write(first, this.now, undefined, false);
    for (const device of this.devices) device.rows = first.rows;
  }

  live(happenings: readonly Happening[]): this {
    for (const one of happenings) {
      this.now += one.passMs;
      this.happen(one);
    }
    return this;
  }

  private happen(one: Happening): void {
    const device = this.devices[one.device] as Device;
    const clock = this.now + device.offset;
    switch (one.kind) {
      case "make":
        this.write(device, clock, undefined, false);
        return;
      case "edit":
      case "delete":
        this.write(device, clock, device.rows.sessions[one.of], one.kind === "delete");
        return;
      case "clock":
        device.offset = one.offset;
        return;
      case "file":
        this.files.push(device.rows);
        return;
      case "merge": {
        const file = this.files[one.file % Math.max(1, this.files.length)];
        if (file !== undefined) this.receive(device, file);
        return;
      }
      case "settle":
        if (device.offset === 0) device.rows = putRowsRight(device.rows, believedUpTo(clock));
    }
  }

  private write(device: Device, clock: number, old: Session | undefined, isDeleted: boolean): void {
    this.made += 1;
    const note = `version ${this.made}`;
    const before = new Set<string>();
    if (old !== undefined) {
      before.add(seenIn(old));
      for (const one of this.truths.get(seenIn(old))?.before ?? []) before.add(one);
    }
    this.truths.set(note, { before, at: this.now, offset: device.offset });
    if (old === undefined) {
      const id = `00000000-0000-7000-8000-${String(this.made).padStart(12, "0")}`;
      const session = stampNew<Session>({ ...aSession, startedAt: clock, note }, id, clock);
      device.rows = { ...device.rows, sessions: [...device.rows.sessions, session] };
      return;
    }
    const changed = { ...(isDeleted ? stampDeleted(old, clock) : stampChanged(old, { note }, clock)), note };
    device.rows = {
      ...device.rows,
      sessions: device.rows.sessions.map((row) => (row === old ? changed : row)),
    };
  }

  /**
   * A file comes in, as the app takes it: where stamps lie ahead of the clock the driver is asked for the date, and only
   * says yes when it is right; without a yes nothing is merged.
   */
  receive(device: Device, file: AllRows): void {
    const after = this.merged(device, file);
    if (after === undefined) return;
    this.check(device.rows, file, after, { world: this, isClockRight: device.offset === 0 });
    device.rows = after;
  }

  /** The rows of a device after a merge; undefined when it is refused. */
  merged(device: Device, file: AllRows): AllRows | undefined {
    const upTo = believedUpTo(this.now + device.offset);
    const isAhead = rowsAhead(file, upTo) !== undefined || rowsAhead(device.rows, upTo) !== undefined;
    if (!isAhead) return mergeRows(device.rows, file);
    if (device.offset !== 0) return undefined;
    return mergeRows(putRowsRight(device.rows, upTo), putRowsRight(file, upTo));
  }
}

const aSession = {
  comboId: "00000000-0000-7000-8000-000000000000",
  isTimeOfDayKnown: true,
  date: "2027-03-10",
  zone: "UTC",
  focus: "free",
} as const;
