import { expect, test } from "vitest";
import { differingFields, fieldOf, isSame, overwrittenFields, patched } from "../../../src/db/patch.ts";

interface Note {
  readonly text: string;
  readonly by?: string;
  readonly at?: { readonly corner: number; readonly lap?: number };
}
const note: Note = { text: "late", by: "me" };

test("a patch changes what it names, takes out what it names as unknown, and leaves the rest", () => {
  expect(patched<Note>(note, { text: "early" })).toEqual({ text: "early", by: "me" });
  const bare = patched<Note>(note, { by: undefined });
  expect(bare).toEqual({ text: "late" });
  expect(bare).not.toHaveProperty("by");
  expect(patched<Note>(note, {})).toEqual(note);
  expect(note).toEqual({ text: "late", by: "me" });
});

test("stored values are the same whatever the order of their fields, and others are not", () => {
  expect(isSame({ corner: 5, lap: 3 }, { lap: 3, corner: 5 })).toBe(true);
  expect(isSame([1, 2], [2, 1])).toBe(false);
  expect(isSame("5", 5)).toBe(false);
  expect(isSame(undefined, undefined)).toBe(true);
  expect(isSame({ lap: undefined }, {})).toBe(true);
});

test("fields in which rows differ are named once, those only one of them has too", () => {
  expect(differingFields(note, { text: "early", at: { corner: 5 } })).toEqual(["text", "by", "at"]);
  expect(differingFields(note, { by: "me", text: "late" })).toEqual([]);
  expect(fieldOf(note, "by")).toBe("me");
  expect(fieldOf(note, "at")).toBeUndefined();
});

test("of the fields to be changed, those are named that somebody else has changed meanwhile", () => {
  const now = { text: "early", by: "you" };
  expect(overwrittenFields(now, { text: "never" }, note)).toEqual(["text"]);
  expect(overwrittenFields(now, { text: "never", by: "him", at: { corner: 1 } }, note)).toEqual([
    "text",
    "by",
  ]);
  expect(overwrittenFields(note, { text: "never" }, note)).toEqual([]);
  expect(overwrittenFields(now, { text: "never" }, undefined)).toEqual([]);
});
