import { RecordPicture } from "#charts/record/RecordPicture.tsx";
import { preferences } from "#db";
import type { Preferences } from "#domain";
import { useCombos, useFigures, useRows, useToday } from "#live";
import { printAddress } from "#state/address.ts";
import { Columns } from "#ui/Columns.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { recordMeaning, sayForecastRecord, sayRecord } from "#words";
import { RecordedTargets } from "./RecordedTargets.tsx";
import styles from "./RecordPage.module.css";

/** How the app's own forecasts have turned out, also where that is not to its credit. */
export function RecordPage() {
  const chosen = useRows(preferences, []);
  return chosen === undefined ? <p>Opening the record</p> : <Record preferences={chosen} />;
}

function Record({ preferences: chosen }: { readonly preferences: Preferences }) {
  const today = useToday(chosen);
  const { value: own, isRenewing } = useFigures("ownRecord", { today });
  const combos = useCombos();
  return (
    <div className={styles["page"]}>
      <p className={styles["back"]}>
        <a href={printAddress({ place: "targets" })}>Back to Targets</a>
      </p>
      <h1>What became of the chances</h1>
      {own === undefined || combos === undefined ? (
        <p>Reading what was said</p>
      ) : own.targets.length === 0 ? (
        <p className={styles["finding"]}>
          No chance has been kept yet. One is kept of each target with a date after every session, from the
          day after the target was set, and judged once its date has passed.
        </p>
      ) : (
        <div aria-busy={isRenewing}>
          <Columns>
            <div className={styles["part"]}>
              {own.record !== undefined && (
                <>
                  <RecordPicture fifths={own.record.fifths} />
                  <p className={styles["soft"]}>
                    The ring is the chance that was told, the dot how many came true: the nearer, the better.
                  </p>
                </>
              )}
              <p className={styles["finding"]}>{sayRecord(own.against)}</p>
              <p>{sayForecastRecord(own.record, own.against)}</p>
              <Disclosure title="How this is judged">
                <p>{recordMeaning}</p>
              </Disclosure>
            </div>
            <RecordedTargets targets={own.targets} combos={combos} />
          </Columns>
        </div>
      )}
    </div>
  );
}
