import type { Id, Preferences } from "#domain";
import { useFigures, useToday } from "#live";
import { printAddress } from "#state/address.ts";
import { cornersInShort } from "#words";
import styles from "./Lately.module.css";

interface CornerNextProps {
  readonly comboId: Id;
  readonly preferences: Preferences;
}

/** The corner to work on first, where one is known; a press opens it. */
export function CornerNext({ comboId, preferences }: CornerNextProps) {
  const today = useToday(preferences);
  const report = useFigures("corners", { comboId, today }).value;
  const corner = report?.order[0];
  if (!report || corner === undefined) return null;
  return (
    <div>
      <p className={styles["soft"]}>Corner to work on</p>
      <p>
        <a href={printAddress({ place: "corners", comboId, corner })}>{cornersInShort(report)}</a>
      </p>
    </div>
  );
}
