import { SessionStrip } from "#charts/strip/SessionStrip.tsx";
import { combosWithNames, recentSessions } from "#db";
import { comboName, practiceDay, sayDate } from "#domain";
import { useLogbook, useRows, useRunsOf, useSessionsInDoubt, useUntil } from "#live";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { SessionsInDoubt } from "#ui/SessionsInDoubt.tsx";
import styles from "../LogScreen.module.css";

const shown = 8;

/** The sessions that began last, newest first, and above them those dated after today, which are asked about. */
export function LastSessions() {
  const { clock, zone } = useLogbook().surroundings;
  const until = useUntil();
  const today = practiceDay(clock(), zone(), 0);
  const ahead = useSessionsInDoubt(today);
  const rows = useRows(
    async (book) => {
      const [sessions, combos] = await Promise.all([
        recentSessions(book, shown, until),
        combosWithNames(book),
      ]);
      const nameOf = new Map(combos.map((one) => [one.combo.id, comboName(one)]));
      return sessions.map((session) => ({
        session,
        name: nameOf.get(session.comboId) ?? "a combo that is gone",
      }));
    },
    [until],
  );
  const runs = useRunsOf(rows?.map(({ session }) => session.id) ?? []);
  return (
    <>
      <SessionsInDoubt sessions={ahead} today={today} />
      {rows && rows.length > 0 && (
        <Part title="Last sessions">
          <RuledTable
            caption="Last sessions"
            captionHidden
            columns={[
              { key: "date", title: "date" },
              { key: "combo", title: "combo" },
              { key: "focus", title: "focus" },
            ]}
            rows={rows.map(({ session, name }) => ({
              id: session.id,
              cells: {
                date: (
                  <a className={styles["way"]} href={printAddress({ place: "log", sessionId: session.id })}>
                    {sayDate(session.date)}
                  </a>
                ),
                combo: (
                  <div className={styles["driven"]}>
                    <Name>{name}</Name>
                    <span className={styles["strip"]}>
                      <SessionStrip runs={runs?.get(session.id)} name={sayDate(session.date)} />
                    </span>
                  </div>
                ),
                focus: session.focus,
              },
            }))}
          />
        </Part>
      )}
    </>
  );
}
