import type { Page } from "@playwright/test";
import { expect, goTo, open, test } from "../support/journeys.ts";

async function withDemo(page: Page) {
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByText("This is the demo")).toBeVisible();
}

const gainHelped = /Faster by 0\.\d\d s, very likely at least 0\.\d\d s/;

test("whether the gain change helped stands on the rig's first page, and in full one press behind it", async ({
  page,
}) => {
  await withDemo(page);
  await goTo(page, "Rig");
  const tested = page.getByRole("region", { name: "The last test" });
  await expect(tested.getByText(gainHelped)).toBeVisible();
  await expect(tested).toContainText("8 pairs of runs; kept gain 54 %");
  await tested.getByRole("link", { name: "gain 54 % against 72 %" }).click();
  await expect(page.getByText(/with 8 pairs the true difference is between/)).toBeVisible();
});

test("the demo's change of the field of view is read as no difference", async ({ page }) => {
  await withDemo(page);
  await goTo(page, "Rig");
  const change = page.getByRole("region", { name: "The last change" });
  await expect(change).toContainText("Field of view true to size (field of view 75° to 57°)");
  await expect(change.getByText(/^No .*difference/)).toBeVisible();
});

test("from Review one press tells what each change of the rig did to that combo and in a test, and a second leads to the test", async ({
  page,
}) => {
  await withDemo(page);
  await goTo(page, "Review");
  await page.getByRole("button", { name: /^Did the rig help\?/ }).click();
  const changes = page.getByRole("table", { name: "Changes of the rig, the newest first" });
  const lowerGain = changes.getByRole("row", { name: /Lower gain/ });
  await expect(lowerGain).toContainText("from the weeks before and after; not a test");
  await expect(lowerGain).toContainText("Tested on Tessemoor · club hatch");
  await expect(lowerGain.getByText(gainHelped)).toBeVisible();
  await lowerGain.getByRole("link", { name: "Tested" }).click();
  await expect(page.getByText(/with 8 pairs the true difference is between/)).toBeVisible();
});
