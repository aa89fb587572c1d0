import type { ReactNode } from "react";
import { useEffect, useRef } from "react";
import type { FieldProblem } from "#domain";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { sayProblem } from "#ui/FieldFrame.tsx";
import { Name } from "#ui/Name.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import styles from "./Review.module.css";

/** One corner as it will be stored. */
export interface SummaryRow {
  readonly number: number;
  readonly name: string | undefined;
  /** What was seen, in words; undefined where nothing was. */
  readonly seen: string | undefined;
  /** The line cannot be read. */
  readonly isWrong: boolean;
  readonly kind: string;
}

interface ReviewSummaryProps {
  readonly rows: readonly SummaryRow[];
  readonly problem: FieldProblem | undefined;
  readonly isBusy: boolean;
  readonly onChange: (number: number) => void;
  readonly onStore: (press: { readonly timeStamp: number; readonly preventDefault: () => void }) => void;
  readonly removes: ReactNode;
  /** The driver came from a corner: the focus goes on to the button that stores. */
  readonly isReached: boolean;
}

/** All corners of the review, each of which may be changed once more; one press stores them. */
export function ReviewSummary(props: ReviewSummaryProps) {
  const { rows, problem, isBusy, onChange, onStore, removes, isReached } = props;
  const store = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (isReached) store.current?.focus();
  }, [isReached]);
  const hasKinds = rows.some(({ kind }) => kind !== "");
  return (
    <form noValidate aria-label="All corners of this review" className={styles["step"]} onSubmit={onStore}>
      <RuledTable
        caption="What the replay showed"
        columns={[
          { key: "corner", title: "corner" },
          { key: "seen", title: "seen" },
          ...(hasKinds ? [{ key: "kind", title: "kind" }] : []),
        ]}
        rows={rows.map(({ number, name, seen, isWrong, kind }) => ({
          id: String(number),
          soft: seen === undefined,
          cells: {
            corner: (
              <button
                type="button"
                aria-label={["Change corner", number, name].filter((part) => part !== undefined).join(" ")}
                className={styles["open"]}
                onClick={() => onChange(number)}
              >
                <span className={styles["link"]}>{number}</span>
                {name !== undefined && <Name>{name}</Name>}
              </button>
            ),
            seen: (
              <span className={styles["cell"]} data-wrong={isWrong || undefined}>
                <Name>{seen ?? "skipped"}</Name>
              </span>
            ),
            kind,
          },
        }))}
      />
      {problem !== undefined && (
        <p role="alert" className={styles["refused"]}>
          {sayProblem(problem)}
        </p>
      )}
      <ButtonRow
        removes={removes}
        main={
          <Button ref={store} type="submit" variant="primary" size="between" disabled={isBusy}>
            Store this review
          </Button>
        }
      />
    </form>
  );
}
