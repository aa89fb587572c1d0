import { configure, renderHook } from "@testing-library/react";
import type { ReactNode } from "react";
import { vi } from "vitest";
import { type Logbook, openLogbook, openShelf } from "#db";
import { askHere, type OpenLogbook, sendHere } from "#live";
import { useNotices } from "#state/notices.ts";
import { LogbookContext } from "../../src/live/logbookContext.ts";
import { freshBrowser } from "./freshBrowser.ts";

// A busy machine draws slowly; waiting longer makes no test pass that should not.
configure({ asyncUtilTimeout: 20_000 });

/** Where the tests of hooks stand: 25 November 2026, 19:00 in Berlin. */
const at = Date.UTC(2026, 10, 25, 18);

/**
 * A fresh browser with one logbook, "My logbook", open on a page, and the way to draw hooks there.
 * @param fill writes into that logbook before
 * @param instead what stands in the place of the page's own: another way to ask, or to send out errands
 */
export async function hooksAt(
  fill: (book: Logbook) => Promise<unknown> = async () => undefined,
  instead: Partial<OpenLogbook> = {},
) {
  const browser = await freshBrowser(fill, at);
  const { clock, living, openTab, surroundings } = browser;
  const shelf = await openShelf(surroundings);
  const book = await openLogbook({ name: browser.entry.name, ...surroundings });
  const openOther = vi.fn<(name: string) => void>();
  const page: OpenLogbook = {
    shelf,
    book,
    entry: browser.entry,
    surroundings,
    ask: askHere,
    sendOut: sendHere(surroundings),
    openOther,
    ...instead,
  };
  const drawIn = <P, R>(on: OpenLogbook, hook: (props: P) => R, initialProps?: P) =>
    renderHook(hook, {
      wrapper: ({ children }: { readonly children: ReactNode }) => (
        <LogbookContext value={on}>{children}</LogbookContext>
      ),
      ...(initialProps !== undefined && { initialProps }),
    });
  return {
    ...page,
    openOther,
    page,
    clock,
    living,
    /** Draws a hook on the page. */
    draw: <P, R>(hook: (props: P) => R, initialProps?: P) => drawIn(page, hook, initialProps),
    /** The same page in another tab, which is open beside it. */
    otherTab: () => {
      const there: OpenLogbook = { ...page, surroundings: { ...surroundings, tab: openTab() } };
      return {
        page: there,
        draw: <P, R>(hook: (props: P) => R, initialProps?: P) => drawIn(there, hook, initialProps),
      };
    },
  };
}

/** What the driver reads at the foot of the page, oldest first. */
export function said() {
  const { list } = useNotices.getState();
  const buttons = list.flatMap(({ actions }) => actions);
  if (buttons.some(({ name }) => typeof name !== "string")) throw new Error("A button has no name.");
  return list.map(({ kind, text }) => ({ kind, text }));
}

/** Presses a button of the newest notice. */
export function press(name: string): void {
  const actions = useNotices.getState().list.at(-1)?.actions ?? [];
  const action = actions.find((one) => one.name === name);
  if (action === undefined)
    throw new Error(`No button “${name}”, only ${actions.map((one) => one.name).join(", ")}`);
  action.run();
}
