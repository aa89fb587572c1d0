import { act, render, screen, within } from "@testing-library/react";
import { describe, expect, it, vi } from "vitest";
import { aboutRemark, isClean, isMistake, isTimed, lapPlaces, type RemarkKind, remarkKinds } from "#domain";
import { parseEntry, writeEntry } from "#entry";
import { sessionDigest, sessionReport } from "#stats";
import { accountLineMeanings, accountLineNames, sayCounts } from "#words";
import { checkRow } from "../../../src/db/checks/checkRow.ts";
import { readRemarks, writeRemarks } from "../../../src/files/tableRemarks.ts";
import { EntryHelp } from "../../../src/screens/log/entry/EntryHelp.tsx";
import { Pad } from "../../../src/screens/log/entry/Pad.tsx";
import { parseSearch, printSearch } from "../../../src/screens/review/searchQuery.ts";
import { entryField, lapRows, openWith, renderLog } from "../../support/logPage.tsx";
import { aContext } from "../../unit/entry/aContext.ts";
import { aRun, aSession, choices } from "../../unit/stats/someRows.ts";

// A ninth remark, in the one list, before anything reads it.
vi.mock("../../../src/domain/remarks.ts", async (original) => {
  const domain = await original<typeof import("../../../src/domain/remarks.ts")>();
  const wide = { kind: "wide", letter: "w", word: "wide", named: "a run wide", pad: ["often", 9] };
  (domain.remarkKinds as unknown as unknown[]).push({ ...domain.aboutRemark("spin"), ...wide });
  return domain;
});

const wide = "wide" as RemarkKind;
const remark = { kind: wide, corner: 3 };
const even = [84_000, 84_100, 84_200, 84_300, 84_400];
const run = aRun(1, [...even, [90_200, wide]]);

describe("a remark added to the list", () => {
  it("stands in it beside the others", () => {
    expect(remarkKinds).toHaveLength(9);
    expect(aboutRemark(wide).letter).toBe("w");
  });

  it("is read on the entry line, and written again", () => {
    const read = parseEntry("1:24.500 w@3", aContext());
    expect(read).toMatchObject({ ok: true, lap: { ms: 84_500, remarks: [remark] } });
    expect(writeEntry({ ms: 84_500, decimals: 3, remarks: [remark] })).toBe("1:24.500 w@3");
    expect(parseEntry("1:24.500 q", aContext())).toMatchObject({
      ok: false,
      problem: { right: expect.stringContaining("w wide") },
    });
  });

  it("is typed, stored and shown on Log", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_900, 84_700, 84_800]));
    await user.type(await entryField(), "24912 w@3{Enter}");
    await screen.findByRole("button", { name: /^Edit lap 4:/ });
    expect(lapRows(1)[3]).toContain("wide, corner 3");
  });

  it("has a key on the pad and a line in the help", async () => {
    const texts: string[] = [];
    const nothing = () => undefined;
    render(
      <Pad
        text="4912"
        onText={(text) => texts.push(text)}
        onDigit={nothing}
        onClear={nothing}
        onAdd={nothing}
        onNote={nothing}
        sectors={1}
        lapNumber={1}
      />,
    );
    act(() => screen.getByRole("button", { name: "more" }).click());
    screen.getByRole("button", { name: "wide" }).click();
    expect(texts).toEqual(["4912w"]);
    render(<EntryHelp sectors={1} />);
    act(() => screen.getByRole("button", { name: /What can be typed/ }).click());
    const term = screen.getAllByRole("term").find(({ textContent }) => textContent === "w");
    expect(within(term?.parentElement ?? document.body).getByText("wide")).toBeInTheDocument();
  });

  it("has its place in the sets and in the counts", () => {
    const lap = { ms: 90_200, remarks: [remark] };
    expect([isTimed(lap), isClean(lap), isMistake(lap)]).toEqual([true, false, true]);
    const digest = sessionDigest(aSession(1), [run], choices);
    expect([...digest.places].map((place) => lapPlaces[place]).at(-1)).toBe("mistake");
    expect(sayCounts(digest.counts)).toBe("of 6 laps: 5 pace, 1 with a mistake");
    expect(digest.mistakes).toBe(1);
  });

  it("has its line of the account, and stands in what that line means", () => {
    const { account, workOn } = sessionReport({
      session: aSession(1),
      runs: [run],
      preferences: choices,
      target: { ms: 83_900, from: "session" },
    });
    expect(account).toMatchObject({ value: { mistakes: 1000, balance: 1300, laps: 6 } });
    expect(workOn && accountLineNames[workOn.line]).toBe("mistakes");
    expect(accountLineMeanings.mistakes).toBe(
      "what laps with an off, a spin, a contact or a run wide add to the mean",
    );
  });

  it("is written into a table, and read back as word and as letter", () => {
    expect(writeRemarks([remark, { kind: "cut" }])).toBe("wide@3; cut");
    expect(readRemarks("wide@3; cut")).toEqual({ ok: true, remarks: [remark, { kind: "cut" }] });
    expect(readRemarks("w")).toEqual({ ok: true, remarks: [{ kind: wide }] });
  });

  it("is let through by the check of stored rows, and looked for by the search", () => {
    const id = (n: number) => `0198a000-0000-7000-8000-00000000000${n}`;
    const stored = { ...run, id: id(1), sessionId: id(2), comboId: id(3) };
    const laps = stored.laps.map((lap, at) => ({ ...lap, id: id(4 + at) }));
    expect(checkRow("runs", { ...stored, laps })).toMatchObject({ ok: true });
    const terms = parseSearch("remark=wide");
    expect(terms.remark).toBe(wide);
    expect(printSearch(terms)).toContain("remark=wide");
  });
});
