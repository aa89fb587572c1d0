import fc from "fast-check";
import { expect, test } from "vitest";
import { cornerRanges, layoutRanges, readDate, rigRanges, runRanges, type TableName } from "#domain";
import { parseEntry, readMeasure, readTime } from "#entry";
import { checkRow } from "../../../src/db/checks/checkRow.ts";
import { cornerCells, cornerMeasures } from "../../../src/screens/corners/layout/cornerCells.ts";
import { readCorner } from "../../../src/screens/corners/layout/readCorner.ts";
import { wholeNumber } from "../../../src/screens/log/laps/numbers.ts";
import { rigFields } from "../../../src/screens/rig/rigFields.ts";
import { readRig, textKey } from "../../../src/screens/rig/rigTexts.ts";
import { readTarget } from "../../../src/screens/targets/typedTarget.ts";
import { aContext } from "../entry/aContext.ts";

/** Whatever the app lets a driver store must be believed when it comes back in a backup. */
const id = "00000000-0000-7000-8000-0000000000ff";
const stamps = { id, createdAt: 1, updatedAt: 1 };
const isBelieved = (table: TableName, row: object) =>
  expect(checkRow(table, { ...stamps, ...row }), JSON.stringify(row)).toMatchObject({ ok: true });

const session = {
  comboId: id,
  startedAt: 0,
  isTimeOfDayKnown: false,
  date: "2026-03-10",
  zone: "UTC",
  focus: "free",
  note: "",
};
const run = {
  sessionId: id,
  comboId: id,
  n: 1,
  startedAt: 0,
  kind: "pace",
  effort: "full",
  surface: "dry",
  note: "",
  laps: [],
};

