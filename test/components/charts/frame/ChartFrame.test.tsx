import { render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { ChartFrame } from "#charts/frame/ChartFrame.tsx";
import type { ChartTable } from "#charts/frame/chartTable.ts";
import type { WalkSeries } from "#charts/frame/useWalk.ts";
import { fromChart } from "../../../support/fromChart.ts";

const hostile = `</text><script>alert("x")</script>`;
const series: readonly WalkSeries[] = [
  {
    name: "Sessions",
    points: Array.from({ length: 15 }, (_, x) => ({ x, y: x, text: `session ${x + 1}`, id: `s${x + 1}` })),
  },
  {
    name: "Personal bests",
    points: [
      { x: 2, y: 9, text: "best of session 3" },
      { x: 11, y: 8, text: "best of session 12" },
    ],
  },
];
const table: ChartTable = {
  columns: [
    { key: "name", title: "session", csvTitle: "session" },
    { key: "usual", title: "usual", csvTitle: "usual_s", figures: true },
  ],
  rows: [
    { id: "1", cells: { name: { text: '=1+1, "wet"' }, usual: { text: "1:24.094", value: 84.094 } } },
    { id: "2", cells: { name: { text: "−0.312 s", value: -0.312 }, usual: { text: "—", value: "" } } },
  ],
};

function draw(onOpen?: (id: string) => void) {
  render(
    <ChartFrame
      title={`Median down 0.42 s ${hostile}`}
      reading="Surely more than 0.2 s."
      asOf="2026-10-14"
      fileName="Varnholt Ring"
      table={table}
      series={series}
      note="600 of 900 sessions are drawn."
      onOpen={onOpen}
    >
      {({ width }) => (
        <svg width={width} height={100} aria-hidden="true">
          <text>{hostile}</text>
          <circle data-passing="" r={3} />
        </svg>
      )}
    </ChartFrame>,
  );
  return { user: userEvent.setup(), figure: screen.getByRole("figure") };
}

const saved: { blob: Blob; name: string }[] = [];

beforeEach(() => {
  saved.length = 0;
  let last: Blob | undefined;
  URL.createObjectURL = (blob: Blob) => {
    last = blob;
    return "blob:test";
  };
  URL.revokeObjectURL = () => undefined;
  vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (this: HTMLAnchorElement) {
    if (last !== undefined) saved.push({ blob: last, name: this.download });
  });
});
afterEach(() => vi.restoreAllMocks());

describe("a chart by keyboard", () => {
  it("is named by its finding and its reading", () => {
    const { figure } = draw();
    expect(figure).toHaveAccessibleName(`Median down 0.42 s ${hostile}. Surely more than 0.2 s.`);
    expect(screen.getByRole("heading", { name: /Median down/ })).toBeInTheDocument();
  });

  it("walks its points and reads each out once", async () => {
    const { user, figure } = draw();
    await user.tab();
    expect(figure).toHaveFocus();
    const region = screen.getByRole("status");
    for (const [key, text] of [
      ["{ArrowRight}", "Sessions. session 1"],
      ["{ArrowRight}", "session 2"],
      ["{PageDown}", "session 12"],
      ["{PageDown}", "session 15"],
      ["{ArrowRight}", "session 15"],
      ["{PageUp}", "session 5"],
      ["{Home}", "session 1"],
      ["{ArrowLeft}", "session 1"],
      ["{End}", "session 15"],
      ["{ArrowDown}", "Personal bests. best of session 12"],
      ["{ArrowUp}", "Sessions. session 12"],
    ] as const) {
      await user.keyboard(key);
      expect(region, key).toHaveTextContent(new RegExp(`^${text}$`));
    }
    await user.keyboard("{Escape}");
    expect(region).toHaveTextContent(/^$/);
    expect(figure).toHaveFocus();
  });

  it("opens the point it stands at with Enter, and nothing before", async () => {
    const onOpen = vi.fn();
    const { user } = draw(onOpen);
    await user.tab();
    await user.keyboard("{Enter}");
    expect(onOpen).not.toHaveBeenCalled();
    await user.keyboard("{ArrowRight}{ArrowRight}{Enter}");
    expect(onOpen).toHaveBeenCalledExactlyOnceWith("s2");
  });
});

