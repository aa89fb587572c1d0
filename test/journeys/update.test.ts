import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildFolder, serve } from "../support/journeyServer.ts";
import { entryField, expect, lapTime, logLap, startSession, test } from "../support/journeys.ts";

test.use({ baseURL: "" });

test("a new version is offered and never forced; the half-typed line survives the change", async ({
  page,
}) => {
  const newer = nextBuild();
  const served = await serve(buildFolder, "/");
  try {
    await page.goto(served.url);
    await startSession(page, "club hatch", "Varnholt Ring");
    await logLap(page, "1:25.118");
    await expect
      .poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active?.state))
      .toBe("activated");
    await page.reload();
    await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
    await entryField(page).pressSequentially("1:25.4", { delay: 60 });

    served.swap(newer);
    await page.evaluate(async () => {
      await (await navigator.serviceWorker.getRegistration())?.update();
    });
    const offer = page.getByRole("status").filter({ hasText: "A new version of Lap Ledger is ready" });
    await expect(offer).toBeVisible({ timeout: 30_000 });
    await expect(entryField(page)).toBeFocused();
    await expect(entryField(page)).toHaveValue("1:25.4");
    await expect(page.locator("html")).not.toHaveAttribute("data-version");

    // The old page still finds its own late pieces, although the server no longer has them.
    await page.getByRole("button", { name: "Summary run" }).click();
    await expect(page.getByRole("dialog", { name: "A run as a summary" })).toBeVisible();
    await page.keyboard.press("Escape");

    await offer.getByRole("button", { name: "Update" }).click();
    await expect(page.locator("html")).toHaveAttribute("data-version", "next");
    await expect(entryField(page)).toHaveValue("1:25.4");
    await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
    await expect(offer).toBeHidden();
  } finally {
    await served.close();
    rmSync(newer, { recursive: true, force: true });
  }
});

/** The build under test once more as the next version would be: other names for its pieces, another page. */
function nextBuild(): string {
  const folder = mkdtempSync(join(tmpdir(), "lap-ledger-next-"));
  cpSync(buildFolder, folder, { recursive: true });
  const assets = join(folder, "assets");
  const names = readdirSync(assets);
  const renamed = new Map(names.map((name) => [name, `next-${name}`]));
  const change = (file: string) => {
    let text = readFileSync(file, "utf8");
    for (const [from, to] of renamed) text = text.replaceAll(from, to);
    writeFileSync(file, text);
  };
  for (const [from, to] of renamed) renameSync(join(assets, from), join(assets, to));
  for (const name of renamed.values()) if (/\.(js|css)$/.test(name)) change(join(assets, name));
  for (const name of ["index.html", "sw.js"]) change(join(folder, name));
  const page = join(folder, "index.html");
  writeFileSync(page, readFileSync(page, "utf8").replace("<html", '<html data-version="next"'));
  const worker = join(folder, "sw.js");
  writeFileSync(
    worker,
    readFileSync(worker, "utf8").replace(/(revision:"|"revision":")([0-9a-f]{8})/g, "$1next"),
  );
  return folder;
}
