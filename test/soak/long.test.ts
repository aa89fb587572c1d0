import { sayDeeds } from "./sayDeeds.ts";
import { test } from "./servedTest.ts";
import { soak } from "./soak.ts";

const seed = Number(process.env["LAP_LEDGER_SEED"] ?? 20_261_125);
const changes = Number(process.env["LAP_LEDGER_CHANGES"] ?? 2000);

test(`${changes} changes by a driver who does anything at any time, in two tabs, under a clock that jumps and with a migration half way, are all there afterwards (seed ${seed})`, async ({
  page,
  context,
  served,
}) => {
  sayDeeds(await soak(context, page, { changes, seed, swap: served.swap }));
});
