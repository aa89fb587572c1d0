import { soak } from "../soak/soak.ts";
import { test } from "../support/journeys.ts";

test("100 changes by a driver who does anything at any time, in two tabs, are all there afterwards", async ({
  page,
  context,
}) => {
  test.setTimeout(180_000);
  await soak(context, page, { changes: 100, seed: 7 });
});
