// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { pickFile, saveFile } from "#files";

const saved: { name: string; href: string }[] = [];
const blobs: Blob[] = [];
beforeEach(() => {
  saved.length = 0;
  blobs.length = 0;
  vi.useFakeTimers();
  URL.createObjectURL = (blob: Blob) => `blob:${blobs.push(blob)}`;
  URL.revokeObjectURL = vi.fn();
  vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (this: HTMLAnchorElement) {
    saved.push({ name: this.download, href: this.href });
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

test("a file is handed to the browser under its name, and the address is given back later", () => {
  saveFile("Mine-2026-10-14.json", '{"a":1}');
  expect(saved).toEqual([{ name: "Mine-2026-10-14.json", href: "blob:1" }]);
  expect(blobs[0]).toMatchObject({ size: 7, type: "application/json" });
  expect(document.querySelectorAll("a")).toHaveLength(0);
  expect(URL.revokeObjectURL).not.toHaveBeenCalled();
  vi.runAllTimers();
  expect(URL.revokeObjectURL).toHaveBeenCalledWith("blob:1");
});

/** What the driver does with the dialog of the file field. */
function whenAsked(answer: (field: HTMLInputElement) => void) {
  vi.spyOn(HTMLInputElement.prototype, "click").mockImplementation(function (this: HTMLInputElement) {
    answer(this);
  });
}

test("the chosen file comes back", async () => {
  const file = new File(["x"], "backup.json");
  whenAsked((field) => {
    expect(field.accept).toBe(".json");
    Object.defineProperty(field, "files", { value: [file] });
    field.dispatchEvent(new Event("change"));
  });
  expect(await pickFile(".json")).toBe(file);
  expect(document.querySelectorAll("input")).toHaveLength(0);
});

test("a dialog closed without a file comes back with none", async () => {
  whenAsked((field) => field.dispatchEvent(new Event("cancel")));
  expect(await pickFile(".json")).toBeUndefined();
});
