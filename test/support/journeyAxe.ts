import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

/** The page as it stands breaks no rule of WCAG 2.2 AA that a machine can check. */
export async function expectAccessible(page: Page, where: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"])
    .analyze();
  const found = violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target }) => `${id}: ${help} at ${target.join(" ")}`),
  );
  expect(found, where).toEqual([]);
}
