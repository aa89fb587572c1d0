import { preferences } from "#db";
import type { PlannedRun, Preferences } from "#domain";
import { useRows, useWrite } from "#live";
import { sayLapTime, sayUsual } from "#words";
import { DateDoubt } from "./DateDoubt.tsx";
import { LastCombo } from "./LastCombo.tsx";
import styles from "./Lately.module.css";
import { LatelyComing } from "./LatelyComing.tsx";
import { type LateCombo, useLately } from "./useLately.ts";
import { useStarting } from "./useStarting.ts";

/** The combos driven last, each one press away: the last one large, up to four more as a line each. */
export function Lately() {
  const lately = useLately();
  const chosen = useRows(preferences, []);
  return lately && chosen ? <Known lately={lately} preferences={chosen} /> : <LatelyComing />;
}

interface KnownProps {
  readonly lately: readonly LateCombo[];
  readonly preferences: Preferences;
}

function Known({ lately: [last, ...others], preferences: chosen }: KnownProps) {
  const write = useWrite();
  const starting = useStarting(chosen);
  if (last === undefined) return null;
  const start = async ({ named, last: { focus } }: LateCombo, plan?: readonly PlannedRun[]) => {
    if (!starting.isAgreed(undefined)) return;
    const stored = await write((book) => starting.write(book, { on: { comboId: named.id }, focus, plan }), {
      onTakenBack: starting.onTakenBack,
    });
    if (stored) starting.onStored(stored);
  };
  const question = starting.question(undefined);
  return (
    <div className={styles["lately"]}>
      <LastCombo late={last} preferences={chosen} onStart={(plan) => void start(last, plan)} />
      <DateDoubt question={question} />
      {others.length > 0 && <Lines lates={others} onStart={(late) => void start(late)} />}
    </div>
  );
}

interface LinesProps {
  readonly lates: readonly LateCombo[];
  readonly onStart: (late: LateCombo) => void;
}

/** A combo a line; a press starts a session with it. */
function Lines({ lates, onStart }: LinesProps) {
  return (
    <div className={styles["lines"]}>
      <div className={styles["head"]} aria-hidden="true">
        <span>or with</span>
        <span className={styles["figure"]}>PB</span>
        <span className={styles["figure"]}>usual</span>
      </div>
      <ul className={styles["list"]} aria-label="Start with another combo">
        {lates.map((late) => {
          const { best, usual } = late.figures ?? {};
          const said = [
            late.named.name,
            best && `PB ${sayLapTime(best.ms, best.decimals)}`,
            usual && `usual lap ${sayUsual(usual.ms, usual.decimals)}`,
          ];
          return (
            <li key={late.named.id} className={styles["item"]}>
              <button
                type="button"
                className={styles["line"]}
                aria-label={said.filter(Boolean).join(", ")}
                onClick={() => onStart(late)}
              >
                <bdi className={styles["name"]}>{late.named.name}</bdi>
                <span className={styles["figure"]}>{best ? sayLapTime(best.ms, best.decimals) : "—"}</span>
                <span className={styles["figure"]}>{usual ? sayUsual(usual.ms, usual.decimals) : "—"}</span>
              </button>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
