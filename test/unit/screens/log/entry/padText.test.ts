import { describe, expect, it } from "vitest";
import {
  pressKey,
  remarksIn,
  toggleRemark,
  toggleSign,
} from "../../../../../src/screens/log/entry/padText.ts";

describe("remarks by the pad", () => {
  it("stand behind the time and go again at the second tap, with their corner", () => {
    expect(toggleRemark("1:24.912", "off")).toBe("1:24.912f");
    expect(toggleRemark("1:24.912f@5", "spin")).toBe("1:24.912f@5s");
    expect(toggleRemark("1:24.912f@5s", "off")).toBe("1:24.912s");
    expect(toggleRemark("", "off")).toBe("f");
  });

  it("leave the note behind them", () => {
    expect(toggleRemark("4912 / wide at 5", "cut")).toBe("4912c / wide at 5");
    expect(toggleRemark("4912c / wide at 5", "cut")).toBe("4912 / wide at 5");
  });

  it("are shown as pressed, however they were typed, and words of a note are none", () => {
    expect(remarksIn("4912 F@12s")).toEqual(["off", "spin"]);
    expect(remarksIn("4912 / off and spin")).toEqual([]);
    expect(remarksIn("4912")).toEqual([]);
  });
});

describe("keys of the pad", () => {
  it("digits after a remark name its corner, all others are typed as they are", () => {
    expect(pressKey("4912f", "1")).toBe("4912f@1");
    expect(pressKey("4912f@1", "2")).toBe("4912f@12");
    expect(pressKey("491", "2")).toBe("4912");
    expect(pressKey("1", ":")).toBe("1:");
    expect(pressKey("4912 / off", "5")).toBe("4912 / off5");
  });

  it("plus or minus goes from slower to faster to neither", () => {
    expect(toggleSign("0.6")).toBe("+0.6");
    expect(toggleSign("+0.6")).toBe("-0.6");
    expect(toggleSign("-0.6")).toBe("0.6");
    expect(toggleSign("−0.6")).toBe("0.6");
  });
});
