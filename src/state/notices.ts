import { create } from "zustand";

/** Something said once at the foot of the page. */
export interface Notice {
  readonly id: number;
  /** "done" is said politely; "fault" at once, and it stays until it is answered or closed. */
  readonly kind: "done" | "fault";
  readonly text: string;
  /** What it is about, where only the newest word counts: it takes the place of an older one. */
  readonly about?: "clock";
  readonly actions: readonly { readonly name: string; readonly run: () => void }[];
}

interface Notices {
  readonly list: readonly Notice[];
  readonly say: (notice: Omit<Notice, "id">) => number;
  readonly close: (id: number) => void;
  /** The driver went on to the next act: what was done before it is no longer news. */
  readonly goOn: () => void;
  /**
   * The driver went to another place: what was done before the press that led there is not said there. What the way there
   * did is said there, and no farther.
   */
  readonly goElsewhere: () => void;
  /** The driver presses something: what is said from now on is about this. */
  readonly press: () => void;
}

let lastId = 0;
let lastBeforePress = 0;

const isReplaced = (old: Notice, { kind, about }: Omit<Notice, "id">) =>
  (kind === "done" && old.kind === "done") || (about !== undefined && old.about === about);

/**
 * The notices on the page now, newest last. One "done" at a time, and one about the clock: a new one takes the place of the
 * old.
 */
export const useNotices = create<Notices>((set) => ({
  list: [],
  say: (notice) => {
    lastId += 1;
    const id = lastId;
    set(({ list }) => ({
      list: [...list.filter((old) => !isReplaced(old, notice)), { ...notice, id }],
    }));
    return id;
  },
  goOn: () => set(({ list }) => ({ list: list.filter(({ kind }) => kind !== "done") })),
  goElsewhere: () => {
    const last = lastBeforePress;
    lastBeforePress = lastId;
    set(({ list }) => ({ list: list.filter(({ id, kind }) => kind !== "done" || id > last) }));
  },
  press: () => {
    lastBeforePress = lastId;
  },
  close: (id) => set(({ list }) => ({ list: list.filter((notice) => notice.id !== id) })),
}));
