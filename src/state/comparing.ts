import { create } from "zustand";
import type { Id } from "#domain";
import { goTo } from "./address.ts";

/** A run or a session that is to be compared with another one, and what it is called. */
export interface Compared {
  readonly kind: "run" | "session";
  readonly id: Id;
  /** "Run 2", "Wed 25 Nov 2026": as it is said where it was chosen. */
  readonly name: string;
}

interface Comparing {
  /** The one that was chosen first, until the other is. */
  readonly first: Compared | undefined;
  /** Chooses one: the first waits for another of its kind, the second leads to both side by side. */
  readonly choose: (one: Compared) => void;
  readonly forget: () => void;
}

/** What the driver has chosen to compare. It lives as long as this page: whoever reloads chooses again. */
export const useComparing = create<Comparing>((set, get) => ({
  first: undefined,
  choose: (one) => {
    const { first } = get();
    if (first?.id === one.id) return set({ first: undefined });
    if (first?.kind !== one.kind) return set({ first: one });
    set({ first: undefined });
    goTo({ place: "review", part: "compare", kind: one.kind, ids: [first.id, one.id] });
  },
  forget: () => set({ first: undefined }),
}));

/** What a button that chooses one needs: what was chosen first, where that is of its kind. */
export function firstOf(first: Compared | undefined, { kind, id }: Pick<Compared, "kind" | "id">) {
  return first?.kind === kind ? { name: first.name, isThis: first.id === id } : undefined;
}
