import fc from "fast-check";
import { expect, test } from "vitest";
import { marksOf, mergeRows, partOf } from "#db";
import { type AllRows, type Id, noRows } from "#domain";
import { aDevice, type Deed, deeds, lapsOf, practise } from "../../support/devices.ts";

const settled = { seed: 20261125, numRuns: 200 };

type Sent = ReadonlyMap<Id, number>;

/** What a device sends: all that has not been sent from there as it is now. */
function receive(from: AllRows, to: AllRows, sent: Sent): AllRows {
  return mergeRows(to, partOf(from, { kind: "unsent", sent }));
}

test("two devices that have sent each other their files hold the same, whoever began", () => {
  fc.assert(
    fc.property(deeds, deeds, (first, second) => {
      const start = practise(aDevice(1), noRows, [{ kind: "session" }, { kind: "lap", of: 0 }]);
      const phone = practise(aDevice(2), start, first);
      const pc = practise(aDevice(3), start, second);
      const pcThen = mergeRows(pc, phone);
      expect(mergeRows(phone, pcThen)).toEqual(pcThen);
      expect(mergeRows(phone, pc)).toEqual(pcThen);
      // Once more, both ways: nothing is doubled.
      expect(mergeRows(mergeRows(phone, pcThen), pcThen)).toEqual(pcThen);
    }),
    settled,
  );
});

test("three devices end up the same by whatever way their files went round", () => {
  fc.assert(
    fc.property(deeds, deeds, deeds, (first, second, third) => {
      const start = practise(aDevice(1), noRows, [{ kind: "session" }, { kind: "lap", of: 0 }]);
      const [a, b, c] = [first, second, third].map((some, n) => practise(aDevice(n + 2), start, some)) as [
        AllRows,
        AllRows,
        AllRows,
      ];
      const all = mergeRows(mergeRows(a, b), c);
      expect(mergeRows(c, mergeRows(b, a))).toEqual(all);
      expect(mergeRows(mergeRows(c, a), mergeRows(b, c))).toEqual(all);
    }),
    settled,
  );
});

test("sending only what is new, both ways and again, brings two devices to the same rows", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(deeds, deeds), { minLength: 1, maxLength: 4 }), (evenings) => {
      let [phone, pc] = [noRows, noRows] as [AllRows, AllRows];
      let [phoneSent, pcSent]: [Sent, Sent] = [new Map(), new Map()];
      const [onPhone, onPc] = [aDevice(2), aDevice(3)];
      for (const [first, second] of evenings) {
        phone = practise(onPhone, phone, first);
        pc = practise(onPc, pc, second);
        pc = receive(phone, pc, phoneSent);
        phoneSent = marksOf(phone);
        phone = receive(pc, phone, pcSent);
        pcSent = marksOf(pc);
        expect(phone).toEqual(pc);
        expect(receive(phone, pc, phoneSent)).toEqual(pc);
      }
    }),
    settled,
  );
});

test("a lap deleted on one device stays deleted when a copy that still has it comes back", () => {
  const start = practise(aDevice(1), noRows, [{ kind: "session" }, { kind: "lap", of: 0 }] as Deed[]);
  const deleted = practise(aDevice(2), start, [{ kind: "deleteLap", of: 0 }]);
  for (const merged of [mergeRows(start, deleted), mergeRows(deleted, start)])
    expect(lapsOf(merged).filter(({ deletedAt }) => deletedAt === undefined)).toEqual([]);
});
