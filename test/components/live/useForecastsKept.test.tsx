import { renderHook, waitFor } from "@testing-library/react";
import type { ReactNode } from "react";
import { expect, it } from "vitest";
import { addCombo, endSession, forecasts, type Logbook, setTarget, startSession } from "#db";
import { askHere, useForecastsKept } from "#live";
import { useNotices } from "#state/notices.ts";
import { keepForecastsDue } from "../../../src/live/keepForecastsDue.ts";
import { LogbookContext } from "../../../src/live/logbookContext.ts";
import { addForecast } from "../../support/addForecast.ts";
import { addSessions } from "../../support/addSessions.ts";
import { hooksAt } from "../../support/hooksAt.tsx";
import { pass } from "../../support/waits.ts";

const at = (date: string) => Date.parse(`${date}T12:00:00Z`);

/** Four evenings, the last two days before today, and a target that could be reached by its date. */
async function anAim(book: Logbook) {
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const laps = (number: number) => [0, 60, 20, 90, 40, 10].map((more) => 84_000 - 100 * number + more);
  const dates = ["2026-11-04", "2026-11-11", "2026-11-18", "2026-11-23"];
  const ids = await addSessions(
    book,
    comboId,
    dates.map((date, number) => ({ date, laps: laps(number) })),
  );
  const aim = { comboId, kind: "best", value: 83_400 } as const;
  const { id: targetId } = await setTarget(book, {
    ...aim,
    ...{ by: "2026-12-20", setOn: "2026-11-12", setAt: at("2026-11-12") },
  });
  return { comboId, targetId, last: ids.at(-1), aim };
}

/** The page over such a logbook, with what was read of its forecasts. */
async function aPage(fill: (book: Logbook) => Promise<unknown> = anAim) {
  const asked: string[] = [];
  const page = await hooksAt(fill, {
    ask: (book, job, details) => {
      asked.push(job);
      return askHere(book, job, details);
    },
  });
  return { ...page, asked, kept: () => forecasts(page.book) };
}

it("keeps one for the target after the last session, however often it is asked, and in two tabs", async () => {
  const { draw, otherTab, page, kept, asked } = await aPage();
  draw(() => useForecastsKept(0));
  otherTab().draw(() => useForecastsKept(0));
  await waitFor(() => expect(asked).toHaveLength(2));
  await waitFor(async () => expect(await kept()).toHaveLength(1));
  await Promise.all([keepForecastsDue(page), keepForecastsDue(page)]);
  expect(await kept()).toMatchObject([
    { kind: "best", value: 83_400, madeOn: "2026-11-25", by: "2026-12-20", method: "level, version 1" },
  ]);
});

it("asks nothing while a session is open, and keeps its forecast once it has ended", async () => {
  let sessionId = "";
  const { draw, book, clock, kept, asked, page } = await aPage(async (into) => {
    const { comboId } = await anAim(into);
    ({ sessionId } = await startSession(into, { comboId, date: "2026-11-25", zone: "Europe/Berlin" }));
  });
  draw(() => useForecastsKept(0));
  await keepForecastsDue(page);
  expect(asked).toEqual([]);
  clock.pass(60_000);
  await endSession(book, { sessionId });
  await waitFor(async () => expect(await kept()).toHaveLength(1));
});

it("keeps none of a target set or changed today: it may be a slip, and can be taken back", async () => {
  const { kept, page, book, clock } = await aPage(async (into) => {
    const { aim } = await anAim(into);
    await setTarget(into, { ...aim, value: 83_200, by: "2026-12-20", setOn: "2026-11-25" });
  });
  await keepForecastsDue(page);
  expect((await kept()).map(({ value }) => value)).toEqual([83_400]);
  clock.pass(86_400_000);
  await keepForecastsDue(page);
  expect((await kept()).map(({ value, madeOn }) => [value, madeOn])).toEqual([
    [83_400, "2026-11-25"],
    [83_200, "2026-11-26"],
  ]);
  book.close();
});

it("scores what was said once its date has passed, once", async () => {
  const { kept, page } = await aPage(async (into) => {
    const { comboId, targetId } = await anAim(into);
    const said = { targetId, comboId, kind: "best", chance: 0.4, method: "m", madeOn: "2026-11-12" } as const;
    await addForecast(into, { ...said, by: "2026-11-24", value: 83_700 });
    await addForecast(into, { ...said, by: "2026-11-25", value: 83_700 });
  });
  await keepForecastsDue(page);
  const scored = (await kept()).filter(({ reached }) => reached !== undefined);
  // Said on the day it is written: no session came between now and its date.
  expect(scored).toMatchObject([{ by: "2026-11-24", reached: false, scoredOn: "2026-11-25" }]);
  const before = scored[0]?.updatedAt;
  await keepForecastsDue(page);
  expect((await kept()).find(({ by }) => by === "2026-11-24")?.updatedAt).toBe(before);
});

it("the demo keeps the forecasts it came with", async () => {
  const { page, kept, asked, draw } = await aPage();
  const demo = { ...page, entry: { ...page.entry, kind: "demo" } as const };
  renderHook(() => useForecastsKept(0), {
    wrapper: ({ children }: { readonly children: ReactNode }) => (
      <LogbookContext value={demo}>{children}</LogbookContext>
    ),
  });
  // What is drawn after it has been asked and answered.
  draw(() => useForecastsKept(0));
  await waitFor(async () => expect(await kept()).toHaveLength(1));
  expect(asked).toEqual(["forecastsDue"]);
});

it("says nothing of a logbook that is left while its forecasts are asked for", async () => {
  let left = 0;
  const page = await hooksAt(anAim, {
    ask: async (book, job, details) => {
      book.close();
      left += 1;
      return askHere(book, job, details);
    },
  });
  useNotices.setState({ list: [] });
  page.draw(() => useForecastsKept(0));
  await waitFor(() => expect(left).toBe(1));
  await pass(200);
  expect(useNotices.getState().list).toEqual([]);
});
