import { screen } from "@testing-library/react";
import { expect, it, vi } from "vitest";
import { renderLog } from "../../../support/logPage.tsx";

vi.mock("../../../../src/screens/log/start/readers.ts", () => {
  throw new Error("no network");
});

it("where what reads a target cannot be fetched, a press says so, and without the target the session starts", async () => {
  const { user } = await renderLog(undefined, "#/log", Date.UTC(2026, 11, 2, 18));
  await user.type(await screen.findByRole("combobox", { name: "Car" }), "Kart");
  await user.type(screen.getByRole("combobox", { name: "Track layout" }), "Varnholt Ring");
  await user.click(screen.getByRole("button", { name: /^Focus, target/ }));
  await user.type(screen.getByLabelText("Target of the day"), "1:25.000");
  await user.click(screen.getByRole("button", { name: "Start the session" }));
  expect(await screen.findByText(/The target cannot be read yet/)).toBeVisible();
  await user.clear(screen.getByLabelText("Target of the day"));
  await user.click(screen.getByRole("button", { name: "Start the session" }));
  expect(await screen.findByRole("region", { name: "Entry" })).toBeVisible();
});
