import { vi } from "vitest";

/** Catches what the page hands to the browser's downloads, which jsdom has not; newest last. */
export function catchDownloads(): readonly { readonly name: string; readonly blob: Blob }[] {
  const saved: { name: string; blob: Blob }[] = [];
  let last: Blob | undefined;
  URL.createObjectURL = (blob: Blob) => {
    last = blob;
    return "blob:here";
  };
  URL.revokeObjectURL = () => undefined;
  vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (this: HTMLAnchorElement) {
    if (last) saved.push({ name: this.download, blob: last });
  });
  return saved;
}
