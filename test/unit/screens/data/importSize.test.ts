import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { dump, importLaps } from "#db";
import { readLaps, readTable, tableSessions } from "#files";
import { importSize } from "../../../../src/screens/data/importSize.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

test("the size said of an import is that of the rows it stores, give or take a fifth", async () => {
  const { book } = await aLogbook();
  const lines = Array.from(
    { length: 600 },
    (_, n) =>
      `2026-03-0${1 + (n % 9)},club hatch,Varnholt Ring,1:2${n % 10}.${String(n % 1000).padStart(3, "0")}`,
  );
  const known = { cars: [], tracks: [] };
  const table = readTable(["date,car,track,time", ...lines].join("\n"), {}, known);
  const { laps } = readLaps(table, { car: "", track: "" }, "2026-04-01");
  const about = { zone: "Europe/Berlin", dayStartsAt: 4, newId: book.newId };
  const { sessions } = tableSessions(laps, about);
  await importLaps(book, { sessions, takesKnown: false });
  const { sessions: stored, runs } = await dump(book);
  expect(runs.flatMap((run) => run.laps)).toHaveLength(600);
  const size = JSON.stringify([stored, runs]).length;
  expect(importSize(sessions)).toBeGreaterThan(size * 0.8);
  expect(importSize(sessions)).toBeLessThan(size * 1.2);
});
