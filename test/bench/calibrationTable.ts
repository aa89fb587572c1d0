import { driverKinds } from "../../demo-data/drivers.ts";
import { firstVersion } from "../calibration/firstVersion.ts";
import {
  brierShare,
  fifths,
  inBand,
  outcomesOf,
  type SaidAndCame,
  saidHalf,
  shareOf,
} from "../calibration/scores.ts";
import { groups, type Horizon, horizons, type Told } from "../calibration/simulate.ts";

const two = (value: number) => (Number.isNaN(value) ? "–" : value.toFixed(2));
const row = (name: string, cells: readonly string[]) => `    ${name.padEnd(30)}${cells.join("   ")}`;
const pair = ({ count, said, came }: SaidAndCame) => `${two(said)} → ${two(came)} (${count})`;

/** All that is measured after a number of past sessions, the first version's figures in square brackets. */
export function table(name: string, sessions: number, told: readonly Told[]): string {
  const kinds = driverKinds.filter((kind) => told.some((one) => one.kind === kind));
  const of = (kind: string) => told.filter((one) => one.kind === kind);
  const byKind = (figure: (those: readonly Told[], kind: (typeof kinds)[number]) => string) =>
    kinds.map((kind) => `${kind} ${figure(of(kind), kind)}`);
  const said = told.filter(({ isSaidLevel }) => isSaidLevel);
  return [
    `${name} (${of(kinds[0] ?? "").length} drivers a kind)`,
    row(
      "change held / wrong way",
      byKind(
        (those) =>
          `${two(shareOf(those.map(({ isChangeHeld }) => isChangeHeld)))}/${two(shareOf(those.map(({ isWrongWay }) => isWrongWay)))}`,
      ),
    ),
    row("said to move no longer", [
      ...byKind((those) => two(shareOf(those.map(({ isSaidLevel }) => isSaidLevel)))),
      `true when said ${two(shareOf(said.map(({ isLevel }) => isLevel)))} (${said.length})`,
    ]),
    ...horizons.flatMap((within) => ahead(within, sessions, told, byKind)),
    "",
  ].join("\n");
}

function ahead(
  within: Horizon,
  sessions: number,
  told: readonly Told[],
  byKind: (figure: (those: readonly Told[], kind: (typeof driverKinds)[number]) => string) => string[],
): string[] {
  const outcomes = outcomesOf(told, within);
  const old = (value: number | undefined) => (value === undefined ? "" : ` [${two(value)}]`);
  const isFirstTold = sessions === 20 && within === 4;
  return [
    row(`${within} ahead: 90 % band holds`, [
      ...byKind(
        (those, kind) =>
          two(shareOf(inBand(those, within))) +
          old(within === 12 ? firstVersion.bands[kind]?.[sessions] : undefined),
      ),
    ]),
    row("  Brier ÷ base rate", [two(brierShare(outcomes)) + old(firstVersion.brier[within][sessions])]),
    row("  said → came, by fifths", fifths(outcomes).map(pair)),
    row(
      "  said one half, by group",
      groups.map((group) => {
        const these = told.filter((one) => one.group === group);
        return `${group} ${pair(saidHalf(outcomesOf(these, within)))}`;
      }),
    ),
    row(
      "  said one half, by kind",
      byKind(
        (those, kind) =>
          pair(saidHalf(outcomesOf(those, within))) + old(isFirstTold ? firstVersion.half[kind] : undefined),
      ),
    ),
  ];
}
