import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { BridgeChart } from "#charts/bridge/BridgeChart.tsx";
import { ConsistencyChart } from "#charts/consistency/ConsistencyChart.tsx";
import { ProgressChart, type ProgressChartProps } from "#charts/progress/ProgressChart.tsx";
import { fromChart } from "../../support/fromChart.ts";

const words = {
  title: "No clear change",
  reading: "Not slower by more than 0.1 s.",
  asOf: "2026-10-24",
  fileName: "x",
};
const sessions = [0, 1, 2, 3].map((at) => ({
  id: `s${at}`,
  date: `2026-10-1${at}`,
  startedAt: at,
  median: 84_000 - at * 100,
  q1: 83_800 - at * 100,
  q3: 84_300 - at * 100,
  best: 83_500 - at * 100,
  laps: 20,
  isPresentPage: at > 0,
}));

function drawProgress(changes: Partial<ProgressChartProps> = {}) {
  return render(
    <ProgressChart
      {...words}
      sessions={sessions}
      pbSteps={[
        { date: "2026-10-11", ms: 83_400, sessionId: "s1" },
        { date: "2026-10-13", ms: 83_200, sessionId: "s3" },
      ]}
      targets={[{ ms: 82_950, label: "target 1:22.950" }]}
      isAhead
      onAhead={() => undefined}
      {...changes}
    />,
  ).container;
}

const drawnWords = (box: HTMLElement) => [...box.querySelectorAll("svg text")].map((one) => one.textContent);

describe("ProgressChart", () => {
  it("says once which way is faster, and names its lines and the new page", () => {
    const drawn = drawnWords(drawProgress());
    expect(drawn.filter((text) => text === "lap time, lower is faster")).toHaveLength(1);
    expect(drawn).toEqual(expect.arrayContaining(["target 1:22.950", "PB 1:23.200", "new page", "1:24.0"]));
  });

  it("names a PB to the digits it is known to", () => {
    const drawn = drawnWords(drawProgress({ pbSteps: [{ date: "2026-10-13", ms: 83_200, decimals: 1 }] }));
    expect(drawn).toContain("PB about 1:23.2");
  });

  it("draws no line on the axis itself, not even a PB at a round time", () => {
    const box = drawProgress({ pbSteps: [{ date: "2026-10-13", ms: 83_000, sessionId: "s3" }], targets: [] });
    const bottom = Math.max(
      ...[...box.querySelectorAll("svg text")]
        .filter((one) => /^1:2\d/.test(one.textContent ?? ""))
        .map((one) => Number(one.getAttribute("y"))),
    );
    const pb = /^M[\d.]+ ([\d.]+)/.exec(box.querySelector("path[class*=best]")?.getAttribute("d") ?? "");
    expect(bottom - Number(pb?.[1])).toBeGreaterThan(4);
  });

  it("draws slower upward", () => {
    const box = drawProgress();
    const heightOf = (text: string) =>
      Number(
        [...box.querySelectorAll("svg text")].find((one) => one.textContent === text)?.getAttribute("y"),
      );
    expect(heightOf("1:24.0")).toBeLessThan(heightOf("1:23.0"));
  });

  it("reads its sessions and its personal bests, and opens a session", async () => {
    const onOpen = vi.fn();
    drawProgress({ onOpen });
    await userEvent.tab();
    await userEvent.keyboard("{Home}");
    const region = screen.getByRole("status");
    expect(region).toHaveTextContent(
      "Sessions. Saturday 10 October: usual 1:24.000, half of the laps 1:23.800 to 1:24.300, best pace lap 1:23.500, 20 pace laps, older page",
    );
    await userEvent.keyboard("{Enter}");
    expect(onOpen).toHaveBeenCalledExactlyOnceWith("s0");
    await userEvent.keyboard("{ArrowDown}{End}");
    expect(region).toHaveTextContent("Tuesday 13 October: personal best 1:23.200");
  });

  it("draws a forecast with words for both bands", () => {
    const curve = [
      { date: "2026-10-14", ms: 83_700, half: [83_500, 83_900], nineInTen: [83_200, 84_200] },
      { date: "2026-10-28", ms: 83_600, half: [83_400, 83_800], nineInTen: [83_000, 84_200] },
    ] as const;
    const drawn = drawnWords(drawProgress({ curve })).join(" ");
    expect(drawn).toMatch(/half of the sessions/);
    expect(drawn).toMatch(/9 in 10/);
    expect(drawn).toContain("level");
  });

  it("begins the forecast's bands at the last session, where its curve comes from", () => {
    const curve = [
      { date: "2026-10-10", ms: 84_000, sessionId: "s0" },
      { date: "2026-10-13", ms: 83_800, sessionId: "s3" },
      { date: "2026-10-28", ms: 83_600, half: [83_400, 83_800], nineInTen: [83_000, 84_200] },
    ] as const;
    const box = drawProgress({ curve });
    const pathOf = (name: string) => box.querySelector(`path[class*=${name}]`)?.getAttribute("d") ?? "";
    const [, second = ""] = pathOf("forecast").slice(1).split("L");
    expect(pathOf("bandPale")).toMatch(new RegExp(`^M${second.split(" ")[0]} .+Z$`));
  });

  it("shows usual laps, half of the laps and the PB at first, what is to come on request", async () => {
    const onAhead = vi.fn();
    const curve = [
      { date: "2026-10-14", ms: 83_700, half: [83_500, 83_900], nineInTen: [83_200, 84_200] },
      { date: "2026-10-28", ms: 83_600, half: [83_400, 83_800], nineInTen: [83_000, 84_200] },
    ] as const;
    const box = drawProgress({ curve, isAhead: false, onAhead });
    const drawn = drawnWords(box).join(" ");
    expect(drawn).toContain("usual lap half of the laps");
    expect(drawn).toContain("PB 1:23.200");
    expect(drawn).toContain("usual 1:23.700");
    expect(drawn).not.toMatch(/target|level|best/);
    expect(box.querySelector("path[class*=bandPale]")?.getAttribute("d")).toBe("");
    await userEvent.click(screen.getByRole("button", { name: "What is to come" }));
    expect(onAhead).toHaveBeenCalledExactlyOnceWith(true);
  });

  it("draws a new page's rule over the sessions", () => {
    const box = drawProgress();
    const paths = [...box.querySelectorAll("path")].map((path) => path.getAttribute("class") ?? "");
    const at = (name: RegExp) => paths.findIndex((path) => name.test(path));
    expect(at(/page/)).toBeGreaterThan(Math.max(at(/box/), at(/tick/), at(/boxOld/)));
  });

  it("reads a point at the first press and opens its session at the second", async () => {
    const onOpen = vi.fn();
    const box = drawProgress({ onOpen });
    const ground = box.querySelector("rect[class*=ground]") as Element;
    await userEvent.click(ground);
    expect(onOpen).not.toHaveBeenCalled();
    expect(screen.getByText(/press again to open$/)).toBeVisible();
    await userEvent.click(ground);
    expect(onOpen).toHaveBeenCalledOnce();
  });

  it("has a best of ten in its key only where one is drawn", async () => {
    const ten = sessions.map((one) => ({ ...one, bestOfTen: one.best + 50 }));
    const few = drawProgress({ sessions: ten });
    await userEvent.click(within(few).getByRole("button", { name: "Best laps" }));
    expect(drawnWords(few)).toContain("best of ten");
    const dense = Array.from({ length: 900 }, (_, at) => ({
      ...ten[3],
      id: `d${at}`,
      date: new Date(Date.UTC(2023, 0, 1 + at)).toISOString().slice(0, 10),
      startedAt: at,
      laps: 20,
      isPresentPage: true,
    }));
    const box = drawProgress({ sessions: dense, pbSteps: [] });
    await userEvent.click(within(box).getByRole("button", { name: "Best laps" }));
    expect(box.querySelector("path[class*=ring]")?.getAttribute("d")).toBe("");
    expect(drawnWords(box)).not.toContain("best of ten");
  });

  it("thins a thousand sessions and says so, while the table has all", async () => {
    const many = Array.from({ length: 1000 }, (_, at) => ({
      ...sessions[3],
      id: `m${at}`,
      date: new Date(Date.UTC(2023, 0, 1 + at)).toISOString().slice(0, 10),
      startedAt: at,
      median: 84_000 + ((at * 37) % 400),
      laps: 20,
      isPresentPage: true,
    }));
    drawProgress({ sessions: many, pbSteps: [] });
    expect(screen.getByText("600 of 1000 sessions are drawn; the table has them all.")).toBeVisible();
    await fromChart(/^Show as a table/);
    expect(screen.getByRole("table").querySelectorAll("tbody tr")).toHaveLength(1000);
  });

  it("draws nothing, but keeps its words, without a session", () => {
    const box = drawProgress({ sessions: [], pbSteps: [] });
    expect(box.querySelector("svg")).toBeNull();
    expect(screen.getByRole("heading", { name: "No clear change" })).toBeVisible();
  });
});

