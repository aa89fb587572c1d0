import { cleanup, configure, render, screen, waitFor } from "@testing-library/react";
import { Suspense } from "react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { laterPart } from "#ui/laterPart.ts";

configure({ asyncUtilTimeout: 20_000 });

const reload = vi.fn();
const evening = Date.UTC(2026, 10, 25, 18);
const setNow = (ms: number) => vi.spyOn(Date, "now").mockReturnValue(ms);
const asked = vi.fn(async () => new Response());

beforeEach(() => {
  reload.mockClear();
  asked.mockClear().mockResolvedValue(new Response());
  window.sessionStorage.clear();
  vi.stubGlobal("fetch", asked);
  vi.stubGlobal("location", { pathname: "/", reload });
  setNow(evening);
  vi.spyOn(console, "error").mockImplementation(() => undefined);
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

const whyNot = "Failed to fetch dynamically imported module";

/** Draws a part whose script does not come through. */
function drawMissing(): void {
  const Part = laterPart<object>(() => Promise.reject(new TypeError(whyNot)));
  render(
    <FaultBoundary what="Targets">
      <Suspense fallback={<p>Opening Targets</p>}>
        <Part />
      </Suspense>
    </FaultBoundary>,
  );
}

describe("a part that does not come through", () => {
  it("loads the page anew, and no fault is shown meanwhile", async () => {
    drawMissing();
    await waitFor(() => expect(reload).toHaveBeenCalledOnce());
    expect(screen.getByText("Opening Targets")).toBeVisible();
    expect(screen.queryByRole("alert")).toBeNull();
  });

  it("is told of where it fails again within a minute, and loads the page anew after that", async () => {
    drawMissing();
    await waitFor(() => expect(reload).toHaveBeenCalledOnce());
    cleanup();
    setNow(evening + 59_999);
    drawMissing();
    expect(await screen.findByRole("alert")).toHaveTextContent(`Targets could not be shown.`);
    expect(screen.getByRole("alert")).toHaveTextContent(whyNot);
    expect(reload).toHaveBeenCalledOnce();
    setNow(evening + 60_000);
    drawMissing();
    await waitFor(() => expect(reload).toHaveBeenCalledTimes(2));
  });

  it.each([
    ["the server is gone", () => asked.mockRejectedValue(new TypeError("Failed to fetch"))],
    ["the server has no page any more", () => asked.mockResolvedValue(new Response("", { status: 404 }))],
    [
      "the tab can remember nothing",
      () =>
        vi.spyOn(Storage.prototype, "setItem").mockImplementation(() => {
          throw new DOMException("no", "SecurityError");
        }),
    ],
  ])(
    "is told of at once where %s: the page would not come back, or be loaded for ever",
    async (_, arrange) => {
      arrange();
      drawMissing();
      expect(await screen.findByRole("alert")).toHaveTextContent(whyNot);
      expect(reload).not.toHaveBeenCalled();
    },
  );

  it("asks no server where the device keeps the app", async () => {
    vi.stubGlobal("navigator", { serviceWorker: { controller: {} } });
    asked.mockRejectedValue(new TypeError("Failed to fetch"));
    drawMissing();
    await waitFor(() => expect(reload).toHaveBeenCalledOnce());
    expect(asked).not.toHaveBeenCalled();
  });
});

it("a part that comes through is drawn with what it is given", async () => {
  const Part = laterPart(async () => ({ name }: { readonly name: string }) => <p>Hello {name}</p>);
  render(
    <Suspense fallback={null}>
      <Part name="driver" />
    </Suspense>,
  );
  expect(await screen.findByText("Hello driver")).toBeVisible();
  expect(reload).not.toHaveBeenCalled();
});
