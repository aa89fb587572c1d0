import {
  endRun,
  endSession,
  entryField,
  expect,
  goTo,
  logLaps,
  open,
  startSession,
  test,
} from "../support/journeys.ts";

test("a whole evening asks nothing of any other host, under a strict policy", async ({
  page,
  context,
  baseURL,
}) => {
  const asked: string[] = [];
  context.on("request", (request) => asked.push(new URL(request.url()).origin));
  await open(page);
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute("content");
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("connect-src 'self'");
  expect(policy).not.toMatch(/unsafe|https?:|\*/);
  await startSession(page, "club hatch", "Varnholt Ring", { target: "1:25.000" });
  await logLaps(page, ["1:25.118", "1:25.902", "1:25.340", "1:25.511", "1:25.700", "1:25.455 f@3"]);
  await endRun(page);
  await endSession(page, "a note nobody else reads");
  for (const place of ["Review", "Targets", "Rig", "Corners", "Data", "Log"] as const) {
    await goTo(page, place);
    await expect(page.getByRole("main").getByRole("heading", { level: 1 })).toBeVisible();
  }
  await page.getByRole("button", { name: "Start the session" }).click();
  await expect(entryField(page)).toBeFocused();
  expect(asked.length).toBeGreaterThan(5);
  expect([...new Set(asked)]).toEqual([new URL(baseURL ?? "").origin]);
  expect(page.url()).not.toContain("note");
});

test("the watch over the policy sees what it forbids", async ({ page, expected }) => {
  await open(page);
  expected.push(/policy broken: img-src/, /request to elsewhere/, /console: .*Content Security Policy/);
  await page.evaluate(
    () =>
      new Promise((done) => {
        document.addEventListener("securitypolicyviolation", done, { once: true });
        document.body.append(Object.assign(new Image(), { src: "http://elsewhere.invalid/x.png" }));
      }),
  );
});
