import { screen } from "@testing-library/react";
import { expect, it, vi } from "vitest";
import { pressStart } from "../../../support/pressStart.ts";

vi.mock("../../../../src/screens/log/start/readers.ts", () => {
  throw new Error("no network");
});

it("where what reads a target cannot be fetched, a press says so, and without the target the session starts", async () => {
  const user = await pressStart();
  expect(await screen.findByText(/The target cannot be read yet/)).toBeVisible();
  await user.clear(screen.getByLabelText("Target of the day"));
  await user.click(screen.getByRole("button", { name: "Start the session" }));
  expect(await screen.findByRole("region", { name: "Entry" })).toBeVisible();
});
