import type { CalendarDate, Id } from "#domain";
import { useFigures } from "#live";
import { printAddress } from "#state/address.ts";
import { cornersInShort, counted } from "#words";

interface CornerNextProps {
  readonly comboId: Id;
  /** What was known on that day. */
  readonly asOf: CalendarDate;
}

/** The corner to work on first, where one is known; a press opens it. */
export function CornerNext({ comboId, asOf }: CornerNextProps) {
  const report = useFigures("corners", { comboId, today: asOf }).value;
  const corner = report?.order[0];
  if (!report || corner === undefined) return null;
  return (
    <p>
      <a href={printAddress({ place: "corners", comboId, corner })}>{cornersInShort(report)}</a>, over the
      last {counted(report.sessions, "session")}.
    </p>
  );
}
