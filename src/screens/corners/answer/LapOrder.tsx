import { useState } from "react";
import { CornerRow } from "#charts/corners/CornerRow.tsx";
import type { CalendarDate, Id, Layout } from "#domain";
import { printAddress } from "#state/address.ts";
import type { CornersReport } from "#stats";
import { Button } from "#ui/Button.tsx";
import { Part } from "#ui/Part.tsx";
import { counted, sayCornerInRow, sayCorners } from "#words";
import { toggledCorner } from "../toggledCorner.ts";
import { useCornersTonight } from "../useCornersTonight.ts";
import styles from "./Answer.module.css";

interface LapOrderProps {
  readonly comboId: Id;
  readonly layout: Layout;
  readonly report: CornersReport;
  readonly today: CalendarDate;
}

/** The corners in lap order: a press opens one, or, while corners are chosen for tonight's review, chooses it. */
export function LapOrder({ comboId, layout, report: { corners, order }, today }: LapOrderProps) {
  const tonight = useCornersTonight(comboId, today);
  const [isChoosing, setChoosing] = useState(false);
  const chosen = tonight.numbers ?? [];
  const all = corners.map(({ number }) => number);
  const press = (number: number) => tonight.choose(toggledCorner(all, chosen, number));
  return (
    <Part title="The corners of a lap" ruled aside={counted(corners.length, "corner")}>
      <CornerRow
        corners={corners.map((corner) => ({
          number: corner.number,
          name: corner.name,
          href: printAddress({ place: "corners", comboId, corner: corner.number }),
          label: sayCornerInRow(corner),
          unusedMs: corner.unused.known ? corner.unused.value.ms.mid : undefined,
          mistakesMs: corner.mistakes.ms,
          counts: corner.mistakes.counts,
          isJoined: layout.corners.find(({ number }) => number === corner.number)?.after === "none",
        }))}
        first={order[0]}
        choosing={isChoosing ? { numbers: chosen, onPress: press } : undefined}
      />
      <p className={styles["tonight"]}>
        <Button variant="quiet" aria-pressed={isChoosing} onClick={() => setChoosing(!isChoosing)}>
          {isChoosing ? "Done" : "Choose for tonight’s review"}
        </Button>
        <span className={styles["soft"]}>
          {chosen.length > 0
            ? `Tonight: ${sayCorners(chosen)}`
            : isChoosing && "Press the numbers of the corners to look at."}
        </span>
      </p>
    </Part>
  );
}
