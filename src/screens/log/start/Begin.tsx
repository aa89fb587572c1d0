import { combosWithNames, recentSessions } from "#db";
import { comboName, practiceDay, sayDate } from "#domain";
import { useLogbook, useRows, useSessionsInDoubt, useUntil } from "#live";
import { printAddress } from "#state/address.ts";
import { Columns } from "#ui/Columns.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { SessionsInDoubt } from "#ui/SessionsInDoubt.tsx";
import styles from "../LogScreen.module.css";
import { Lately } from "./Lately.tsx";
import { StartForm } from "./StartForm.tsx";

const shown = 8;

/** No session is open: the combos driven last, the form for any other, and the last sessions. */
export function Begin() {
  return (
    <div className={styles["begin"]}>
      <h1 tabIndex={-1}>Start a session</h1>
      <Columns>
        <Lately />
        <OrOther />
      </Columns>
    </div>
  );
}

function OrOther() {
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
  return (
    <>
      <Part title="Another combo, or other details">
        <StartForm />
      </Part>
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
                combo: <Name>{name}</Name>,
                focus: session.focus,
              },
            }))}
          />
        </Part>
      )}
    </>
  );
}
