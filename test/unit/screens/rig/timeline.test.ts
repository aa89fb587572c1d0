import { expect, test } from "vitest";
import type { RigSettings, RigTest } from "#domain";
import { onOneLine, timeline } from "../../../../src/screens/rig/timeline.ts";

const rig = (id: string, from: string) => ({ id, from, createdAt: 1, updatedAt: 1 }) as RigSettings;
const dayOf = (moment: number) => new Date(moment).toISOString().slice(0, 10);
const at = (date: string) => Date.parse(`${date}T20:00:00Z`);

test("tests stand among the records where they ended, or began if they are not over, the newest first", () => {
  const records = timeline(
    [rig("a", "2026-08-31"), rig("b", "2026-09-30"), rig("c", "2026-10-24")],
    "2026-11-01",
  );
  const over = { id: "over", createdAt: at("2026-09-01"), endedAt: at("2026-09-30") } as RigTest;
  const open = { id: "open", createdAt: at("2026-10-02") } as RigTest;
  const stops = onOneLine(records, [over, open], dayOf);
  expect(stops.map((stop) => (stop.test ?? stop.placed.rig).id)).toEqual(["c", "open", "b", "over", "a"]);
  expect(stops.map(({ on }) => on)).toEqual([
    "2026-10-24",
    "2026-10-02",
    "2026-09-30",
    "2026-09-30",
    "2026-08-31",
  ]);
});
