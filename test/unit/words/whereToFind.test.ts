import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import { sayCornersThatGive, saySectorShares, whereInShort } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const sectors = (shares: readonly number[], covered: number) => known({ shares, covered });
const missing = unknown({ needs: 5, of: "pace lap with sectors", has: 0 });

test("where most of it is, as short as it goes", () => {
  expect(whereInShort({ sectors: sectors([120, 250, 74], 444), corners: [] })).toBe(
    "most in sector 2: 0.250 s",
  );
  expect(whereInShort({ sectors: missing, corners: [{ number: 5, ms: 314 }] })).toBe(
    "most at corner 5: about 0.31 s",
  );
  expect(whereInShort({ sectors: missing, corners: [] })).toBe("cannot be told yet");
});

test("how the sectors share it, and by what", () => {
  const said = [
    saySectorShares({ gain: 444, sectors: sectors([120, 250, 74], 444) }),
    saySectorShares({ gain: 444, sectors: sectors([120, 250, 74], 300) }),
    saySectorShares({ gain: 444, sectors: sectors([120, 250, 74], 0) }),
    saySectorShares({ gain: 444, sectors: missing }),
  ];
  expect(said).toEqual([
    "0.444 s to go, shared as far as your usual sectors lie behind your best ones.",
    "0.444 s to go. Your best sectors hold 0.300 s of it; the rest is shared by how long the sectors are.",
    "0.444 s to go, shared by how long the sectors are: your usual sectors are your best ones.",
    "By sector: Not enough pace laps with sectors yet: 0 of 5.",
  ]);
  said.forEach(expectWellFormed);
});

test("which corners could give it, and whether they are enough", () => {
  const corners = [
    { number: 5, ms: 314 },
    { number: 3, ms: 196 },
  ];
  expect(sayCornersThatGive({ gain: 444, corners })).toBe(
    "Road left unused could give it: about 0.31 s at corner 5 and 0.20 s at corner 3, an estimate.",
  );
  expect(sayCornersThatGive({ gain: 511, corners })).toBe(
    "Road left unused could give some of it: about 0.31 s at corner 5 and 0.20 s at corner 3, an estimate.",
  );
  expect(sayCornersThatGive({ gain: 444, corners: [] })).toBeUndefined();
});
