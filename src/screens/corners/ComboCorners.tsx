import type { Preferences } from "#domain";
import { type DrivenCombo, useFigures, useToday } from "#live";
import { type CornersAddress, printAddress } from "#state/address.ts";
import { AnswerPage } from "./answer/AnswerPage.tsx";
import styles from "./Corners.module.css";
import { CornerPage } from "./corner/CornerPage.tsx";

interface ComboCornersProps {
  readonly combo: DrivenCombo;
  readonly address: CornersAddress;
  readonly preferences: Preferences;
}

/** The corners of one combo: the answer, one corner, the table of the layout, or a replay review. */
export function ComboCorners({ combo, address, preferences }: ComboCornersProps) {
  const { id: comboId, layout } = combo;
  const today = useToday(preferences);
  const { value: report, isRenewing } = useFigures("corners", { comboId, today });
  const { corner, part } = address;
  if (!report) return <p>Working out the corners</p>;
  return (
    <div className={styles["screen"]} aria-busy={isRenewing}>
      {corner !== undefined && part === undefined ? (
        <CornerPage
          comboId={comboId}
          comboName={combo.name}
          layout={layout}
          report={report}
          number={corner}
          today={today}
        />
      ) : (
        <AnswerPage comboId={comboId} layout={layout} report={report} today={today} />
      )}
      <p className={styles["ways"]}>
        <a className={styles["combo"]} href={printAddress({ place: "corners", comboId, part: "layout" })}>
          What is known of the layout
        </a>
      </p>
    </div>
  );
}
