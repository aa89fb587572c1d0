/**
 * A whole number under 2³² that stands for a text, always the same one (FNV-1a, 32 bits: Fowler, Noll & Vo, IETF draft
 * "The FNV Non-Cryptographic Hash Algorithm").
 * @param text of ASCII signs, as an id
 * @example seedOf("a") // 0xe40c292c
 */
export function seedOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}
