import { type Bend, bends, type Straight, straights } from "#domain";
import { Choice } from "#ui/Choice.tsx";
import { straightWords } from "#words";
import styles from "./Review.module.css";
import type { SaidKind } from "./reviewDraft.ts";

interface CornerKindProps {
  /** What the layout does not know yet. */
  readonly asks: { readonly bend: boolean; readonly after: boolean };
  readonly kind: SaidKind;
  readonly onKind: (kind: SaidKind) => void;
}

const notKnown = { value: "", label: "not known" } as const;
const kinds = [notKnown, ...bends.map((bend) => ({ value: bend, label: bend }))];
const followers = [notKnown, ...straights.map((after) => ({ value: after, label: straightWords[after] }))];

/** Two rows of choices about a corner that is little known: enough to reckon with, and each may be left alone. */
export function CornerKind({ asks, kind, onKind }: CornerKindProps) {
  return (
    <div className={styles["kinds"]}>
      {asks.bend && (
        <Choice<Bend | "">
          label="Kind of bend"
          size="between"
          options={kinds}
          value={kind.bend ?? ""}
          onChange={(bend) => onKind({ ...kind, bend: bend || undefined })}
        />
      )}
      {asks.after && (
        <Choice<Straight | "">
          label="After it"
          size="between"
          options={followers}
          value={kind.after ?? ""}
          onChange={(after) => onKind({ ...kind, after: after || undefined })}
        />
      )}
    </div>
  );
}
