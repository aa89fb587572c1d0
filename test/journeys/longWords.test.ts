import type { Page } from "@playwright/test";
import {
  endRun,
  endSession,
  expect,
  lapTime,
  logLaps,
  open,
  startSession,
  test,
  unfoldAll,
} from "../support/journeys.ts";

/** Sixty letters without a space, of the wider ones. */
const long = (first: string) => `${first}${"wandermoorquelldamm".repeat(4)}`.slice(0, 60);
const car = long("C");
const track = long("T");

const phone = { width: 320, height: 640 };
/** A sheet of A4 within its margins, at 96 to the inch. */
const paper = { width: 700, height: 1000 };
test.use({ viewport: phone });

/** Every heading, caption and legend stands whole within the page, and nothing is wider than the page. */
async function expectHeadingsFit(page: Page, where: string): Promise<void> {
  for (const media of ["screen", "print"] as const) {
    await page.emulateMedia({ media });
    await page.setViewportSize(media === "print" ? paper : phone);
    const over = await page.evaluate(() => {
      const all = [...document.querySelectorAll<HTMLElement>("h1, h2, h3, h4, h5, h6, caption, legend")];
      const isForTheEar = ({ firstElementChild: inner }: Element) =>
        inner instanceof HTMLElement && getComputedStyle(inner).position === "absolute";
      const wide = all.filter((head) => {
        if (isForTheEar(head)) return false;
        const range = document.createRange();
        range.selectNodeContents(head);
        const box = range.getBoundingClientRect();
        return box.width > 1 && head.offsetParent !== null && (box.right > innerWidth + 1 || box.left < -1);
      });
      const { scrollWidth, clientWidth } = document.documentElement;
      return [...wide.map((head) => head.textContent), ...(scrollWidth > clientWidth ? ["the page"] : [])];
    });
    expect(over, `${where}, ${media}`).toEqual([]);
  }
  await page.emulateMedia({ media: "screen" });
  await page.setViewportSize(phone);
}

test("a name of sixty letters breaks in every heading, on a phone and on paper", async ({ page }) => {
  test.setTimeout(180_000);
  await open(page);
  await startSession(page, car, track, { target: "1:25.000" });
  await expectHeadingsFit(page, "a session without laps");
  await logLaps(page, ["1:25.118", "1:25.902", "1:25.340", "1:25.511", "1:25.700", "1:26.455"]);
  await expectHeadingsFit(page, "a session");
  await lapTime(page, 2).click();
  await expectHeadingsFit(page, "a lap being edited");
  await page.keyboard.press("Escape");
  await endRun(page);
  for (const [button, title] of [
    ["Change run 1", "Run 1"],
    ["Session", "This session"],
    ["Summary run", "A run as a summary"],
  ] as const) {
    await page.getByRole("button", { name: button, exact: true }).click();
    const dialog = page.getByRole("dialog", { name: title });
    await expect(dialog).toBeVisible();
    await unfoldAll(dialog);
    await expectHeadingsFit(page, title);
    await page.keyboard.press("Escape");
    await expect(dialog).toBeHidden();
  }
  await endSession(page, long("N"));
  await expectHeadingsFit(page, "an ended session");

  const visit = async (address: string) => {
    await page.goto(`./#/${address}`);
    await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
    await expect(page.getByText(/^(Opening|Working out)/)).toHaveCount(0);
    await expectHeadingsFit(page, address);
  };
  await visit("log");
  for (const address of ["review", "review/across", "review/search", "review/statement", "corners"])
    await visit(address);

  await visit("targets");
  await page.getByRole("button", { name: "Set a target" }).click();
  await expectHeadingsFit(page, "a new target");
  await page.getByLabel("Time to reach").fill("1:24.900");
  const set = page.getByRole("button", { name: /^Set (target|it all the same)$/ });
  await set.click();
  if (await page.getByRole("button", { name: "Set it all the same" }).isVisible()) await set.click();
  await expect(set).toBeHidden();
  await expectHeadingsFit(page, "a target");

  await visit("rig");
  await page.getByRole("button", { name: "Begin the first record" }).click();
  await page.getByLabel("Name of the record").fill(long("R"));
  await page.getByRole("button", { name: "Store", exact: true }).click();
  await page.getByRole("link", { name: "The full sheet" }).click();
  await expect(page.getByRole("heading", { name: long("R") }).first()).toBeVisible();
  await expectHeadingsFit(page, "a record of the rig");

  await visit("data");
  await page.getByRole("button", { name: "Rename" }).first().click();
  await page.getByRole("textbox", { name: /name/i }).first().fill(long("L"));
  await page.getByRole("button", { name: "Rename", exact: true }).last().click();
  await expectHeadingsFit(page, "a logbook renamed");
});
