import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { dump, idMaker, lowestSchema, newestSchema, restoreAsNew } from "#db";
import { canonicalText } from "#domain";
import { browserSha256, readBackup } from "#files";
import { generate } from "../../../demo-data/generate.ts";
import { logbookText, pictureText, rows, truthText } from "./theDemo.ts";

test("generating the demo again gives the committed files, byte for byte", async () => {
  const again = await generate();
  expect(again.logbook === logbookText).toBe(true);
  expect(again.truth).toBe(truthText);
  expect(again.picture).toBe(pictureText);
});

test("the demo is a whole backup whose checksum fits, and a change of one lap is seen", async () => {
  const known = { lowest: lowestSchema, newest: newestSchema, sha256: browserSha256() };
  const reading = await readBackup(logbookText, known);
  expect(reading).toMatchObject({ ok: true, backup: { isVerified: true } });
  const changed = logbookText.replace('"ms":83744', '"ms":83743');
  expect(changed).not.toBe(logbookText);
  expect(await readBackup(changed, known)).toMatchObject({ ok: false });
});

test("the demo stays small enough to be fetched between two runs", () => {
  expect(new TextEncoder().encode(logbookText).length).toBeLessThan(450_000);
});

test("the demo loads as a logbook and gives its rows back unchanged", async () => {
  const clock = () => Date.UTC(2026, 11, 1);
  const book = await restoreAsNew(rows, { name: "demo", clock, newId: idMaker(clock) });
  expect(canonicalText(await dump(book))).toBe(canonicalText(rows));
  book.close();
});
