import type { Preferences } from "#domain";
import { type DrivenCombo, useFigures, useToday } from "#live";
import type { CornersAddress } from "#state/address.ts";
import { AnswerPage } from "./answer/AnswerPage.tsx";
import styles from "./Corners.module.css";
import { CornerPage } from "./corner/CornerPage.tsx";
import { LayoutPage } from "./layout/LayoutPage.tsx";
import { ReviewPage } from "./review/ReviewPage.tsx";

interface ComboCornersProps {
  readonly combo: DrivenCombo;
  readonly address: CornersAddress;
  readonly preferences: Preferences;
}

/** The corners of one combo: the answer, one corner, the table of the layout, or a replay review. */
export function ComboCorners({ combo, address, preferences }: ComboCornersProps) {
  const { id: comboId, layout } = combo;
  const today = useToday(preferences);
  const { corner, part } = address;
  // The table shows none of it, and stores a row at a time.
  const { value: report, isRenewing } = useFigures("corners", { comboId, today }, part === "layout");
  if (part === "layout") return <LayoutPage combo={combo} />;
  if (!report) return <p>Working out the corners</p>;
  if (part === "review")
    return <ReviewPage combo={combo} today={today} order={report.order} reviewId={address.reviewId} />;
  return (
    <div className={styles["screen"]} aria-busy={isRenewing}>
      {corner === undefined ? (
        <AnswerPage comboId={comboId} layout={layout} report={report} today={today} />
      ) : (
        <CornerPage
          comboId={comboId}
          comboName={combo.name}
          layout={layout}
          report={report}
          number={corner}
          today={today}
        />
      )}
    </div>
  );
}
