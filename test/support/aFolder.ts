type Step = "createWritable" | "write" | "close";

/**
 * A folder in memory, in the shape of the browser's. As there, what is written stands in the file only once the
 * stream has been closed; a file made and never closed is empty.
 * @param files names and contents of what is in it
 */
export function aFolder(files: Readonly<Record<string, string>>) {
  const held = new Map<string, Uint8Array>(
    Object.entries(files).map(([name, text]) => [name, new TextEncoder().encode(text)]),
  );
  let failing: Step | undefined;
  const mayFail = (step: Step) => {
    if (failing !== step) return;
    failing = undefined;
    throw new DOMException("no room", "QuotaExceededError");
  };
  const file = (name: string) => ({
    createWritable: async () => {
      mayFail("createWritable");
      let written = new Uint8Array();
      return {
        write: async (bytes: Uint8Array<ArrayBuffer>) => {
          mayFail("write");
          written = bytes;
        },
        close: async () => {
          mayFail("close");
          held.set(name, written);
        },
      };
    },
  });
  const handle = {
    name: "Backups",
    keys: async function* () {
      yield* [...held.keys()];
    },
    getFileHandle: async (name: string, { create = false } = {}) => {
      if (!held.has(name) && !create) throw new DOMException("not here", "NotFoundError");
      if (!held.has(name)) held.set(name, new Uint8Array());
      return file(name);
    },
    removeEntry: async (name: string) => {
      held.delete(name);
    },
  };
  return {
    handle: handle as unknown as FileSystemDirectoryHandle,
    names: () => [...held.keys()],
    failNext: (step: Step) => {
      failing = step;
    },
  };
}
