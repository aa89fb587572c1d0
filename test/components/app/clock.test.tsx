import { act, cleanup, screen, waitFor } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { noteBackup, noteLaps, noteOpened, openShelf, type Shelf, type ShelvedLogbook } from "#db";
import { useDevice } from "#state/device.ts";
import { useNotices } from "#state/notices.ts";
import { BackupNotice } from "../../../src/app/BackupNotice.tsx";
import { BackupState } from "../../../src/app/BackupState.tsx";
import { clockNotice, isWorthSaying } from "../../../src/app/clockNotice.ts";
import { useClockWatch } from "../../../src/app/useClockWatch.ts";
import { BackupPart } from "../../../src/screens/data/BackupPart.tsx";
import { type Rendered, renderAt } from "../../support/renderAt.tsx";

const day = 86_400_000;
const now = Date.UTC(2026, 10, 28, 18);
const then = Date.UTC(2036, 2, 4, 18);

function Watch() {
  useClockWatch();
  return <BackupState className={undefined} isOnData={false} />;
}

const said = () => useNotices.getState().list.map(({ text }) => text);

/** Changes the list of logbooks as at an instant, as an earlier visit would have. */
async function earlier(
  { clock, surroundings }: Rendered,
  at: number,
  work: (shelf: Shelf, name: ShelvedLogbook["name"]) => Promise<unknown>,
) {
  clock.set(at);
  const shelf = await openShelf(surroundings);
  await work(shelf, useDevice.getState().logbook ?? "");
  shelf.close();
  clock.set(now);
}

afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

describe("the clock of this device", () => {
  it("is said once to have stood in 2036 when the logbook was last open", async () => {
    const page = await renderAt("#/log", <Watch />, undefined, now);
    await screen.findByText("no backup yet");
    cleanup();
    await earlier(page, then, (shelf, name) => noteOpened(shelf, name, "2036-03-04"));
    page.reload();
    await screen.findByText("no backup yet");
    await waitFor(() =>
      expect(said()).toEqual([
        "This device’s clock stood at Tue 4 Mar 2036 when the logbook was last open. Now it says Sat 28 Nov 2026. Laps keep their order. If that is wrong, set the clock right before the next session.",
      ]),
    );
    useNotices.setState({ list: [] });
    page.reload();
    await screen.findByText("no backup yet");
    expect(said()).toEqual([]);
  });

  it("is said to have jumped ahead while the page is open, and back, and not again at the next opening", async () => {
    let count = 1000;
    vi.spyOn(performance, "now").mockImplementation(() => count);
    const page = await renderAt("#/log", <Watch />, undefined, now);
    await screen.findByText("no backup yet");
    cleanup();
    vi.useFakeTimers();
    const watch = vi.spyOn(globalThis, "setInterval");
    page.reload();
    await act(() => vi.advanceTimersByTimeAsync(1000));
    // The clock is watched from a moment after the page has been drawn.
    await vi.waitFor(() => expect(watch).toHaveBeenCalledWith(expect.any(Function), 5000));
    const jumpTo = async (at: number) => {
      count += 5000;
      page.clock.set(at);
      await act(() => vi.advanceTimersByTimeAsync(5000));
    };
    await jumpTo(then);
    expect(said()).toHaveLength(1);
    expect(said()[0]).toMatch(/jumped from Sat 28 Nov 2026 to Tue 4 Mar 2036/);
    await jumpTo(now + 10_000);
    // The newer word takes the place of the older one.
    expect(said()).toHaveLength(1);
    expect(said()[0]).toMatch(/stood at Tue 4 Mar 2036 until just now. Now it says Sat 28 Nov 2026/);
    // A laptop that slept for three weeks, where the count stood still meanwhile.
    await jumpTo(now + 21 * day);
    expect(said()).toHaveLength(1);
  });

  it("is worth no word for a season's rest, nor for a second put right", () => {
    const jump = (seen: "open" | "opening", before: number) => isWorthSaying({ seen, before, now });
    expect(jump("opening", now - 300 * day)).toBe(false);
    expect(jump("opening", now - 400 * day)).toBe(true);
    expect(jump("open", now - 30 * day)).toBe(false);
    expect(jump("open", now - 32 * day)).toBe(true);
    expect(jump("open", now + 2000)).toBe(false);
    expect(jump("open", now + 61_000)).toBe(true);
    expect(clockNotice({ seen: "opening", before: now - 400 * day, now }, "UTC").text).toBe(
      "This logbook was last open on Fri 24 Oct 2025; this device’s clock now says Sat 28 Nov 2026. If that is wrong, set the clock right before the next session.",
    );
    expect(clockNotice({ seen: "opening", before: now + 3_600_000, now }, "UTC").text).toMatch(
      /^This device’s clock went back; it now says Sat 28 Nov 2026\. Laps keep their order\./,
    );
  });
});

describe("a backup saved while the clock stood in 2036", () => {
  const shown = (
    <>
      <BackupState className={undefined} isOnData={false} />
      <BackupNotice />
      <BackupPart />
    </>
  );

  it("is never said to be of today, and the laps since remind of the next one", async () => {
    const page = await renderAt("#/log", shown, undefined, now);
    await screen.findByText("no backup yet");
    cleanup();
    await earlier(page, then, async (shelf, name) => {
      await noteBackup(shelf, name);
      await noteLaps(shelf, name, 99);
    });
    page.reload();
    expect(await screen.findByText("last backup: the clock stood ahead then")).toBeVisible();
    expect(
      await screen.findByText(
        "Last backup on a day that is not known, because this device’s clock stood ahead then: 99 laps since.",
      ),
    ).toBeVisible();
    expect(screen.queryByRole("button", { name: "Save one now" })).toBeNull();
    cleanup();
    await earlier(page, now, (shelf, name) => noteLaps(shelf, name, 1));
    page.reload();
    expect(await screen.findByRole("button", { name: "Save one now" })).toBeVisible();
    expect(await screen.findAllByText(/: 100 laps since\./)).toHaveLength(2);
    expect(screen.queryByText(/today/)).toBeNull();
  });
});
