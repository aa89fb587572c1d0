import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, describe, expect, it, vi } from "vitest";
import { percentTicks } from "#charts/axes/percentTicks.ts";
import { PracticeCalendar } from "#charts/calendar/PracticeCalendar.tsx";
import { DistributionChart } from "#charts/distribution/DistributionChart.tsx";
import { IndividualsChart } from "#charts/individuals/IndividualsChart.tsx";
import { RangeRowsChart } from "#charts/rangeRows/RangeRowsChart.tsx";
import { lapDistribution } from "#stats";
import { fromChart } from "../../support/fromChart.ts";

const words = { title: "A finding", reading: "What it says.", asOf: "2026-10-24", fileName: "x" };
const drawnWords = (box: HTMLElement) => [...box.querySelectorAll("svg text")].map((one) => one.textContent);
const said = () => screen.getByRole("status").textContent;
const rowsOfTable = async () => {
  await fromChart(/^Show as a table/);
  return [...screen.getByRole("table").querySelectorAll("tbody tr")].map((row) =>
    [...row.children].map((cell) => cell.textContent),
  );
};

describe("DistributionChart", () => {
  const now = [84_000, 84_010, 84_210, 84_390, 84_400];
  const before = [85_000, 85_050, 84_900];

  it("counts the laps of both periods on one scale, and says the counts", async () => {
    const { container } = render(
      <DistributionChart
        {...words}
        distribution={lapDistribution(now, before)}
        nowWords="now"
        beforeWords="before"
      />,
    );
    expect(drawnWords(container)).toEqual(
      expect.arrayContaining(["before: 3 laps", "now: 5 laps", "lap time, lower is faster", "usual lap"]),
    );
    await userEvent.tab();
    await userEvent.keyboard("{Home}{ArrowDown}{Home}");
    expect(said()).toBe("1:24.000 to 1:24.100: 2 of 5 laps");
    const rows = await rowsOfTable();
    const sum = (column: number) => rows.reduce((total, row) => total + Number(row[column]), 0);
    expect([sum(2), sum(3)]).toEqual([3, 5]);
  });

  it("says that its bars are shares, and how much the longest stands for", () => {
    const { container } = render(
      <DistributionChart
        {...words}
        distribution={lapDistribution(now, before)}
        nowWords="now"
        beforeWords="before"
      />,
    );
    // Two of the three laps before lie in one bin.
    expect(drawnWords(container)).toEqual(
      expect.arrayContaining(["share of laps", "the longest bar is 67 % of the laps"]),
    );
  });

  it("says how many laps lie beyond what is drawn", () => {
    const far = lapDistribution([...now, 110_000], []);
    render(<DistributionChart {...words} distribution={far} nowWords="now" beforeWords="before" />);
    expect(screen.getByText("1 lap lies above what is drawn; the table counts them.")).toBeVisible();
  });

  it("draws nothing without laps", () => {
    const { container } = render(
      <DistributionChart
        {...words}
        distribution={lapDistribution([], [])}
        nowWords="now"
        beforeWords="before"
      />,
    );
    expect(container.querySelector("svg")).toBeNull();
  });
});

describe("IndividualsChart", () => {
  const times = [84_000, 84_100, 84_050, 84_020, 86_000];
  const session = {
    laps: times.map((ms, at) => ({ lapId: `l${at}`, run: at < 3 ? 1 : 2, ms })),
    chart: { centre: 84_434, sigma: 300, lower: 83_534, upper: 85_334, outside: [4], sameSide: [] },
    pointedAt: [{ index: 4, reasons: ["outside the limits" as const] }],
  };

  it("names a pointed-at lap on the drawing, at its point and in its table", async () => {
    const { container } = render(<IndividualsChart {...words} session={session} />);
    expect(drawnWords(container).join(" ")).toContain("lap 5");
    await userEvent.tab();
    await userEvent.keyboard("{End}");
    expect(said()).toBe("Pace laps. pace lap 5, run 2: 1:26.000, worth a second look: outside the limits");
    expect((await rowsOfTable()).at(-1)).toEqual(["5", "2", "1:26.000", "outside the limits"]);
  });

  it("draws 600 laps at most and says so", () => {
    const laps = Array.from({ length: 700 }, (_, at) => ({
      lapId: `l${at}`,
      run: 0,
      ms: 84_000 + (at % 50),
    }));
    render(<IndividualsChart {...words} session={{ ...session, laps, pointedAt: [] }} />);
    expect(screen.getByText("The last 600 of 700 laps are drawn; the table has them all.")).toBeVisible();
  });
});

