import { beforeEach, expect, test } from "vitest";
import { LedgerFault } from "#db";
import { useNotices } from "#state/notices.ts";
import { sayTypedFault } from "../../../src/live/sayTypedFault.ts";

beforeEach(() => useNotices.setState({ list: [] }));
const said = () => useNotices.getState().list.map(({ kind, text, actions }) => ({ kind, text, actions }));

test("what was typed and cannot be kept is said once, and another reason is said beside it", () => {
  sayTypedFault(new LedgerFault("quota", "No space."));
  sayTypedFault(new LedgerFault("quota", "No space."));
  sayTypedFault(new LedgerFault("closed", "The logbook is closed."));
  expect(said()).toEqual([
    { kind: "fault", text: "No space.", actions: [] },
    { kind: "fault", text: "The logbook is closed.", actions: [] },
  ]);
});

test("an error of the app itself is not swallowed", () => {
  expect(() => sayTypedFault(new TypeError("a slip"))).toThrow("a slip");
  expect(said()).toEqual([]);
});
