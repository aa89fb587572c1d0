import { expect, test } from "vitest";
import { sayCountedPractice, sayLapsASession, saySessionsAWeek } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const lately = { sessionsAWeek: 11 / 6, lapsASession: 20.6, sessions: 11 };

test("where the practice that chances count on comes from", () => {
  const said = [
    sayCountedPractice(lately),
    sayCountedPractice(lately, { sessionsAWeek: 3 }),
    sayCountedPractice({ ...lately, since: "2026-11-05" }),
    sayCountedPractice({ ...lately, since: "2026-11-05" }, { sessionsAWeek: 3 }),
    sayCountedPractice(undefined),
    sayCountedPractice(undefined, { sessionsAWeek: 3, lapsASession: 20 }),
  ];
  expect(said).toEqual([
    "As in the last six weeks. Type what you mean to drive, and the chances follow.",
    "Your own figures. In the last six weeks it was 1.8 a week of 21 timed laps.",
    "As driven since Thu 5 Nov 2026. Type what you mean to drive, and the chances follow.",
    "Your own figures. Since Thu 5 Nov 2026 it was 1.8 a week of 21 timed laps.",
    "Nothing was driven in the last six weeks. Type what you mean to drive, and chances are told.",
    "Your own figures: nothing was driven in the last six weeks.",
  ]);
  said.forEach(expectWellFormed);
});

test("its two figures, as they stand in their fields", () => {
  expect(saySessionsAWeek(lately)).toBe("1.8");
  expect(sayLapsASession(lately)).toBe("21");
});
