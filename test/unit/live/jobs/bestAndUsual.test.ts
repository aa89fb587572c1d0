import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addCombo, turnPage } from "#db";
import { askHere } from "#live";
import { addSessions } from "../../../support/addSessions.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const today = "2026-03-10";

test("PB and usual lap are those of the present page, in the order of the combos asked about", async () => {
  const { book } = await aLogbook(Date.parse(`${today}T18:00:00Z`));
  const track = { name: "Varnholt Ring" };
  const { comboId: hatch } = await addCombo(book, { car: { name: "Club hatch" }, track });
  const { comboId: kart } = await addCombo(book, { car: { name: "Kart" }, track });
  await addSessions(book, hatch, [
    { date: "2026-02-01", laps: [80_000, 80_000, 80_000, 80_000, 80_000] },
    { date: "2026-03-01", laps: [84_000, 84_100, 84_200, 84_300, 84_400] },
    { date: "2026-03-05", laps: [83_900, 84_900] },
  ]);
  await turnPage(book, { comboIds: [hatch], from: Date.parse("2026-02-20T00:00:00Z"), reason: "new tyres" });
  expect(await askHere(book, "bestAndUsual", { comboIds: [kart, hatch], today })).toMatchObject([
    { comboId: kart, best: undefined, usual: undefined },
    { comboId: hatch, best: { ms: 83_900, decimals: 3 }, usual: { ms: 84_200, decimals: 3 } },
  ]);
});
