import { screen, waitFor, within } from "@testing-library/react";
import { expect, it } from "vitest";
import { addCombo, type Logbook } from "#db";
import { DataScreen } from "../../../../src/screens/data/DataScreen.tsx";
import { renderAt } from "../../../support/renderAt.tsx";

async function withAccents(book: Logbook) {
  await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Café Ring" } });
  await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Cafe Ring" } });
}

it("asks about names that differ in accents, apart from those that are the same, and joins them at a press", async () => {
  const { user } = await renderAt("#/data", <DataScreen />, withAccents);
  const part = await screen.findByRole("region", { name: "Perhaps the same" });
  expect(screen.queryByRole("region", { name: "The same twice" })).toBeNull();
  const join = within(part).getByRole("button", { name: "It is: make it one" });
  expect(join).toHaveAccessibleDescription("Is the track Cafe Ring your Café Ring?");
  await user.click(join);
  await screen.findAllByText("Two tracks made one.");
  await waitFor(() => expect(screen.queryByRole("region", { name: "Perhaps the same" })).toBeNull());
  await user.click(screen.getByRole("button", { name: "Undo" }));
  expect(await screen.findByRole("region", { name: "Perhaps the same" })).toBeVisible();
});