describe("RangeRowsChart", () => {
  const rows = [
    { id: "a", label: "clean, now", value: 86, low: 80, high: 91 },
    { id: "b", label: "clean, before", value: 60, low: 50, high: 70, soft: true },
  ];
  const draw = () =>
    render(
      <RangeRowsChart
        {...words}
        rows={rows}
        axisTitle="percent of laps"
        axisOf={(values) => percentTicks(values)}
        say={(value) => `${value} %`}
        csvUnit="percent"
      />,
    );

  it("reads each figure with its range", async () => {
    draw();
    await userEvent.tab();
    await userEvent.keyboard("{Home}");
    expect(said()).toBe("Figures. clean, now: 86 %, very likely 80 % to 91 %");
    expect(await rowsOfTable()).toEqual([
      ["clean, now", "86 %", "80 %", "91 %"],
      ["clean, before", "60 %", "50 %", "70 %"],
    ]);
  });

  it("draws the point inside its range, and all inside the drawing", () => {
    const { container } = draw();
    const numbers = [...container.querySelectorAll("svg path")].flatMap((path) =>
      [...(path.getAttribute("d") ?? "").matchAll(/M(-?[\d.]+)/g)].map(([, x]) => Number(x)),
    );
    for (const x of numbers) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(640);
    }
  });
});

describe("PracticeCalendar", () => {
  afterEach(() => void vi.restoreAllMocks());

  const days = [
    { date: "2026-09-01", laps: 19, sessions: 1 },
    { date: "2026-11-21", laps: 1, sessions: 2 },
  ];

  it("gives every month a line, the gap between them too, and each day's laps in figures", async () => {
    const { container } = render(
      <PracticeCalendar {...words} days={days} from="2026-09-01" to="2026-11-24" />,
    );
    expect(drawnWords(container)).toEqual(expect.arrayContaining(["Sep", "Oct", "Nov", "19", "1"]));
    await userEvent.tab();
    await userEvent.keyboard("{End}");
    expect(said()).toBe("Days. Saturday 21 November: 1 lap, 2 sessions");
    expect(await rowsOfTable()).toEqual([
      ["Tue 1 Sep 2026", "1", "19"],
      ["Sat 21 Nov 2026", "2", "1"],
    ]);
  });

  it("numbers the days of every line where months take two", () => {
    vi.spyOn(Element.prototype, "clientWidth", "get").mockReturnValue(340);
    const { container } = render(
      <PracticeCalendar {...words} days={days} from="2026-10-01" to="2026-11-24" />,
    );
    const drawn = drawnWords(container).filter((text) => /^\d+$/.test(text ?? ""));
    const oneMonth = ["1", "5", "10", "15", "17", "20", "25", "30"];
    expect(drawn.filter((text) => oneMonth.includes(text ?? ""))).toEqual([...oneMonth, ...oneMonth, "1"]);
  });

  it("draws a stroke a lap, and says when a stroke is more", () => {
    const { container, unmount } = render(
      <PracticeCalendar {...words} days={days} from="2026-09-01" to="2026-11-24" />,
    );
    const strokes = [...container.querySelectorAll("path")]
      .map((path) => path.getAttribute("d") ?? "")
      .filter((path) => /^M[\d. ]+v-/.test(path))
      .reduce((sum, path) => sum + path.split("M").length - 1, 0);
    expect(strokes).toBe(20);
    expect(screen.getByText("A stroke is a lap, five make a bundle.")).toBeVisible();
    unmount();
    const many = Array.from({ length: 60 }, (_, at) => ({
      date: new Date(Date.UTC(2026, 8, 1 + at)).toISOString().slice(0, 10),
      laps: 45,
      sessions: 1,
    }));
    render(<PracticeCalendar {...words} days={many} from="2026-09-01" to="2026-10-30" />);
    expect(screen.getByText(/^A stroke is 10 laps/)).toBeVisible();
  });

  it("draws two years at most and says so, while the table has every day", async () => {
    render(
      <PracticeCalendar
        {...words}
        days={[{ date: "2020-01-05", laps: 3, sessions: 1 }, ...days]}
        from="2020-01-05"
        to="2026-11-24"
      />,
    );
    expect(screen.getByText(/The last 24 of 83 months are drawn; the table has every day\.$/)).toBeVisible();
    await fromChart(/^Show as a table/);
    expect(within(screen.getByRole("table")).getAllByRole("rowheader")).toHaveLength(3);
  });
});
