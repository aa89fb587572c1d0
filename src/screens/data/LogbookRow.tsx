import { useId, useRef, useState } from "react";
import { renameLogbook, type ShelvedLogbook } from "#db";
import { notedOn, sayDate } from "#domain";
import { useLogbook, useShelfWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import styles from "./LogbooksPart.module.css";
import { RemoveDialog } from "./RemoveDialog.tsx";
import { TitleForm } from "./TitleForm.tsx";

/** One logbook of the shelf, with what can be done with it. */
export function LogbookRow(props: { readonly logbook: ShelvedLogbook; readonly isOpen: boolean }) {
  const { logbook, isOpen } = props;
  const { surroundings, openOther } = useLogbook();
  const shelfWrite = useShelfWrite();
  const [act, setAct] = useState<"rename" | "remove">();
  const isBack = useRef(false);
  const id = useId();
  const leaveRename = () => {
    isBack.current = true;
    setAct(undefined);
  };
  const focusWhenBack = (button: HTMLButtonElement | null) => {
    if (button === null || !isBack.current) return;
    isBack.current = false;
    button.focus();
  };
  const on = notedOn(logbook.lastOpened, surroundings.clock(), surroundings.zone());
  const opened = on === "ahead" ? "while the clock stood ahead" : sayDate(on);
  const about = [
    logbook.kind === "demo" && "demo",
    isOpen ? "open now" : logbook.openedOn.length === 0 ? "never opened" : `last opened ${opened}`,
  ];
  const button = (words: string, run: () => void, ref?: typeof focusWhenBack) => (
    <Button ref={ref} size="between" onClick={run} aria-describedby={id}>
      {words}
    </Button>
  );
  if (act === "rename")
    return (
      <li className={styles["logbook"]}>
        <div className={styles["whole"]}>
          <TitleForm
            label="New name of the logbook"
            button="Rename"
            start={logbook.title}
            onTitle={async (title) => {
              const isDone = await shelfWrite((shelf) => renameLogbook(shelf, logbook.name, title));
              if (isDone) leaveRename();
              return isDone;
            }}
            onCancel={leaveRename}
          />
        </div>
      </li>
    );
  return (
    <li className={styles["logbook"]}>
      <div>
        <div id={id} className={styles["title"]}>
          <Name>{logbook.title}</Name>
        </div>
        <div className={styles["about"]}>{about.filter(Boolean).join(" · ")}</div>
      </div>
      <div className={styles["buttons"]}>
        {!isOpen && button("Open", () => openOther(logbook.name))}
        {button("Rename", () => setAct("rename"), focusWhenBack)}
        {logbook.kind === "own" && button("Remove", () => setAct("remove"))}
      </div>
      {act === "remove" && <RemoveDialog logbook={logbook} onClose={() => setAct(undefined)} />}
    </li>
  );
}
