/** Whether this browser can pack; it can unpack then, too. */
export function canPack(): boolean {
  return typeof CompressionStream === "function";
}

/** A text packed as gzip; the same text gives the same bytes. */
export async function pack(text: string): Promise<Uint8Array<ArrayBuffer>> {
  const packer = new CompressionStream("gzip");
  const into = packer.writable.getWriter();
  const written = into.write(new TextEncoder().encode(text)).then(() => into.close());
  const packed = await new Response(packer.readable).arrayBuffer();
  await written;
  return new Uint8Array(packed);
}

/** A text packed where the browser can, else as plain bytes; `readText` reads both. */
export function packed(text: string): Promise<Uint8Array<ArrayBuffer>> {
  return canPack() ? pack(text) : Promise.resolve(new TextEncoder().encode(text));
}