describe("ConsistencyChart", () => {
  it("walks only sessions whose scatter is known", async () => {
    const some = sessions.map((one, at) => ({
      ...one,
      ...(at === 1 ? {} : { scatterPercent: 0.4 + at / 10, intervalPercent: [0.3, 0.9] as const }),
    }));
    render(<ConsistencyChart {...words} sessions={some} />);
    await userEvent.tab();
    await userEvent.keyboard("{Home}{ArrowRight}");
    expect(screen.getByRole("status")).toHaveTextContent("Monday 12 October: scatter 0.60 %");
    await fromChart(/^Show as a table/);
    expect(within(screen.getByRole("table")).getAllByRole("rowheader")).toHaveLength(4);
  });
});

describe("BridgeChart", () => {
  it("names every line with its sign, the balance last", async () => {
    const { container } = render(
      <BridgeChart
        {...words}
        lines={[
          { id: "pace", label: "pace", ms: 420 },
          { id: "mistakes", label: "mistakes", ms: -50 },
        ]}
        balance={{ id: "balance", label: "balance", ms: 370 }}
      />,
    );
    expect(drawnWords(container)).toEqual(["pace", "+0.420", "mistakes", "−0.050", "balance", "+0.370"]);
    await userEvent.tab();
    await userEvent.keyboard("{End}");
    expect(screen.getByRole("status")).toHaveTextContent("balance: +0.370 seconds a lap");
  });

  it("keeps its bars inside when everything is a gain", () => {
    const { container } = render(
      <BridgeChart
        {...words}
        lines={[{ id: "pace", label: "pace", ms: -300 }]}
        balance={{ id: "balance", label: "balance", ms: -300 }}
      />,
    );
    for (const bar of container.querySelectorAll("rect")) {
      const left = Number(bar.getAttribute("x"));
      expect(left).toBeGreaterThanOrEqual(0);
      expect(left + Number(bar.getAttribute("width"))).toBeLessThanOrEqual(640);
    }
  });
});
