import { daysBetween } from "#domain";
import { usePlan, useToday } from "#live";
import { printAddress } from "#state/address.ts";
import { suggestionIn } from "#stats";
import { Name } from "#ui/Name.tsx";
import { nextOfLine } from "#words";
import type { SessionData } from "../session/useSession.ts";
import { linesToCome } from "./linesToCome.ts";
import styles from "./NextTime.module.css";

/** What to do next time, as the plan of the combo says; nothing in a session that another evening has followed. */
export function NextTime({ data: { session, preferences, layout } }: { readonly data: SessionData }) {
  const today = useToday(preferences);
  const next = usePlan(session.comboId, today);
  const daysSince = next?.found?.facts.daysSince;
  if (next === undefined || daysSince === undefined) return null;
  if (daysBetween(session.date, today) > daysSince) return null;
  const lines = linesToCome(next, layout);
  const line = lines[suggestionIn(lines)];
  if (line === undefined) return null;
  return (
    <p className={styles["next"]}>
      <strong>Next time:</strong> <Name>{nextOfLine(line).suggestion}</Name>{" "}
      {line.reason !== undefined && <span className={styles["reason"]}>{line.reason} </span>}
      <a href={printAddress({ place: "targets", comboId: session.comboId, part: "plan" })}>The whole plan</a>
    </p>
  );
}
