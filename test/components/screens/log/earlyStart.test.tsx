import { screen } from "@testing-library/react";
import { expect, it, vi } from "vitest";
import { renderLog } from "../../../support/logPage.tsx";

const fetching = vi.hoisted(() => {
  let end: () => void = () => undefined;
  const wait = new Promise<void>((resolve) => {
    end = resolve;
  });
  return { wait, end };
});

// What reads the fields of the folded part comes over the net, however long that takes.
vi.mock("../../../../src/screens/log/start/readers.ts", async (original) => {
  await fetching.wait;
  return original();
});

it("a press before a typed target can be read counts as soon as it can", async () => {
  const { user } = await renderLog(undefined, "#/log", Date.UTC(2026, 11, 2, 18));
  await user.type(await screen.findByRole("combobox", { name: "Car" }), "Kart");
  await user.type(screen.getByRole("combobox", { name: "Track layout" }), "Varnholt Ring");
  await user.click(screen.getByRole("button", { name: /^Focus, target/ }));
  await user.type(screen.getByLabelText("Target of the day"), "1:25.000");
  await user.click(screen.getByRole("button", { name: "Start the session" }));
  expect(screen.queryByText(/cannot be read yet/)).toBeNull();
  expect(screen.getByRole("button", { name: "Start the session" })).toBeVisible();
  fetching.end();
  expect(await screen.findByText(/target of the day 1:25\.000/)).toBeVisible();
});
