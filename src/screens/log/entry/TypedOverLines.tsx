import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import styles from "./TypedOverLines.module.css";
import type { Entry } from "./useEntry.ts";

/** Lines that were not stored and then typed over: a press puts one back into the field, another lets it go. */
export function TypedOverLines({ entry, onBack }: { readonly entry: Entry; readonly onBack?: () => void }) {
  if (entry.typedOver.length === 0) return null;
  return (
    <div className={styles["lines"]} data-a-row>
      <p>Not stored</p>
      <ul>
        {entry.typedOver.map((line, place) => (
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
  );
}
