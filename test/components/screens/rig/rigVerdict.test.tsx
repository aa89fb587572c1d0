import { render, screen } from "@testing-library/react";
import type { ComponentProps } from "react";
import { expect, it } from "vitest";
import { known } from "#domain";
import { printAddress } from "#state/address.ts";
import { RigVerdict } from "../../../../src/screens/rig/RigVerdict.tsx";

type Tests = ComponentProps<typeof RigVerdict>["tests"];

const tests = (side: "A" | "B", figure: "usual" | "scatter" = "usual") =>
  [
    {
      id: "t",
      comboId: "c",
      test: { id: "t", sayA: "gain 72 %", sayB: "gain 54 %", level: 0.1 },
      records: [],
      side,
      against: { id: "r", name: "as it was", from: "2026-08-31" },
      report: {
        isOver: true,
        figure,
        complete: 8,
        isQuestioned: false,
        verdict: known({ estimate: -370, low: -490, high: -250 }),
      },
      sessions: [{ id: "s", date: "2026-09-17" }],
    },
  ] as unknown as Tests;

it("says what a test found as the rig's front does, with both settings by name and the way to the test", () => {
  render(<RigVerdict name="Ring · hatch" tests={tests("B")} step={undefined} />);
  expect(screen.getByText("Faster by 0.37 s, very likely at least 0.25 s")).toBeVisible();
  expect(screen.getByText(/^Gain 54 %/).closest("p")).toHaveTextContent(
    "Gain 54 % against gain 72 %, a test with 8 pairs of runs, driven on Thu 17 Sep 2026.",
  );
  expect(screen.getByRole("link", { name: "a test" })).toHaveAttribute(
    "href",
    printAddress({ place: "rig", testId: "t" }),
  );
  expect(screen.getByRole("link", { name: "gain 72 %" })).toHaveAttribute(
    "href",
    printAddress({ place: "rig", rigId: "r" }),
  );
});

it("tells the other setting from its own side", () => {
  render(<RigVerdict name="Ring · hatch" tests={tests("A")} step={undefined} />);
  expect(screen.getByText("Slower by 0.37 s, very likely at least 0.25 s")).toBeVisible();
  expect(screen.getByText(/^Gain 72 %/).closest("p")).toHaveTextContent(
    "Gain 72 % against gain 54 %, a test",
  );
});

it("draws the interval of a test of how far laps differ between steadier and less steady", () => {
  render(<RigVerdict name="Ring · hatch" tests={tests("B", "scatter")} step={undefined} />);
  expect(screen.getByText("steadier")).toBeInTheDocument();
  expect(screen.queryByText("faster")).toBeNull();
});
