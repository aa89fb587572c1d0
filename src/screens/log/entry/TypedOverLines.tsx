import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { useOverflow } from "#ui/useOverflow.ts";
import styles from "./TypedOverLines.module.css";
import type { Entry } from "./useEntry.ts";

/** Lines that were not stored and then typed over: a press puts one back into the field, another lets it go. */
export function TypedOverLines(props: LinesProps) {
  return props.entry.typedOver.length === 0 ? null : <Lines {...props} />;
}

interface LinesProps {
  readonly entry: Entry;
  readonly onBack?: () => void;
}

function Lines({ entry, onBack }: LinesProps) {
  const { typedOver } = entry;
  const { box } = useOverflow();
  return (
    <div className={styles["lines"]} data-a-row>
      <p>{typedOver.length === 1 ? "Not stored" : `${typedOver.length} not stored`}</p>
      <div ref={box} className={styles["row"]}>
        <ul>
          {typedOver.map((line, place) => (
            <li key={`${place} ${line.text}`}>
              <Button
                size="between"
                aria-label={`Put ${line.text} back into the field`}
                onClick={() => {
                  entry.takeBackTypedOver(line);
                  onBack?.();
                }}
              >
                <Name>{line.text}</Name>
              </Button>
              <Button
                size="between"
                className={styles["away"]}
                aria-label={`Let ${line.text} go`}
                onClick={() => {
                  entry.letGoTypedOver(line);
                  onBack?.();
                }}
              >
                ×
              </Button>
            </li>
          ))}
        </ul>
      </div>
    </div>
  );
}
