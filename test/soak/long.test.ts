import { test } from "../support/journeys.ts";
import { soak } from "./soak.ts";

const seed = Number(process.env["LAP_LEDGER_SEED"] ?? 20_261_125);
const changes = Number(process.env["LAP_LEDGER_CHANGES"] ?? 2000);

test(`${changes} changes by a driver who does anything at any time, in two tabs (seed ${seed})`, async ({
  page,
  context,
}) => {
  const deeds = await soak(context, page, { changes, seed });
  for (const [deed, times] of Object.entries(deeds)) process.stdout.write(`${deed}: ${times}\n`);
});
