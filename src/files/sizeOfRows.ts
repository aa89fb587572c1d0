import { isPasteText, readPasteText } from "./pasteText.ts";

/** Pasted text is small; a larger file is not read whole for the sake of its size. */
const mostPasted = 2_000_000;

/** Bytes of the rows in a backup file or in pasted text, as text; packed ones are unpacked and counted, not kept. */
export async function sizeOfRows(source: Blob): Promise<number> {
  const start = new Uint8Array(await source.slice(0, 2).arrayBuffer());
  if (start[0] === 0x1f && start[1] === 0x8b) return unpackedSize(source);
  if (source.size > mostPasted) return source.size;
  const text = await source.text();
  const pasted = isPasteText(text) ? readPasteText(text) : undefined;
  return pasted?.ok === true ? sizeOfRows(new Blob([pasted.bytes])) : source.size;
}

async function unpackedSize(packed: Blob): Promise<number> {
  const reader = packed.stream().pipeThrough(new DecompressionStream("gzip")).getReader();
  let size = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) size += part.value.length;
  return size;
}
