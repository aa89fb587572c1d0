import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { LapStrip, type LapStripProps } from "#charts/strip/LapStrip.tsx";
import type { StripLap } from "#domain";

const laps: StripLap[] = [
  { id: "a", name: "Lap 1", ms: 84_600 },
  { id: "b", name: "Lap 2", ms: 84_200 },
  { id: "c", name: "Lap 3", remarks: [{ kind: "off", corner: 5 }] },
];
const draw = (props: Partial<LapStripProps> = {}) =>
  render(<LapStrip laps={laps} size="full" name="Run 2" {...props} />);
const figure = () => screen.getByRole("figure", { name: /^Run 2/ });

describe("LapStrip", () => {
  it("says what it shows", () => {
    draw();
    expect(figure()).toHaveAccessibleName("Run 2: 3 laps, best 1:24.200, 1 with a mistake, 1 without a time");
  });

  it("small is a picture with the same words, no labels and nothing to stop at", () => {
    draw({ size: "small", lines: { pb: { ms: 84_000 } } });
    const picture = screen.getByRole("img", { name: /^Run 2: 3 laps/ });
    expect(picture.querySelectorAll("text")).toHaveLength(0);
    expect(picture).not.toHaveAttribute("tabindex");
  });

  it("names its lines at their ends, with the digits they are known to", () => {
    draw({ lines: { pb: { ms: 84_000, decimals: 1 }, usual: { ms: 84_400 }, target: { ms: 60_000 } } });
    const words = [...figure().querySelectorAll("text")].map((one) => one.textContent);
    expect(words).toEqual(["usual 1:24.400", "PB about 1:24.0", "target 1:00.000 ↓"]);
  });

  it("is one stop of the tabs, walked by arrows; a lap is read out, and Enter opens it", async () => {
    const onOpen = vi.fn();
    const user = userEvent.setup();
    draw({ onOpen });
    await user.tab();
    expect(figure()).toHaveFocus();
    await user.keyboard("{ArrowLeft}");
    expect(screen.getByRole("status")).toHaveTextContent("Lap 3: no time, off, corner 5");
    await user.keyboard("{ArrowLeft}");
    expect(screen.getByRole("status")).toHaveTextContent("Lap 2: 1:24.200");
    await user.keyboard("{Enter}");
    expect(onOpen).toHaveBeenCalledWith("b");
    await user.tab();
    expect(figure()).not.toHaveFocus();
  });

  it("says how many laps it has no room for", () => {
    const many = Array.from(
      { length: 500 },
      (_, index): StripLap => ({
        id: `${index}`,
        name: `Lap ${index + 1}`,
        ms: 84_000 + ((index * 7919) % 500),
      }),
    );
    draw({ laps: many });
    expect(screen.getByText(/^\d+ of 500 laps are drawn\.$/)).toBeVisible();
  });
});
