import { useEffect } from "react";
import { type Notice as NoticeRow, useNotices } from "#state/notices.ts";
import { Button } from "#ui/Button.tsx";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { Notice } from "#ui/Notice.tsx";
import { useHeight } from "#ui/useHeight.ts";
import styles from "./Notices.module.css";

/** "Done" notices go after this long, or at the next act; what they offer stays on the undo list. */
const staysMs = 20_000;

/** What was said last, at the foot of the page, with what can be done about it. */
export function Notices() {
  const { list, close } = useNotices();
  const box = useHeight("--notices-height");
  const done = list.findLast(({ kind }) => kind === "done");
  useEffect(() => {
    if (done === undefined) return;
    const clock = setTimeout(() => close(done.id), staysMs);
    return () => clearTimeout(clock);
  }, [done, close]);

  const answer = (notice: NoticeRow, run: () => void) => {
    close(notice.id);
    run();
  };
  return (
    <div ref={box} className={styles["notices"]}>
      <LiveRegion message={done?.text ?? ""} />
      <LiveRegion message={list.findLast(({ kind }) => kind === "fault")?.text ?? ""} urgent />
      {list.map((notice) => (
        <div key={notice.id} className={styles["notice"]}>
          <Notice
            tone={notice.kind === "fault" ? "caution" : "plain"}
            actions={
              <>
                {notice.actions.map((action) => (
                  <Button key={action.name} size="between" onClick={() => answer(notice, action.run)}>
                    {action.name}
                  </Button>
                ))}
                <Button variant="quiet" size="between" onClick={() => close(notice.id)}>
                  Close
                </Button>
              </>
            }
          >
            <p>{notice.text}</p>
          </Notice>
        </div>
      ))}
    </div>
  );
}
