import { screen, waitFor } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { useDevice } from "#state/device.ts";
import { DataScreen } from "../../../../src/screens/data/DataScreen.tsx";
import { pick } from "../../../support/pick.ts";
import { renderAt } from "../../../support/renderAt.tsx";

afterEach(() => vi.unstubAllGlobals());

describe("preferences", () => {
  it("are stored as they are chosen, and are there after a reload", async () => {
    const { user, reload } = await renderAt("#/data?part=preferences", <DataScreen />);
    await user.click(await screen.findByRole("radio", { name: "hundredths" }));
    await user.click(screen.getByRole("radio", { name: "the PB" }));
    pick(screen.getByRole("combobox", { name: "A day begins at" }), "06:00");
    await user.click(screen.getByRole("radio", { name: "2" }));
    await user.click(screen.getByRole("radio", { name: "dark" }));
    await waitFor(() => expect(screen.getByRole("radio", { name: "2" })).toBeChecked());
    reload();
    expect(await screen.findByRole("radio", { name: "hundredths" })).toBeChecked();
    expect(screen.getByRole("radio", { name: "the PB" })).toBeChecked();
    expect(screen.getByRole("combobox", { name: "A day begins at" })).toHaveDisplayValue("06:00");
    expect(screen.getByRole("radio", { name: "2" })).toBeChecked();
    expect(useDevice.getState().theme).toBe("dark");
  });

  it("keeps a margin that cannot be, and says what would be right", async () => {
    const { user, reload } = await renderAt("#/data?part=preferences", <DataScreen />);
    const margin = await screen.findByRole("textbox", { name: "A lap is near the best within" });
    await waitFor(() => expect(margin).toHaveValue("0.5"));
    await user.clear(margin);
    await user.type(margin, "half");
    await user.tab();
    expect(margin).toHaveValue("half");
    expect(margin).toHaveAccessibleDescription(
      /“half” is not a number\. Write a number from 0 to 100 percent\./,
    );
    await user.clear(margin);
    await user.type(margin, "0,8{Enter}");
    await waitFor(() => expect(margin).toHaveValue("0.8"));
    reload();
    const again = await screen.findByRole("textbox", { name: "A lap is near the best within" });
    await waitFor(() => expect(again).toHaveValue("0.8"));
  });
});

describe("storage", () => {
  const withStorage = (storage: object | undefined) => vi.stubGlobal("navigator", { ...navigator, storage });

  it("says when the browser keeps the data, and never speaks of free space", async () => {
    withStorage({ persisted: async () => true, estimate: async () => ({ usage: 4_200_000, quota: 10e9 }) });
    await renderAt("#/data", <DataScreen />);
    expect(await screen.findByText(/has promised to keep the data/)).toBeVisible();
    expect(screen.getByText(/about 4\.2 MB/)).toBeVisible();
    expect(document.body).not.toHaveTextContent(/10 GB|10\.0 GB|free/);
    expect(screen.queryByRole("button", { name: "Ask the browser to keep them" })).toBeNull();
  });

  it("asks when told to, and says the answer", async () => {
    withStorage({ persisted: async () => false, persist: async () => false, estimate: async () => ({}) });
    const { user } = await renderAt("#/data", <DataScreen />);
    await user.click(await screen.findByRole("button", { name: "Ask the browser to keep them" }));
    expect(
      await screen.findByText(/has not promised to keep anything.*was asked, and declined/),
    ).toBeVisible();
    expect(useDevice.getState().askedToPersist).toBe(false);
  });

  it.each([
    ["there is nothing to ask", undefined],
    [
      "asking is refused",
      {
        persisted: () => Promise.reject(new DOMException("no", "SecurityError")),
        estimate: () => Promise.reject(new DOMException("no", "SecurityError")),
      },
    ],
  ])("does not know where %s", async (_, storage) => {
    withStorage(storage);
    await renderAt("#/data", <DataScreen />);
    expect(await screen.findByText(/does not say whether it keeps the data/)).toBeVisible();
  });

  it("says what is missing without https", async () => {
    vi.stubGlobal("isSecureContext", false);
    await renderAt("#/data", <DataScreen />);
    expect(await screen.findByText(/backups carry no checksum/)).toBeVisible();
  });
});
