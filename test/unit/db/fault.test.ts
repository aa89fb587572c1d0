import { expect, test } from "vitest";
import { faultOf, isClosed, isLostConnection, LedgerFault, mayBeUnreadable } from "#db";

const named = (name: string, more: object = {}) =>
  Object.assign(new Error("in the browser's words"), { name }, more);

const sentences: readonly (readonly [string, string, string])[] = [
  [
    "QuotaExceededError",
    "quota",
    "this browser has no space left for it. Save a backup to a file, make room, then try again.",
  ],
  [
    "SecurityError",
    "refused",
    "this browser does not let the page store anything. Allow site data for this address, then reload.",
  ],
  [
    "MissingAPIError",
    "refused",
    "this browser offers no database to pages. A current version of it does; private windows may not.",
  ],
  [
    "DatabaseClosedError",
    "closed",
    "the logbook is closed in this tab. Reload the page; typed text is kept.",
  ],
  [
    "InvalidStateError",
    "closed",
    "the browser lost its connection to the logbook. Reload the page; typed text is kept.",
  ],
  ["UnknownError", "closed", "the browser could not reach the logbook. Reload the page; typed text is kept."],
];
for (const [name, code, sentence] of sentences)
  test(`${name} of the browser is said in words that help, also from inside another error`, () => {
    const error = named(name);
    for (const given of [
      error,
      named("AbortError", { inner: error }),
      named("AbortError", { cause: error }),
    ]) {
      const fault = faultOf(given, "Lap not stored");
      expect([fault.code, fault.message]).toEqual([code, `Lap not stored: ${sentence}`]);
      expect(fault.cause).toBe(given);
      expect(fault.name).toBe("LedgerFault");
      expect(fault).toBeInstanceOf(LedgerFault);
    }
    expect(faultOf(named("AbortError"), "Lap not stored", error).code).toBe(code);
  });

test("a closed logbook is known by its error, also where that has been said already, and by no other", () => {
  const closed = named("DatabaseClosedError");
  expect(isClosed(closed)).toBe(true);
  expect(isClosed(faultOf(closed, "Lap not stored"))).toBe(true);
  for (const name of ["InvalidStateError", "UnknownError", "AbortError", "QuotaExceededError"])
    expect(isClosed(faultOf(named(name), "Lap not stored"))).toBe(false);
  expect(isClosed(undefined)).toBe(false);
});

test("a full disk is what is said where a transaction also lost its connection by it", () => {
  const fault = faultOf(named("InvalidStateError"), "Lap not stored", named("QuotaExceededError"));
  expect(fault.code).toBe("quota");
});

test("any other error is told by its name, and that nothing was changed", () => {
  const said = (error: unknown) => faultOf(error, "Lap not stored").message;
  const words = (name: string) =>
    `Lap not stored: the browser's database gave up (${name}). Nothing was changed; try again.`;
  expect(said(named("AbortError", { inner: named("Odd") }))).toBe(words("AbortError"));
  for (const error of ["text", undefined, null, 7, {}, { name: 5 }])
    expect(said(error), String(error)).toBe(words("no reason given"));
  expect(faultOf(named("Odd"), "Lap not stored").code).toBe("failed");
  expect(said({ name: 5, inner: named("Odd") })).toBe(words("Odd"));
});

test("a fault of the book stays what it is, also inside what the database made of it", () => {
  const fault = new LedgerFault("newerTab", "Reload.");
  expect(faultOf(fault, "Lap not stored")).toBe(fault);
  expect(faultOf(named("AbortError", { inner: fault }), "Lap not stored")).toBe(fault);
  expect(fault).not.toHaveProperty("cause");
  expect(new LedgerFault("failed", "x", 0).cause).toBe(0);
});

test("errors that stand in a circle are looked through and come to an end", () => {
  const error: Record<string, unknown> = { name: "AbortError" };
  error["inner"] = { name: "Odd", inner: error };
  expect(faultOf(error, "Lap not stored").code).toBe("failed");
});

test("a lost connection is told by two names, wherever they stand", () => {
  for (const name of ["InvalidStateError", "UnknownError"]) {
    expect(isLostConnection(named(name))).toBe(true);
    expect(isLostConnection(named("AbortError", { inner: named(name) }))).toBe(true);
  }
  for (const error of [named("QuotaExceededError"), named("DataError"), undefined])
    expect(isLostConnection(error)).toBe(false);
});

test("a value that cannot be read is told by three names", () => {
  for (const name of ["UnknownError", "NotReadableError", "DataError"])
    expect(mayBeUnreadable(named("AbortError", { cause: named(name) })), name).toBe(true);
  for (const name of ["InvalidStateError", "QuotaExceededError", "AbortError"])
    expect(mayBeUnreadable(named(name)), name).toBe(false);
});
