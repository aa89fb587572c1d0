import { useEffect, useRef } from "react";
import { type Notice as NoticeRow, useNotices } from "#state/notices.ts";
import { Button } from "#ui/Button.tsx";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { Notice } from "#ui/Notice.tsx";
import { useHeight } from "#ui/useHeight.ts";
import styles from "./Notices.module.css";
import { useGoneOn } from "./useGoneOn.ts";
import { useNoticeFocus } from "./useNoticeFocus.ts";

/** "Done" notices go after this long, or when the driver goes on; what they offer stays on the undo list. */
const staysMs = 20_000;

/** What was said last, at the foot of the page, with what can be done about it. */
export function Notices() {
  const { list, close } = useNotices();
  const box = useHeight("--notices-height");
  const shown = useRef<HTMLDivElement>(null);
  useGoneOn(shown);
  useNoticeFocus(shown);
  const done = list.findLast(({ kind }) => kind === "done");
  useEffect(() => {
    if (done === undefined) return;
    // Never from under the keyboard: while it holds the focus it stays for as long again.
    const isHeld = () => shown.current?.contains(document.activeElement) === true;
    const clock = setInterval(() => isHeld() || close(done.id), staysMs);
    return () => clearInterval(clock);
  }, [done, close]);

  const answer = (notice: NoticeRow, run: () => void) => {
    close(notice.id);
    run();
  };
  return (
    <div ref={box} className={styles["notices"]}>
      <LiveRegion message={done?.text ?? ""} />
      <LiveRegion message={list.findLast(({ kind }) => kind === "fault")?.text ?? ""} urgent />
      <div ref={shown} className={styles["list"]}>
        {list.map((notice) => (
          <div key={notice.id} className={styles["notice"]}>
            <Notice
              tone={notice.kind === "fault" ? "caution" : "plain"}
              actions={
                <>
                  <Button variant="quiet" size="between" onClick={() => close(notice.id)}>
                    Close
                  </Button>
                  {notice.actions.map((action) => (
                    <Button key={action.name} size="between" onClick={() => answer(notice, action.run)}>
                      {action.name}
                    </Button>
                  ))}
                </>
              }
            >
              <p>{notice.text}</p>
            </Notice>
          </div>
        ))}
      </div>
    </div>
  );
}
