import { Suspense, useState } from "react";
import { comboName } from "#domain";
import { Button } from "#ui/Button.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { Name } from "#ui/Name.tsx";
import styles from "./SessionHead.module.css";
import type { SessionData } from "./useSession.ts";

const SessionDialog = laterPart(() => import("./SessionDialog.tsx").then((file) => file.SessionDialog));

interface SessionHeadProps {
  readonly data: SessionData;
  readonly onBigView: () => void;
}

/** Which combo this is a session of, the big view, and the way to put the session right. */
export function SessionHead({ data, onBigView }: SessionHeadProps) {
  const { session } = data;
  const [isChanging, setChanging] = useState(false);
  return (
    <div className={styles["head"]}>
      <h1 className={styles["title"]} tabIndex={-1}>
        <Name>{comboName(data)}</Name>
      </h1>
      <div className={styles["buttons"]}>
        {session.endedAt === undefined && (
          <Button size="between" variant="quiet" onClick={onBigView}>
            Big view
          </Button>
        )}
        <Button size="between" variant="quiet" onClick={() => setChanging(true)}>
          Session
        </Button>
      </div>
      {isChanging && (
        <Suspense fallback={null}>
          <SessionDialog data={data} onClose={() => setChanging(false)} />
        </Suspense>
      )}
    </div>
  );
}
