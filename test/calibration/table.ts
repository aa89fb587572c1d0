import { brierShare, fifths, type Measured, shareOf } from "./simulate.ts";

/** One line a set of drivers: coverage of the 90 % band by kind, said and came by fifths, Brier against base rate. */
export function tableLine(name: string, { held, outcomes }: Measured): string {
  const coverage = [...held].map(([kind, ahead]) => `${kind} ${shareOf(ahead.flat()).toFixed(3)}`);
  const first = shareOf([...held.values()].flatMap((ahead) => ahead[0] ?? []));
  const chances = fifths(outcomes).map(
    ({ count, said, came }) => `${said.toFixed(2)} said, ${came.toFixed(2)} came (${count})`,
  );
  return [
    name,
    `  90 % band holds: ${coverage.join(" · ")} · first session ahead ${first.toFixed(3)}`,
    `  chances: ${chances.join(" · ")}`,
    `  Brier / base rate: ${brierShare(outcomes).toFixed(3)}`,
  ].join("\n");
}
