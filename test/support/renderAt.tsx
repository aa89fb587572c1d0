import { configure, render } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import type { ReactNode } from "react";
import { vi } from "vitest";
import type { Logbook } from "#db";
import { type Ask, askHere, LogbookProvider, openAtStart, type Surroundings, sendHere } from "#live";
import { useDevice } from "#state/device.ts";
import { Notices } from "../../src/app/Notices.tsx";
import type { fixedClock } from "./fixedClock.ts";
import { freshBrowser } from "./freshBrowser.ts";

// A busy machine draws slowly; waiting longer makes no test pass that should not.
configure({ asyncUtilTimeout: 20_000 });
vi.setConfig({ testTimeout: 30_000 });

export interface Rendered {
  readonly user: ReturnType<typeof userEvent.setup>;
  readonly clock: ReturnType<typeof fixedClock>;
  readonly surroundings: Surroundings;
  /** Takes the page away and draws it again, as a reload would. */
  readonly reload: () => void;
  /** Takes the page away and draws it in another tab; the tab before is closed, or stays open behind it. */
  readonly otherTab: (before: "closed" | "open") => void;
  /** Closes the tab that the page was drawn in first. */
  readonly closeFirstTab: () => void;
}

/**
 * Draws a screen at an address, as the driver would reach it, over a fresh browser holding one logbook, "My logbook".
 * @param fill writes into that logbook before the screen is drawn
 * @param ask what answers its questions for figures
 */
export async function renderAt(
  hash: string,
  screen: ReactNode,
  fill: (book: Logbook) => Promise<unknown> = async () => undefined,
  at = Date.UTC(2026, 10, 25, 18),
  ask: Ask = askHere,
): Promise<Rendered> {
  // Before the logbook is filled: a test may know only then where it wants to be.
  window.location.hash = hash;
  const browser = await freshBrowser(fill, at);
  const { clock, living, openTab } = browser;
  let { surroundings } = browser;

  const draw = () =>
    render(
      <LogbookProvider
        opening={openAtStart(surroundings, useDevice.getState())}
        surroundings={surroundings}
        ask={ask}
        sendOut={sendHere(surroundings)}
        waiting={<p>Opening</p>}
        sayFault={(fault) => <p role="alert">{fault.message}</p>}
      >
        {screen}
        <Notices />
      </LogbookProvider>,
    );
  let page = draw();
  const reload = () => {
    page.unmount();
    page = draw();
  };
  const otherTab = (before: "closed" | "open") => {
    if (before === "closed") living.clear();
    surroundings = { ...surroundings, tab: openTab() };
    reload();
  };
  const closeFirstTab = () => {
    const [first] = living;
    if (first !== undefined) living.delete(first);
  };
  return { user: userEvent.setup(), clock, surroundings, reload, otherTab, closeFirstTab };
}
