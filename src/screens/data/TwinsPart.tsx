import { joinCars, joinCombos, joinLayouts, joinTracks, type Twins, twins } from "#db";
import { useRows, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import styles from "./LogbooksPart.module.css";

const join = { car: joinCars, track: joinTracks, layout: joinLayouts, combo: joinCombos } as const;

/**
 * Cars, tracks and combos that stand twice, as they do once two devices have made the same; and those whose names differ
 * in accents only, as a question. Shown only where there are some.
 */
export function TwinsPart() {
  const found = useRows(twins, []) ?? [];
  const write = useWrite();
  const sure = found.filter(({ isSure }) => isSure);
  const likely = found.filter(({ isSure }) => !isSure);
  const joined = ({ kind, keepId, dropId }: Twins) =>
    void write((book) => join[kind](book, { keepId, dropId }), { isUndoOffered: true });
  return (
    <>
      {sure.length > 0 && (
        <Part title="The same twice" ruled>
          <p>
            Two devices that have not met make the same car or track each for themselves. Join them, so that
            their laps compare.
          </p>
          <ul className={styles["list"]}>
            {sure.map((pair) => (
              <li key={`${pair.keepId} ${pair.dropId}`} className={styles["logbook"]}>
                <div id={`twin-${pair.dropId}`} className={styles["title"]}>
                  {pair.kind} <Name>{pair.name}</Name>
                </div>
                <div className={styles["buttons"]}>
                  <Button
                    size="between"
                    aria-describedby={`twin-${pair.dropId}`}
                    onClick={() => joined(pair)}
                  >
                    Make it one
                  </Button>
                </div>
              </li>
            ))}
          </ul>
        </Part>
      )}
      {likely.length > 0 && (
        <Part title="Perhaps the same" ruled>
          <p>
            These names differ in accents only. Join two that are one; leave two that are not as they are.
          </p>
          <ul className={styles["list"]}>
            {likely.map((pair) => (
              <li key={`${pair.keepId} ${pair.dropId}`} className={styles["logbook"]}>
                <div id={`twin-${pair.dropId}`} className={styles["title"]}>
                  Is the {pair.kind} <Name>{pair.otherName}</Name> your <Name>{pair.name}</Name>?
                </div>
                <div className={styles["buttons"]}>
                  <Button
                    size="between"
                    aria-describedby={`twin-${pair.dropId}`}
                    onClick={() => joined(pair)}
                  >
                    It is: make it one
                  </Button>
                </div>
              </li>
            ))}
          </ul>
        </Part>
      )}
    </>
  );
}
