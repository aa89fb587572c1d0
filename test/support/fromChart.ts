import { screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";

/** Chooses something from a chart's menu: its table, or a file; from the only chart on the page where none is named. */
export async function fromChart(item: RegExp, chart = ""): Promise<void> {
  await userEvent.click(screen.getByRole("button", { name: new RegExp(`^Table, files: ${chart}`) }));
  await userEvent.click(screen.getByRole("menuitem", { name: item }));
}
