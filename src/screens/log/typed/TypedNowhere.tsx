import type { Id } from "#domain";
import { useDraftsFrom, useRows } from "#live";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import styles from "../LogScreen.module.css";

/** What was typed, by the first word of its draft's key. */
const places: Readonly<Record<string, string>> = {
  note: "a note on a session or a run",
  conditions: "the conditions of a session",
  dayTarget: "a target of the day",
  summary: "a run as a summary",
  target: "a target",
  rig: "rig settings",
  corners: "the corners of a layout",
  car: "what is known of a car",
  layout: "a layout",
  reference: "a reference lap",
  review: "a replay review",
};

/**
 * What was half typed about a row that is gone, so that no form shows it any more: its words stay to be copied until they
 * are let go. Lines and laps are offered by `TypedElsewhere`.
 * @param sessionId the session on the page, if one is
 */
export function TypedNowhere({ sessionId = "" }: { readonly sessionId: Id | undefined }) {
  // Looked at again when the session goes; its runs are not watched, for each lap would have them read again.
  const there = useRows(
    async ({ tables }) => (await tables.sessions.get(sessionId))?.deletedAt ?? null,
    [sessionId],
  );
  const { list, letGo } = useDraftsFrom("", [sessionId, there]);
  const all = list.flatMap((found) => {
    const [kind = "", ...rest] = found.of.split(" ");
    const id = rest.find((word) => /^[0-9a-f]{8}-[0-9a-f-]{27}$/.test(word));
    const isOffered = kind !== "entry" && kind !== "lap" && found.text.trim() !== "";
    return id !== undefined && isOffered ? [{ found, id, place: places[kind] ?? "a run" }] : [];
  });
  const ids = [...new Set(all.map(({ id }) => id))].sort();
  const about = ids.join(" ");
  const known = useRows(
    async ({ tables }) => {
      const [runs, ...others] = await Promise.all([
        tables.runs.bulkGet(ids),
        tables.sessions.bulkGet(ids),
        tables.targets.bulkGet(ids),
        tables.rigs.bulkGet(ids),
        tables.references.bulkGet(ids),
        tables.layouts.bulkGet(ids),
        tables.combos.bulkGet(ids),
        tables.cars.bulkGet(ids),
        tables.cornerReviews.bulkGet(ids),
      ]);
      const sessions = await tables.sessions.bulkGet(runs.map((run) => run?.sessionId ?? ""));
      const live = ids.filter((_, index) => {
        const run = runs[index];
        const isIn = (row: { readonly deletedAt?: number } | undefined) =>
          row !== undefined && row.deletedAt === undefined;
        return (isIn(run) && isIn(sessions[index])) || others.some((rows) => isIn(rows[index]));
      });
      return { about, live: new Set(live) };
    },
    [about],
  );
  // What was asked about other drafts says nothing of these.
  if (known?.about !== about) return null;
  const lost = all.filter(({ id }) => !known.live.has(id));
  return (
    lost.length > 0 && (
      <div className={styles["typed"]}>
        {lost.map(({ found, place }) => (
          <Notice
            key={found.key}
            tone="caution"
            actions={
              <Button size="between" onClick={() => void letGo(found)}>
                Let it go
              </Button>
            }
          >
            <p role="status">
              Half typed in {place}, which is not in this logbook any more. Copy what you want to keep:{" "}
              <strong>
                <Name>{found.text}</Name>
              </strong>
            </p>
          </Notice>
        ))}
      </div>
    )
  );
}