describe("the menu of a chart", () => {
  const opener = () => screen.getByRole("button", { name: /^Table, files/ });
  const items = () => screen.queryAllByRole("menuitem").map((item) => item.textContent);

  it("is one button beside the chart, in the order of Tab after it", async () => {
    const { user, figure } = draw();
    expect(screen.getAllByRole("button")).toEqual([opener()]);
    await user.tab();
    expect(figure).toHaveFocus();
    await user.tab();
    expect(opener()).toHaveFocus();
    expect(opener()).toHaveAttribute("aria-haspopup", "menu");
    expect(items()).toEqual([]);
  });

  it("opens by keyboard at its first or last item, goes round, and finds an item by its letter", async () => {
    const { user } = draw();
    opener().focus();
    await user.keyboard("{ArrowDown}");
    expect(opener()).toHaveAttribute("aria-expanded", "true");
    expect(items()).toEqual(["Show as a table", "Save as PNG", "Save as SVG", "Save as CSV"]);
    for (const [key, item] of [
      ["{ArrowUp}", "Save as CSV"],
      ["{ArrowDown}", "Show as a table"],
      ["{End}", "Save as CSV"],
      ["{Home}", "Show as a table"],
      ["s", "Save as PNG"],
    ] as const) {
      await user.keyboard(key);
      expect(screen.getByRole("menuitem", { name: item }), key).toHaveFocus();
    }
    await user.keyboard("{Escape}");
    expect(items()).toEqual([]);
    expect(opener()).toHaveFocus();
    await user.keyboard("{ArrowUp}");
    expect(screen.getByRole("menuitem", { name: "Save as CSV" })).toHaveFocus();
  });

  it("closes when the focus goes on, and when something else is pressed", async () => {
    const { user, figure } = draw();
    await user.click(opener());
    await user.tab();
    expect(items()).toEqual([]);
    await user.click(opener());
    await user.click(figure);
    expect(items()).toEqual([]);
  });

  it("chosen by Enter does what it says and gives the focus back", async () => {
    const { user } = draw();
    opener().focus();
    await user.keyboard("{Enter}{Enter}");
    expect(screen.getByRole("table")).toBeInTheDocument();
    expect(opener()).toHaveFocus();
  });
});

describe("what stands behind a chart", () => {
  it("shows the table at a button, and how many points were left out", async () => {
    draw();
    expect(screen.getByText("600 of 900 sessions are drawn.")).toBeVisible();
    expect(screen.queryByRole("table")).not.toBeInTheDocument();
    await fromChart(/^Show as a table/);
    expect(within(screen.getByRole("table")).getByRole("cell", { name: "1:24.094" })).toBeInTheDocument();
    await fromChart(/^Hide the table/);
    expect(screen.queryByRole("table")).not.toBeInTheDocument();
  });

  it("saves the figures as CSV: numbers as numbers, no text taken for a formula", async () => {
    draw();
    await fromChart(/CSV$/);
    expect(saved[0]?.name).toBe("Varnholt-Ring-2026-10-14.csv");
    const bytes = new Uint8Array((await saved[0]?.blob.arrayBuffer()) ?? new ArrayBuffer(0));
    expect([...bytes.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(new TextDecoder().decode(bytes)).toBe(
      'session,usual_s\r\n"\'=1+1, ""wet""",84.094\r\n-0.312,\r\n',
    );
  });

  it("saves a picture in which markup in a name stays text and passing marks are left out", async () => {
    draw();
    await fromChart(/SVG$/);
    expect(saved[0]?.name).toBe("Varnholt-Ring-2026-10-14.svg");
    const text = (await saved[0]?.blob.text()) ?? "";
    const picture = new DOMParser().parseFromString(text, "image/svg+xml");
    expect(picture.querySelector("parsererror")).toBeNull();
    expect(picture.querySelector("script")).toBeNull();
    expect(picture.querySelector("circle")).toBeNull();
    const words = [...picture.querySelectorAll("text")].map((node) => node.textContent).join(" ");
    expect(words).toContain("Median down 0.42 s");
    expect(words).toContain(hostile);
    expect(words).toContain("Wed 14 Oct 2026");
  });

  it("says when a picture could not be made", async () => {
    draw();
    HTMLImageElement.prototype.decode = () => Promise.reject(new Error("the picture is too large"));
    await fromChart(/PNG$/);
    const said = "The PNG file could not be made: the picture is too large.";
    await waitFor(() => expect(screen.getByRole("alert")).toHaveTextContent(said));
    expect(saved).toHaveLength(0);
  });
});
