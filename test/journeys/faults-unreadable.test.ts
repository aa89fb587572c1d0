import type { BrowserContext, Page } from "@playwright/test";
import { savedBackup, storedRows } from "../support/journeyDatabase.ts";
import {
  endRun,
  endSession,
  expect,
  goTo,
  logLap,
  logLaps,
  open,
  runBlock,
  startSession,
  test,
} from "../support/journeys.ts";
import { failReadsOf, type Unreadable } from "../support/unreadableRows.ts";

// The worker that keeps the app for later would answer in place of the server, whose scripts are added to here.
test.use({ serviceWorkers: "block" });

/** From the next page on, rows cannot be read: neither by pages nor by the workers that figures and files are made in. */
async function failFromNowOn(context: BrowserContext, rows: readonly Unreadable[]): Promise<void> {
  await context.addInitScript(failReadsOf, rows);
  await context.route(/\/assets\/worker-.*\.js$/, async (route) => {
    const answer = await route.fetch();
    const body = `(${failReadsOf})(${JSON.stringify(rows)});\n${await answer.text()}`;
    await route.fulfill({ response: answer, body });
  });
}

const notice = (page: Page) => page.getByRole("alert").filter({ hasText: "cannot be read by this browser" });

/** Two ended sessions; the first has three runs. Gives the ids of its runs. */
async function twoSessions(page: Page): Promise<readonly string[]> {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.100", "1:25.200"]);
  await endRun(page);
  await logLaps(page, ["1:21.100", "1:21.200"]);
  await endRun(page);
  await logLaps(page, ["1:25.300", "1:25.400"]);
  await endSession(page, "the first evening");
  await page.getByRole("button", { name: "Back to Log" }).click();
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.700", "1:25.800"]);
  await endSession(page, "the second evening");
  const runs = (await storedRows(page, "runs")).toSorted(
    (a, b) => Number(a["startedAt"]) - Number(b["startedAt"]),
  );
  return runs.map(({ id }) => String(id));
}

/** The laps that Review counts in each session, the newest first. */
async function lapsInReview(page: Page): Promise<readonly string[]> {
  const rows = page.getByRole("table", { name: "Sessions, newest first" }).getByRole("row");
  await expect(rows).toHaveCount(3);
  return (await rows.getByRole("cell").filter({ hasText: /^\d+$/ }).allTextContents()).slice(-2);
}

test("the driver sees which run cannot be read, all the others, and figures that say they are without it", async ({
  page,
  context,
}) => {
  const [, second = ""] = await twoSessions(page);
  await failFromNowOn(context, [{ table: "runs", id: second }]);
  await page.goto("./#/log");
  await page.reload();
  await page.getByRole("table", { name: "Last sessions" }).getByRole("link").last().click();
  await expect(runBlock(page, 1)).toContainText("1:25.200");
  await expect(runBlock(page, 2)).toContainText("This browser cannot read this run");
  await expect(runBlock(page, 3)).toContainText("1:25.400");
  await expect(notice(page)).toContainText("One row of this logbook");
  await expect(notice(page).getByRole("listitem")).toHaveText(
    /^a run of the session of \w{3} \d+ \w{3} \d{4}, Varnholt Ring · club hatch$/,
  );
  await expect(notice(page)).toContainText("worked out now are without it");
  await expect(page.getByText("could not be shown")).toHaveCount(0);

  const { backup } = await savedBackup(page, "Save a backup");
  expect(backup.counts).toMatchObject({ sessions: 2, runs: 3 });
  await expect(
    page.getByText(`One row could not be read and is not in it: runs ${second}.`).last(),
  ).toBeVisible();
});

test("the driver goes on in a session of which a run cannot be read, and Review says that its figures are without it", async ({
  page,
  context,
}) => {
  const [, second = ""] = await twoSessions(page);
  await goTo(page, "Review");
  expect(await lapsInReview(page)).toEqual(["2", "6"]);
  await failFromNowOn(context, [{ table: "runs", id: second }]);
  await page.goto("./#/log");
  await page.reload();
  await page.getByRole("table", { name: "Last sessions" }).getByRole("link").last().click();
  await page.getByRole("button", { name: /^Go on with (run|this)/ }).click();
  await endRun(page);
  await logLap(page, "1:25.500");
  await endSession(page);
  await expect(runBlock(page, 4)).toContainText("1:25.500");

  // A page that has not met the run yet hears of it from the worker.
  const fresh = await context.newPage();
  await open(fresh, "#/review");
  expect(await lapsInReview(fresh)).toEqual(["2", "5"]);
  await expect(notice(fresh).getByRole("listitem")).toContainText("a run of the session of");
  await expect(notice(fresh)).toContainText("Figures worked out now are without it");
  await fresh.reload();
  expect(await lapsInReview(fresh), "what is without a run is not kept as if it were whole").toEqual([
    "2",
    "5",
  ]);
  await expect(notice(fresh)).toBeVisible();
});

test("the driver sees which session cannot be read, and all the others", async ({ page, context }) => {
  await twoSessions(page);
  const sessions = await storedRows(page, "sessions");
  const first = String(sessions.find(({ note }) => note === "the first evening")?.["id"]);
  await failFromNowOn(context, [{ table: "sessions", id: first }]);
  await page.goto("./#/log");
  await page.reload();
  const list = page.getByRole("table", { name: "Last sessions" }).getByRole("link");
  await expect(list).toHaveCount(1);
  const named = notice(page).getByRole("listitem");
  await expect(named).toHaveText(/^the session begun on \w{3} \d+ \w{3} \d{4}, Varnholt Ring · club hatch$/);
  await named.getByRole("link").click();
  await expect(page.getByRole("heading", { name: "This session cannot be shown" })).toBeVisible();
  await goTo(page, "Review");
  await expect(page.getByRole("main").getByRole("heading", { level: 1 })).toBeVisible();
  await expect(page.getByText("could not be shown")).toHaveCount(0);
  await goTo(page, "Log");
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:26.000");
});
