type Permission = "granted" | "prompt" | "denied";

/** The parts of the File System Access API that not every browser, and so not every type, has. */
interface AskedHandle {
  readonly queryPermission?: (how: { readonly mode: "readwrite" }) => Promise<Permission>;
  readonly requestPermission?: (how: { readonly mode: "readwrite" }) => Promise<Permission>;
}
type Picker = (how: {
  readonly id: string;
  readonly mode: "readwrite";
}) => Promise<FileSystemDirectoryHandle>;

const how = { mode: "readwrite" } as const;
const picker = () => (globalThis as { readonly showDirectoryPicker?: Picker }).showDirectoryPicker;

/** Whether this browser lets a page write into a folder of the driver's choice. */
export function canChooseFolder(): boolean {
  return typeof picker() === "function";
}

/** Asks the driver for a folder. Undefined when the dialog is closed without one. Call it from a click. */
export async function chooseFolder(): Promise<FileSystemDirectoryHandle | undefined> {
  try {
    return await picker()?.({ id: "lap-ledger", ...how });
  } catch (error) {
    if (error instanceof DOMException && error.name === "AbortError") return undefined;
    throw error;
  }
}

/** Whether the folder may be written to without asking again. */
export async function mayWrite(folder: FileSystemDirectoryHandle): Promise<boolean> {
  const { queryPermission } = folder as AskedHandle;
  return queryPermission === undefined || (await queryPermission.call(folder, how)) === "granted";
}

/** Asks the driver to allow writing again. Call it from a click. */
export async function askToWrite(folder: FileSystemDirectoryHandle): Promise<boolean> {
  const { requestPermission } = folder as AskedHandle;
  return requestPermission === undefined || (await requestPermission.call(folder, how)) === "granted";
}