const digits = fc.stringMatching(/^\d{1,7}$/);
/** Times of every form, near the ends of what there is, and what is no time. */
const timeText = fc.oneof(
  fc.stringMatching(/^\d{1,2}:\d{1,2}:[0-5]\d(\.\d{1,3})?$/),
  fc.stringMatching(/^\d{1,4}[:.'][0-5]\d([.,]\d{1,3})?$/),
  fc.stringMatching(/^\d{1,6}[.,]\d{1,3}$/),
  fc.stringMatching(/^0{1,4}[.,]?\d{1,3}$/),
  fc.stringMatching(/^[+-]\d{1,4}(\.\d{1,3})?$/),
  fc.constantFrom("24:00:00", "24:00:00.001", "23:59:59.999", "86400.0", "0.1", "0.099", "0.1000", "1440:00"),
  digits,
);
const near = fc.option(fc.constantFrom(100, 950, 83_456, 3_600_000, 86_399_999, 86_400_000), {
  nil: undefined,
});

test("every lap the entry line takes", () => {
  const line = fc.tuple(
    fc.array(timeText, { minLength: 1, maxLength: 5 }),
    fc.constantFrom("", " c", " f@5", " o / note"),
  );
  let taken = 0;
  fc.assert(
    fc.property(
      line,
      near,
      fc.option(fc.integer({ min: 1, max: 4 }), { nil: undefined }),
      (typed, ms, sectors) => {
        const known = {
          ...(ms === undefined ? {} : { usualMs: ms, pbMs: ms, previousMs: ms, paceTimes: [ms, ms, ms] }),
          ...(sectors === undefined ? {} : { sectors }),
        };
        const read = parseEntry(typed[0].join(" ") + typed[1], aContext(known));
        if (!read.ok) return;
        taken += 1;
        isBelieved("runs", { ...run, laps: [{ ...stamps, n: 1, source: "typed", ...read.lap }] });
      },
    ),
    { seed: 41, numRuns: 5000 },
  );
  expect(taken).toBeGreaterThan(300);
});

test("every time of a target, a reference lap and a summary", () => {
  fc.assert(
    fc.property(timeText, near, near, (text, nearMs, previousMs) => {
      const read = readTime(text, { nearMs, previousMs });
      if (!read.ok) return;
      const { ms, decimals } = read;
      isBelieved("sessions", { ...session, targetMs: ms });
      isBelieved("references", { comboId: id, ms, decimals, source: "" });
      isBelieved("runs", { ...run, summary: { laps: 1, bestMs: ms, bestDecimals: decimals, usualMs: ms } });
    }),
    { seed: 42, numRuns: 5000 },
  );
});

test("every date a field reads", () => {
  const day = fc.oneof(
    fc.stringMatching(/^\d{4}-\d{1,2}-\d{1,2}$/),
    fc.constantFrom("0001-01-01", "1969-12-31", "1970-01-01", "2199-12-31", "2200-01-01", "9999-12-31"),
  );
  fc.assert(
    fc.property(day, timeText, (by, value) => {
      const read = readDate(by);
      if (read.ok) isBelieved("sessions", { ...session, date: read.date });
      const typed = {
        comboId: id,
        kind: "best",
        value,
        by,
        laps: "",
        process: "",
        why: "",
        note: "",
      } as const;
      const target = readTarget(typed, { nearMs: undefined, displayDecimals: 3 });
      if (!target.ok) return;
      const { laps: _, process: __, why: ___, note: ____, ...fields } = target.value;
      isBelieved("targets", { comboId: id, setAt: 0, setOn: "2026-03-10", ...fields });
    }),
    { seed: 43, numRuns: 3000 },
  );
});

/** Figures about the ends of every range, and any others. */
const figure = fc.oneof(
  fc.constantFrom("0", "-0", "-1", "0.01", "1", "5", "4.99", "5,01", "10", "1000", "1000.1", "1e9", "0.001"),
  fc.stringMatching(/^-?\d{1,6}([.,]\d{1,4})?( ?(cm|mm|m|km|°|%))?$/),
  fc.integer({ min: -5000, max: 200_000 }).map(String),
);

test("every record of the rig", () => {
  const measured = rigFields.filter(({ kind }) => kind === "measure");
  const kinds = fc.constantFrom("", "flat", "three", "curved", "headset");
  for (const field of measured)
    fc.assert(
      fc.property(figure, kinds, (text, kind) => {
        const texts = { [textKey(field)]: text, "screen.kind": kind, from: "2026-03-10" };
        const read = readRig(texts);
        if (read.ok) isBelieved("rigs", read.value);
      }),
      { seed: 44, numRuns: 300 },
    );
});

test("the ends of a range are typed as they are stored", () => {
  for (const field of rigFields) {
    if (field.kind !== "measure") continue;
    const { least, most } = (rigRanges as Record<string, Record<string, { least: number; most: number }>>)[
      field.part
    ]?.[field.key] ?? { least: Number.NaN, most: Number.NaN };
    for (const [typed, stored] of [
      [field.measure.least, least],
      [field.measure.most, most],
    ] as const)
      expect(readMeasure(String(typed), field.measure), field.label).toEqual({ ok: true, value: stored });
  }
});

test("every corner, layout and number of a run", () => {
  const layout = { trackId: id, name: "", corners: [] };
  const combo = { carId: id, layoutId: id };
  const count = fc.oneof(figure, digits, fc.constantFrom("l", "h", "m", "none", "kink", "60 mph", "0"));
  const defined = (fields: object) =>
    Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
  fc.assert(
    fc.property(figure, count, (text, number) => {
      for (const cell of cornerCells)
        for (const typed of [text, number]) {
          const { edit, problems } = readCorner(
            { [cell]: typed },
            { number: 1 },
            { car: {}, speeds: new Map() },
          );
          if (problems[cell] !== undefined) continue;
          const { kerbs, ...patch } = edit.patch;
          const corner = { number: edit.number, ...defined(patch), ...(kerbs && { kerbs: defined(kerbs) }) };
          isBelieved("layouts", { ...layout, corners: [corner] });
          if (edit.lowestSpeed !== undefined)
            isBelieved("combos", { ...combo, lowestSpeeds: [{ number: 1, speed: edit.lowestSpeed }] });
        }
      const length = readMeasure(text, { name: "Length", unit: "m", ...layoutRanges.length });
      if (length.ok && length.value !== undefined) isBelieved("layouts", { ...layout, length: length.value });
      for (const [field, range] of [
        ["fuelLitres", runRanges.fuelLitres],
        ["lapsDriven", runRanges.laps],
        ["gridPlace", runRanges.gridPlace],
        ["finishPlace", runRanges.finishPlace],
      ] as const) {
        const read = wholeNumber(number, field, range.most);
        if (read.ok && read.value !== undefined) isBelieved("runs", { ...run, [field]: read.value });
      }
    }),
    { seed: 45, numRuns: 2000 },
  );
  expect(cornerMeasures.radius).toMatchObject(cornerRanges.radius);
});
