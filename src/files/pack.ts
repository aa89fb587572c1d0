/** A text packed as gzip. */
export function pack(text: string): Promise<Blob> {
  const packed = new Blob([text]).stream().pipeThrough(new CompressionStream("gzip"));
  return new Response(packed).blob();
}
