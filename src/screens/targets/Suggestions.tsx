import { type CalendarDate, formatLapTime, type TimeKind } from "#domain";
import { useFigures } from "#live";
import { Button } from "#ui/Button.tsx";
import { sayNoForecast, suggestionParts } from "#words";
import styles from "./Suggestions.module.css";
import type { TypedTarget } from "./typedTarget.ts";

/** So short a part is not broken over two lines. */
const shortPart = 20;

interface SuggestionsProps {
  readonly typed: Pick<TypedTarget, "comboId" | "value"> & {
    readonly kind: TimeKind;
    readonly laps: number | undefined;
    readonly by: CalendarDate;
  };
  readonly set: (patch: Partial<TypedTarget>) => void;
  readonly today: CalendarDate;
}

/** One line with a fair target and a stretch by the date chosen; pressing one puts it into the field. */
export function Suggestions({ typed: { comboId, kind, laps, by, value }, set, today }: SuggestionsProps) {
  const { value: suggested } = useFigures("suggestedTargets", { comboId, kind, laps, by, today });
  if (suggested === undefined) return <p className={styles["line"]}>Working out a fair target</p>;
  if (!suggested.known) return <p className={styles["line"]}>{sayNoForecast(suggested.reason)}</p>;
  return (
    <p className={styles["line"]}>
      {suggestionParts(suggested.value, { kind, laps }).map((part) => {
        if (typeof part === "string")
          return (
            <span key={part} className={part.length < shortPart ? styles["short"] : undefined}>
              {part}{" "}
            </span>
          );
        const [short, whole] = [formatLapTime(part.ms, 2), formatLapTime(part.ms)];
        return (
          <span key={short}>
            <Button
              aria-label={`Take ${short}`}
              aria-pressed={value === whole}
              className={styles["time"]}
              onClick={() => set({ value: whole })}
            >
              {short}
            </Button>{" "}
          </span>
        );
      })}
    </p>
  );
}
