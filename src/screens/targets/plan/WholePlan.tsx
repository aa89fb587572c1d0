import { useRef, useState } from "react";
import { type PlannedRun, placeOfLine } from "#domain";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Part } from "#ui/Part.tsx";
import { useFocusBack } from "#ui/useFocusBack.ts";
import { sayPlanSize } from "#words";
import { LineForm } from "./LineForm.tsx";
import { Minutes } from "./Minutes.tsx";
import styles from "./Plan.module.css";
import { PlanButtons } from "./PlanButtons.tsx";
import { PlanLine } from "./PlanLine.tsx";
import type { PlanContext } from "./planContext.ts";
import { useFocusInLines } from "./useFocusInLines.ts";
import { useLineForm } from "./useLineForm.ts";

interface WholePlanProps {
  readonly context: PlanContext;
  /** Index of the line that is the one suggestion. */
  readonly first: number;
}

/** The whole session, run by run, and all that can be done with it. */
export function WholePlan({ context, first }: WholePlanProps) {
  const { plan, facts } = context;
  const { lines, minutes } = plan;
  const editing = useLineForm(plan.comboId);
  const list = useRef<HTMLOListElement>(null);
  const [opener, setOpener] = useState<PlannedRun>();
  const { onMoved, onGone } = useFocusInLines(list, lines);
  const { typed } = editing;
  const at = typed?.seen ? placeOfLine(lines, typed.seen) : -1;
  const form = typed !== null && <LineForm context={context} editing={editing} typed={typed} />;
  useFocusBack(typed ?? undefined, () => {
    const place = opener === undefined ? -1 : placeOfLine(lines, opener);
    const rows = list.current?.children ?? [];
    const row = rows[place >= 0 ? place : rows.length - 1];
    return row?.querySelector<HTMLElement>("button");
  });
  return (
    <Part
      title="The whole session"
      aside={sayPlanSize(lines, { lapMs: facts.evening?.lapMs, minutes })}
      ruled
    >
      <Minutes context={context} />
      <HalfTyped of={editing.kept} />
      <ol ref={list} className={styles["lines"]}>
        {lines.map((line, index) => (
          <li key={line.id} data-line={line.id} className={styles["line"]}>
            {index === at ? (
              form
            ) : (
              <PlanLine
                context={context}
                line={line}
                index={index}
                isFirst={index === first}
                onEdit={(start) => {
                  setOpener(line);
                  editing.open(start);
                }}
                onMoved={onMoved}
                onGone={onGone}
              />
            )}
          </li>
        ))}
      </ol>
      {at < 0 && form}
      <PlanButtons
        context={context}
        onAdd={(start) => {
          setOpener(undefined);
          editing.open(start);
        }}
      />
    </Part>
  );
}
