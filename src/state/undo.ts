import { create } from "zustand";

/** A deed that can be taken back, in words ("Lap 4 deleted"). Taking it back gives the way to do it again. */
export interface Deed {
  readonly what: string;
  readonly takeBack: () => Promise<Deed | undefined>;
}

interface UndoList {
  readonly done: readonly Deed[];
  readonly undone: readonly Deed[];
  readonly push: (deed: Deed) => void;
  /** A write that has begun and pushes its deed before it ends: what is undone meanwhile is this one, not the one before. */
  readonly follow: (write: Promise<unknown>) => void;
  /** Takes back the last deed, or the one given, once all that was begun before has ended. */
  readonly undo: (deed?: Deed) => Promise<void>;
  readonly redo: () => Promise<void>;
  readonly forget: () => void;
}

const depth = 50;

/** All that has begun; the page may show what a write did before the write says that it has ended. */
let begun: Promise<unknown> = Promise.resolve();

function inTurn(work: () => Promise<void>): Promise<void> {
  const mine = begun.then(work);
  begun = Promise.allSettled([mine]);
  return mine;
}

/** What the driver did since the page was opened, newest last. In memory only. */
export const useUndo = create<UndoList>((set, get) => ({
  done: [],
  undone: [],
  push: (deed) => set(({ done }) => ({ done: [...done.slice(1 - depth), deed], undone: [] })),
  follow: (write) => {
    begun = Promise.allSettled([begun, write]);
  },
  undo: (wanted) =>
    inTurn(async () => {
      const deed = wanted ?? get().done.at(-1);
      if (deed === undefined || !get().done.includes(deed)) return;
      set(({ done }) => ({ done: done.filter((other) => other !== deed) }));
      const again = await deed.takeBack();
      if (again !== undefined) set(({ undone }) => ({ undone: [...undone, again] }));
    }),
  redo: () =>
    inTurn(async () => {
      const next = get().undone.at(-1);
      if (next === undefined) return;
      set(({ undone }) => ({ undone: undone.slice(0, -1) }));
      const back = await next.takeBack();
      if (back !== undefined) set(({ done }) => ({ done: [...done, back] }));
    }),
  forget: () => set({ done: [], undone: [] }),
}));
