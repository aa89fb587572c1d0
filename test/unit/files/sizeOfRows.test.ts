import { expect, test } from "vitest";
import { pack, sizeOfRows, writePasteText } from "#files";

const text = JSON.stringify(Array.from({ length: 2000 }, (_, n) => ({ id: `lap ${n}`, ms: 85_000 + n })));

test("a file is as large as its text, packed, pasted or as it is", async () => {
  const packed = await pack(text);
  expect(packed.length).toBeLessThan(text.length / 2);
  expect(await sizeOfRows(new Blob([text]))).toBe(text.length);
  expect(await sizeOfRows(new Blob([packed]))).toBe(text.length);
  expect(await sizeOfRows(new Blob([`Here it is:\n${writePasteText(packed)}\n`]))).toBe(text.length);
});
