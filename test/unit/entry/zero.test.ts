import { expect, test } from "vitest";
import { parseEntry } from "#entry";

test.each(["0", "00", "0000", "000000", "0.0", "0:00.000"])(
  "%s is no lap time, and what is offered instead is one",
  (text) => {
    const context = { relativeTo: "lap", displayDecimals: 3, paceTimes: [], isPractice: true } as const;
    const read = parseEntry(text, context);
    expect(read).toMatchObject({ ok: false, problem: { wrong: "A lap cannot take no time at all." } });
    const offered = read.ok ? "" : (/[\d:.]+\d/.exec(read.problem.right)?.[0] ?? "");
    expect(parseEntry(offered, context)).toMatchObject({ ok: true });
  },
);
