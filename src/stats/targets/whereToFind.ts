import { type Figure, type Id, isTimeKind, known } from "#domain";
import { type SectorAccount, sectorAccount } from "../account/sectorAccount.ts";
import { type TargetState, toGo } from "../combo/targetStates.ts";
import type { CornersReport } from "../corners/cornersReport.ts";
import { sectorsOf } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { sectorSplit } from "./sectorSplit.ts";

/** What is still to find for a target, shared over the sectors. */
export interface SectorShares {
  /** Whole ms for each sector; they add up to what is to find. */
  readonly shares: readonly number[];
  /** As much of it as lies between the usual and the best sectors, ms. */
  readonly covered: number;
}

/** Where the time that a target still needs could come from, ms. */
export interface WhereToFind {
  readonly targetId: Id;
  readonly gain: number;
  /** A reason without a session of five pace laps with sectors. */
  readonly sectors: Figure<SectorShares>;
  /** Corners with road left unused, the most first, as many as it takes; what each is worth is an estimate. */
  readonly corners: readonly { readonly number: number; readonly ms: number }[];
}

interface WhereQuestion {
  readonly states: readonly TargetState[];
  /** Digests of the combo's page in time order. */
  readonly page: readonly SessionDigest[];
  readonly report: Pick<CornersReport, "corners">;
}

/**
 * Where the time that open targets of lap times still need could come from: over the sectors by `sectorSplit`, from the last
 * session with sectors of five pace laps (what is usual and best over weeks would hold the gain of those weeks too), and from
 * the road left unused at corners. Mistakes give nothing here: the laps of these targets are clean. Our methods, §6.
 */
export function whereToFind({ states, page, report }: WhereQuestion): WhereToFind[] {
  const accounts = page.map((digest) => sectorAccount(sectorsOf([digest], "paceBests")));
  const account = accounts.findLast((one) => one.known) ?? sectorAccount([]);
  const unused = report.corners
    .flatMap(({ number, unused: road }) =>
      road.known && !road.value.nothingToGain && road.value.ms.mid > 0
        ? [{ number, ms: road.value.ms.mid }]
        : [],
    )
    .toSorted((a, b) => b.ms - a.ms);
  return states.flatMap(({ target, standing, now }) => {
    if (standing.kind !== "open" || !isTimeKind(target.kind) || now === undefined) return [];
    const gain = toGo(target.value, now);
    if (gain <= 0) return [];
    const sectors = sharesOf(gain, account);
    return [{ targetId: target.id, gain, sectors, corners: asManyAsItTakes(unused, gain) }];
  });
}

function sharesOf(gain: number, account: Figure<SectorAccount>): Figure<SectorShares> {
  if (!account.known) return account;
  const { sectors, gap } = account.value;
  const split = sectorSplit(
    gain,
    sectors.map(({ best, usual }) => ({ bestMs: best, medianMs: usual })),
  );
  return split.known ? known({ shares: split.value, covered: Math.min(gain, gap) }) : split;
}

function asManyAsItTakes<C extends { readonly ms: number }>(
  corners: readonly C[],
  gain: number,
): readonly C[] {
  let sum = 0;
  return corners.filter(({ ms }) => {
    const isWanted = sum < gain;
    sum += ms;
    return isWanted;
  });
}
