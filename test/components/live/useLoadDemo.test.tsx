import { act, waitFor } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import { dump } from "#db";
import { useLoadDemo } from "#live";
import { aLappedEvening } from "../../support/aLappedEvening.ts";
import { fileOf } from "../../support/aShelvedEvening.ts";
import { hooksAt, said } from "../../support/hooksAt.tsx";

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

/** The page with the way to the demo, which lies at an address that answers so. */
async function demoAt(answer: () => Promise<Response>) {
  vi.stubGlobal("fetch", vi.fn(answer));
  const page = await hooksAt(aLappedEvening);
  const file = await fileOf(await dump(page.book), "Demo season");
  const { result, unmount } = page.draw(() => useLoadDemo("demo.json"));
  return { ...page, file, unmount, demo: () => result.current };
}

it("the demo is fetched, becomes a logbook of its own and is opened; the second time it is opened as it is", async () => {
  let bytes = new Blob();
  const { demo, file, openOther, shelf } = await demoAt(
    async () => ({ ok: true, blob: async () => bytes }) as Response,
  );
  bytes = file;
  expect(demo().isLoading).toBe(false);
  await act(() => new Promise((done) => setTimeout(done, 50)));
  await act(async () => demo().load());
  await waitFor(() => expect(openOther).toHaveBeenCalledTimes(1));
  await waitFor(() => expect(demo().isLoading).toBe(false));
  expect(fetch).toHaveBeenCalledWith("demo.json");
  const [name] = openOther.mock.calls[0] ?? [];
  expect(await shelf.logbooks.get(name ?? "")).toMatchObject({ kind: "demo", title: "Demo season" });
  await act(() => new Promise((done) => setTimeout(done, 50)));
  await act(async () => demo().load());
  expect(openOther.mock.calls).toEqual([[name], [name]]);
  expect(fetch).toHaveBeenCalledTimes(1);
});

it("whoever leaves the page while the demo is loaded still gets it", async () => {
  let bytes = new Blob();
  const { demo, file, openOther, unmount } = await demoAt(
    async () => ({ ok: true, blob: async () => bytes }) as Response,
  );
  bytes = file;
  act(() => demo().load());
  unmount();
  await waitFor(() => expect(openOther).toHaveBeenCalledTimes(1));
});

it("while the demo is being fetched that is shown, and where it cannot be, that is said", async () => {
  let fail: (error: unknown) => void = () => undefined;
  const { demo, openOther } = await demoAt(
    () =>
      new Promise((_, reject) => {
        fail = reject;
      }),
  );
  await act(async () => demo().load());
  expect(demo().isLoading).toBe(true);
  await act(async () => fail(new TypeError("no network")));
  expect(said()).toEqual([
    {
      kind: "fault",
      text: "Demo logbook not loaded. The file could not be fetched. Try again when the connection is back. Nothing was changed.",
    },
  ]);
  expect(demo().isLoading).toBe(false);
  expect(openOther).not.toHaveBeenCalled();
});
