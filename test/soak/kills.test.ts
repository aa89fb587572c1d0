import { test } from "../support/journeys.ts";
import { killed } from "./odds.ts";
import { sayDeeds } from "./sayDeeds.ts";
import { soak } from "./soak.ts";

const seed = Number(process.env["LAP_LEDGER_SEED"] ?? 20_261_128);
const kills = Number(process.env["LAP_LEDGER_KILLS"] ?? 200);

test(`after ${kills} killed tabs every lap that was shown is there once, and every half-typed line came back (seed ${seed})`, async ({
  page,
  context,
}) => {
  sayDeeds(await soak(context, page, { kills, seed, odds: killed }));
});
