import { screen } from "@testing-library/react";
import { expect, it } from "vitest";
import type { Corner } from "#domain";
import { useDevice } from "#state/device.ts";
import { ChosenCorners } from "../../../../src/screens/corners/ChosenCorners.tsx";
import { useCornersTonight } from "../../../../src/screens/corners/useCornersTonight.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const corners: readonly Corner[] = [{ number: 1 }, { number: 3, name: "Church" }, { number: 10 }];

function Tonight({ combo = "a", day = "2026-11-25" }: { readonly combo?: string; readonly day?: string }) {
  const { numbers, choose } = useCornersTonight(combo, day);
  return (
    <>
      <ChosenCorners label="Corners for tonight" corners={corners} chosen={numbers ?? []} onChange={choose} />
      <p>{numbers === undefined ? "none" : numbers.join(" ")}</p>
    </>
  );
}
const button = (name: string) => screen.getByRole("button", { name });

it("numbers are chosen and let go, stay in lap order, and are kept on the device", async () => {
  const { user, reload } = await renderAt("#/corners", <Tonight />);
  expect(await screen.findByRole("group", { name: "Corners for tonight" })).toBeVisible();
  await user.click(button("corner 10"));
  await user.click(button("corner 3 Church"));
  expect(screen.getByText("3 10")).toBeVisible();
  expect(button("corner 3 Church")).toHaveAttribute("aria-pressed", "true");
  await user.click(button("corner 10"));
  reload();
  expect(await screen.findByText("3", { selector: "p" })).toBeVisible();
  await user.click(button("corner 3 Church"));
  expect(screen.getByText("none")).toBeVisible();
});

it.each([
  ["another day", { day: "2026-11-26" }],
  ["another combo", { combo: "b" }],
])("%s knows nothing of them", async (_, other) => {
  useDevice.getState().change({ cornersTonight: { comboId: "a", day: "2026-11-25", numbers: [3] } });
  await renderAt("#/corners", <Tonight {...other} />);
  expect(await screen.findByText("none")).toBeVisible();
});
