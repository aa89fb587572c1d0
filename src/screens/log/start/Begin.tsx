import { combosWithNames, recentSessions } from "#db";
import { comboName, practiceDay, sayDate } from "#domain";
import { useLogbook, useRows, useSessionsInDoubt, useShelvedNow, useUntil } from "#live";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Part } from "#ui/Part.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { SessionsInDoubt } from "#ui/SessionsInDoubt.tsx";
import styles from "../LogScreen.module.css";
import { StartForm } from "./StartForm.tsx";

const shown = 8;
const remindAfter = 60;

/** No session is open: the way to start one, the note from last time, and the last sessions. */
export function Begin() {
  const shelved = useShelvedNow();
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
  const last = rows?.[0];
  return (
    <div className={styles["begin"]}>
      <div className={styles["start"]}>
        <h1 tabIndex={-1}>Start a session</h1>
        <StartForm />
        {shelved.kind === "own" && shelved.lapsSinceBackup >= remindAfter && (
          <Notice>
            <p>
              {shelved.lapsSinceBackup} laps since the last backup. This browser can clear what it stores;{" "}
              <a href={printAddress({ place: "data" })}>save a backup</a> when it suits you.
            </p>
          </Notice>
        )}
      </div>
      <div className={styles["before"]}>
        {last && last.session.note.trim() !== "" && (
          <Part title="Your note from last time">
            <blockquote className={styles["note"]}>
              <Name>{last.session.note}</Name>
            </blockquote>
            <p className={styles["soft"]}>
              {sayDate(last.session.date)}, <Name>{last.name}</Name>
            </p>
          </Part>
        )}
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
      </div>
    </div>
  );
}
