import { act, waitFor } from "@testing-library/react";
import { expect, it } from "vitest";
import { LedgerFault } from "#db";
import { type SendOut, useErrand } from "#live";
import { hooksAt, said } from "../../support/hooksAt.tsx";

interface Sent {
  readonly logbook: string;
  readonly errand: string;
  readonly details: unknown;
  readonly follow: Parameters<SendOut>[3];
  readonly resolve: (result: unknown) => void;
  readonly reject: (error: unknown) => void;
}

/** A page whose errands wait until the test answers them. */
async function waitingPage(how?: Parameters<typeof useErrand>[0]) {
  const sent: Sent[] = [];
  const sendOut = (logbook: string, errand: string, details: unknown, follow: Sent["follow"]) =>
    new Promise((resolve, reject) => sent.push({ logbook, errand, details, follow, resolve, reject }));
  const page = await hooksAt(undefined, { sendOut: sendOut as unknown as SendOut });
  const drawn = page.draw(() => useErrand(how));
  const send = (isSmall = false) => {
    let result: Promise<unknown> = Promise.resolve();
    act(() => {
      result = drawn.result.current.send("backup", { title: "Evenings", isSmall });
    });
    return result;
  };
  return { ...page, ...drawn, sent, send };
}

it("an errand goes out on the open logbook, says how far it is, and brings its result", async () => {
  const { result, send, sent, book } = await waitingPage();
  expect(result.current.progress).toBeUndefined();
  const done = send(true);
  expect(result.current.progress).toEqual({ step: "Beginning" });
  expect(sent).toMatchObject([
    { logbook: book.name, errand: "backup", details: { title: "Evenings", isSmall: true } },
  ]);
  act(() => sent[0]?.follow?.onProgress?.({ step: "Writing the file", share: 0.5 }));
  expect(result.current.progress).toEqual({ step: "Writing the file", share: 0.5 });
  await act(async () => sent[0]?.resolve("bytes"));
  expect(await done).toBe("bytes");
  expect(result.current.progress).toBeUndefined();
  expect(said()).toEqual([]);
});

it("a second errand stops the first, which says nothing any more", async () => {
  const { result, send, sent } = await waitingPage();
  const first = send();
  const second = send();
  expect(sent.map(({ follow }) => follow?.signal?.aborted)).toEqual([true, false]);
  act(() => sent[0]?.follow?.onProgress?.({ step: "late" }));
  await act(async () => sent[0]?.reject(new LedgerFault("cancelled", "Stopped; nothing was changed.")));
  expect(await first).toBeUndefined();
  expect(said()).toEqual([]);
  expect(result.current.progress).toEqual({ step: "Beginning" });
  await act(async () => sent[1]?.resolve("bytes"));
  expect(await second).toBe("bytes");
  expect(result.current.progress).toBeUndefined();
});

it("a fault of the first is said all the same", async () => {
  const { send, sent } = await waitingPage();
  void send();
  void send();
  await act(async () => sent[0]?.reject(new LedgerFault("failed", "Not done.")));
  expect(said()).toEqual([{ kind: "fault", text: "Not done." }]);
});

it("an errand that is stopped by the driver says so, as something done", async () => {
  const { result, send, sent } = await waitingPage();
  const done = send();
  act(() => result.current.stop());
  expect(sent[0]?.follow?.signal?.aborted).toBe(true);
  await act(async () => sent[0]?.reject(new LedgerFault("cancelled", "Stopped; nothing was changed.")));
  expect(await done).toBeUndefined();
  expect(said()).toEqual([{ kind: "done", text: "Stopped; nothing was changed." }]);
  expect(result.current.progress).toBeUndefined();
});

for (const [how, isStopped] of [
  [undefined, true],
  [{}, true],
  [{ goesOn: true }, false],
] as const)
  it(`when the part that sent it leaves the page, an errand sent with ${JSON.stringify(how)} ${isStopped ? "is stopped" : "goes on"}`, async () => {
    const { unmount, send, sent } = await waitingPage(how);
    void send();
    unmount();
    expect(sent[0]?.follow?.signal?.aborted).toBe(isStopped);
  });

it("an errand that found no space says how much its file needs, and an error of the app is not swallowed", async () => {
  const { result, sent } = await waitingPage();
  const source = new Blob(["x".repeat(2_500_000)]);
  let done: Promise<unknown> = Promise.resolve();
  act(() => {
    done = result.current.send("restore", { source, name: "new" });
  });
  await act(async () => sent[0]?.reject(new LedgerFault("quota", "No space.")));
  expect(await done).toBeUndefined();
  await waitFor(() =>
    expect(said()[0]?.text).toMatch(/^No space\. Nothing was changed\. It needs about 2\.5 MB/),
  );
  act(() => {
    done = result.current.send("keep", { title: "Evenings", why: "merge" });
  });
  await act(async () => sent[1]?.reject(new LedgerFault("quota", "No space.")));
  await waitFor(() => expect(said().at(-1)?.text).toBe("No space. Nothing was changed."));
  act(() => {
    done = result.current.send("afterSession", null);
  });
  done.catch(() => undefined);
  await act(async () => sent[2]?.reject(new TypeError("a slip")));
  await expect(done).rejects.toThrow("a slip");
});
