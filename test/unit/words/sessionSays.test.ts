import { expect, it } from "vitest";
import { sessionReport } from "#stats";
import { saySession } from "#words";
import { aRun, aSession, choices, type Told } from "../stats/someRows.ts";

const said = (laps: readonly Told[], pbBefore?: { readonly ms: number; readonly decimals: number }) =>
  saySession(
    sessionReport({ session: aSession(0), runs: [aRun(1, laps)], preferences: choices, pbBefore }),
    pbBefore,
  );
const laps: Told[] = [84_500, [90_000, "spin"], 84_086, [84_000, "cut"]];

it("says first what a session did to the PB, then how many laps were clean", () => {
  expect(said(laps, { ms: 84_500, decimals: 3 })).toBe("PB by 0.414 s; 2 of 4 laps clean");
  expect(said(laps, { ms: 83_000, decimals: 3 })).toBe("Best lap 1.086 s off PB; 2 of 4 laps clean");
  expect(said(laps, { ms: 83_000, decimals: 1 })).toBe("Best lap about 1.1 s off PB; 2 of 4 laps clean");
  expect(said(laps, { ms: 84_086, decimals: 3 })).toBe("Best lap the same as your PB; 2 of 4 laps clean");
  expect(said(laps)).toBe("PB here now 1:24.086; 2 of 4 laps clean");
  expect(said(laps.slice(1))).toBe("First PB here, 1:24.086; 1 of 3 laps clean");
  expect(said([[undefined, "off"]])).toBe("No lap with a time");
});
