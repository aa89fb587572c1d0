import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it, vi } from "vitest";
import { Disclosure } from "#ui/Disclosure.tsx";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { ProgressBar } from "#ui/ProgressBar.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";

describe("RuledTable", () => {
  it("has row and column headers, and the balance in its foot", () => {
    render(
      <RuledTable
        caption="Where the time went"
        columns={[
          { key: "line", title: "line" },
          { key: "seconds", title: "seconds", figures: true },
        ]}
        rows={[{ id: "pace", cells: { line: "pace", seconds: "+0.420" } }]}
        balance={{ id: "balance", cells: { line: "balance", seconds: "+0.420" } }}
      />,
    );
    const table = screen.getByRole("table", { name: "Where the time went" });
    expect(
      within(table)
        .getAllByRole("columnheader")
        .map((head) => head.textContent),
    ).toEqual(["line", "seconds"]);
    expect(within(table).getByRole("rowheader", { name: "pace" })).toBeInTheDocument();
    expect(within(table).getByRole("rowheader", { name: "balance" }).closest("tfoot")).not.toBeNull();
  });
});

describe("Disclosure", () => {
  it("shows its answer while folded and its figures only when opened", async () => {
    render(
      <Disclosure title="Am I getting steadier?" answer="Scatter 0.41 s, was 0.63">
        <p>The chart</p>
      </Disclosure>,
    );
    const button = screen.getByRole("button", { name: /Am I getting steadier\?.*Scatter 0.41 s/ });
    expect(button).toHaveAttribute("aria-expanded", "false");
    expect(screen.queryByText("The chart")).not.toBeInTheDocument();
    await userEvent.click(button);
    expect(button).toHaveAttribute("aria-expanded", "true");
    expect(screen.getByText("The chart")).toBeVisible();
  });
});

describe("LiveRegion", () => {
  it("is polite, and interrupts only when urgent", () => {
    const { rerender } = render(<LiveRegion message="" />);
    const region = screen.getByRole("status");
    rerender(<LiveRegion message="lap 4 stored" />);
    expect(region).toHaveTextContent("lap 4 stored");
    rerender(<LiveRegion message="Lap 4 is not stored" urgent />);
    expect(screen.getByRole("alert")).toHaveTextContent("Lap 4 is not stored");
  });
});

describe("ProgressBar", () => {
  it.each([
    [0.7, "70"],
    [1.4, "100"],
    [-0.2, "0"],
  ])("a share of %d is drawn as %s percent and said in words", (share, percent) => {
    render(<ProgressBar label="To 1:23.000" share={share} text="0.42 of 0.60 s" />);
    const bar = screen.getByRole("progressbar", { name: "To 1:23.000" });
    expect(bar).toHaveAttribute("aria-valuenow", percent);
    expect(bar).toHaveAttribute("aria-valuetext", "0.42 of 0.60 s");
  });
});

describe("FaultBoundary", () => {
  it("says the fault, offers a backup, and draws again when asked", async () => {
    const quiet = vi.spyOn(console, "error").mockImplementation(() => undefined);
    let broken = true;
    function Part() {
      if (broken) throw new Error("The logbook is closed");
      return <p>All there</p>;
    }
    render(
      <FaultBoundary what="The review" backup={<button type="button">Save a backup</button>}>
        <Part />
      </FaultBoundary>,
    );
    expect(screen.getByRole("alert")).toHaveTextContent("The review could not be shown.");
    expect(screen.getByRole("alert")).toHaveTextContent("The logbook is closed");
    expect(screen.getByRole("button", { name: "Save a backup" })).toBeInTheDocument();
    broken = false;
    await userEvent.click(screen.getByRole("button", { name: "Try again" }));
    expect(screen.getByText("All there")).toBeInTheDocument();
    quiet.mockRestore();
  });

  it("draws again by itself when one goes elsewhere, also within its place", async () => {
    const quiet = vi.spyOn(console, "error").mockImplementation(() => undefined);
    window.location.hash = "#/review/bad";
    const Part = () => {
      if (window.location.hash.endsWith("bad")) throw new Error("That one is broken");
      return <p>All there</p>;
    };
    render(
      <FaultBoundary what="The review">
        <Part />
      </FaultBoundary>,
    );
    expect(screen.getByRole("alert")).toHaveTextContent("That one is broken");
    window.location.hash = "#/review/good";
    expect(await screen.findByText("All there")).toBeInTheDocument();
    quiet.mockRestore();
  });
});
