import fc from "fast-check";
import { expect, test } from "vitest";
import { isPasteText, readPasteText, writePasteText } from "#files";

const bytesOf = (text: string) => {
  const read = readPasteText(text);
  return read.ok ? [...read.bytes] : read.problem.wrong;
};

test("bytes come through as text unchanged, whatever a chat writes around it and however it breaks the lines", () => {
  fc.assert(
    fc.property(
      fc.uint8Array({ maxLength: 300 }),
      fc.constantFrom("\n", "\r\n", " ", "\n\n  "),
      (bytes, gap) => {
        const text = writePasteText(bytes).replaceAll("\n", gap);
        const chat = `[25/11, 18:05] Phone: ${text}\nsent from a phone`;
        expect(isPasteText(chat)).toBe(true);
        expect(bytesOf(chat)).toEqual([...bytes]);
      },
    ),
    { seed: 20261125 },
  );
});

test("long packed data is written without a stack overflow", () => {
  const bytes = new Uint8Array(300_000).fill(7);
  expect(bytesOf(writePasteText(bytes))).toHaveLength(300_000);
});

test("a text cut short or changed is refused with what is wrong", () => {
  const text = writePasteText(new Uint8Array(100));
  expect(bytesOf(text.slice(0, -10))).toBe("The pasted text is not complete: its end is missing.");
  expect(bytesOf(text.replace("A", "*"))).toBe("The pasted text was changed on its way.");
  expect(bytesOf(text.replace("A", ""))).toBe("The pasted text was changed on its way.");
});

test("a backup as plain JSON is no such text, even with the mark in a note", () => {
  expect(isPasteText('{"note":"lap-ledger:"}')).toBe(false);
  expect(isPasteText("hello")).toBe(false);
});
