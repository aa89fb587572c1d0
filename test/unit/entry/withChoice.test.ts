import { expect, it } from "vitest";
import { parseEntry, withChoice } from "#entry";
import { aContext } from "./aContext.ts";

it.each([
  ["4912 s", "1:34.912s"],
  ["4912f@5", "1:34.912f@5"],
  ["  4912  s t / slid wide", "  1:34.912s t / slid wide"],
  ["4.9 off5", "1:34.9off5"],
])("%j with its second reading is %j, and nobody asks about it", (line, chosen) => {
  const reading = parseEntry(line, aContext());
  if (reading.ok) throw new Error(`${line} was read`);
  const text = withChoice(line, reading.problem, reading.problem.choices?.[1] ?? "");
  expect(text).toBe(chosen);
  expect(parseEntry(text, aContext())).toMatchObject({
    ok: true,
    asks: [],
    lap: { decimals: /\.\d{3}/.test(chosen) ? 3 : 1 },
  });
});
