import { type ReactNode, useCallback, useEffect, useMemo, useRef, useState } from "react";
import { LedgerFault } from "#db";
import { useDevice } from "#state/device.ts";
import { useUndo } from "#state/undo.ts";
import type { Ask } from "./ask.ts";
import type { SendOut } from "./errands/sending.ts";
import { LogbookContext } from "./logbookContext.ts";
import { type Opened, openAtStart, type Surroundings } from "./openAtStart.ts";

/** What was to be opened when it failed, and the way to try that one or another. */
export interface Asked {
  /** Name of its database; undefined when it was the one this device opened last. */
  readonly name: string | undefined;
  readonly open: (name?: string) => void;
}

interface LogbookProviderProps {
  /** Begun as early as possible, before the page is drawn. */
  readonly opening: Promise<Opened>;
  readonly surroundings: Surroundings;
  readonly ask: Ask;
  readonly sendOut: SendOut;
  /** Shown until the logbook is open. */
  readonly waiting: ReactNode;
  /** Shown when it could not be opened. */
  readonly sayFault: (fault: LedgerFault, asked: Asked) => ReactNode;
  readonly children: ReactNode;
}

/** Opens a logbook, remembers it on this device, and hands it to everything inside. */
export function LogbookProvider(props: LogbookProviderProps) {
  const { opening, surroundings, ask, sendOut, waiting, sayFault, children } = props;
  const [pending, setPending] = useState(opening);
  const [opened, setOpened] = useState<Opened>();
  const [fault, setFault] = useState<LedgerFault>();
  const [asked, setAsked] = useState<string>();

  useEffect(() => {
    let isLeft = false;
    pending.then(
      (next) => {
        if (isLeft) return;
        useDevice.getState().change({ logbook: next.entry.name });
        useUndo.getState().forget();
        setOpened(next);
      },
      (error: unknown) => {
        if (!isLeft)
          setFault(error instanceof LedgerFault ? error : new LedgerFault("failed", String(error), error));
      },
    );
    return () => {
      isLeft = true;
    };
  }, [pending]);

  // Whoever kept an older `open`, such as a notice, still closes the logbook that is open now.
  const last = useRef(opened);
  last.current = opened;
  const open = useCallback(
    (name?: string) => {
      last.current?.book.close();
      last.current?.shelf.close();
      setOpened(undefined);
      setFault(undefined);
      setAsked(name);
      setPending(openAtStart(surroundings, useDevice.getState(), name === undefined ? {} : { name }));
    },
    [surroundings],
  );

  const value = useMemo(
    () => opened && { ...opened, surroundings, ask, sendOut, openOther: open },
    [opened, surroundings, ask, sendOut, open],
  );
  if (fault) return sayFault(fault, { name: asked, open });
  if (value === undefined) return waiting;
  return <LogbookContext value={value}>{children}</LogbookContext>;
}
