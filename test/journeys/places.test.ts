import { expectAccessible } from "../support/journeyAxe.ts";
import { expect, open, test } from "../support/journeys.ts";

const places = [
  "log",
  "review",
  "targets",
  "rig",
  "rig?field=",
  "rig?part=screen",
  "rig?part=wheel",
  "rig?part=plan",
  "corners",
  "data",
];

for (const colorScheme of ["light", "dark"] as const)
  for (const width of [390, 1280])
    test.describe(`${colorScheme}, ${width} px wide`, () => {
      test.use({ colorScheme, viewport: { width, height: width === 390 ? 844 : 800 } });

      test("every place breaks no rule of WCAG 2.2 AA, empty and with the demo", async ({ page }) => {
        const visit = async (place: string, state: string) => {
          await page.goto(`./#/${place}`);
          await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
          await expect(page.getByText(/^(Opening|Working out)/)).toHaveCount(0);
          await expectAccessible(page, `${place}, ${state}`);
          const isWide = await page.evaluate(
            () => document.documentElement.scrollWidth > document.documentElement.clientWidth,
          );
          expect(isWide, `${place}, ${state} scrolls sideways`).toBe(false);
        };
        await open(page);
        for (const place of places) await visit(place, "empty");
        await page.goto("./#/log");
        await page.getByRole("button", { name: "Load the demo logbook" }).click();
        await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
        for (const place of places) await visit(place, "with the demo");
      });
    });
