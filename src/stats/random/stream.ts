import { xoroshiro128plusFromState } from "pure-rand/generator/xoroshiro128plus";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";

/**
 * A stream of random bits that belongs to a seed and a list of keys (draw, session …): the same seed and keys give
 * the same stream whatever else is drawn, so asking about one more session never moves the others.
 *
 * The keys are mixed into the state of xoroshiro128+ (Blackman & Vigna 2018) by the finalizer of MurmurHash3
 * (Appleby, public domain).
 * @param seed whole number
 * @param keys whole numbers
 */
export function stream(seed: number, ...keys: readonly number[]): RandomGenerator {
  let a = mix(seed | 0, 0x9e3779b9);
  let b = mix(seed | 0, 0x85ebca6b);
  for (const key of keys) {
    a = mix(a ^ key, 0xc2b2ae35);
    b = mix(b ^ (key + 0x27d4eb2f), 0x165667b1);
  }
  return xoroshiro128plusFromState([a, b, mix(a ^ b, 0x2545f491), mix(b, a) | 1]);
}

function mix(value: number, salt: number): number {
  let h = Math.imul(value ^ salt, 0x9e3779b1) + salt;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) | 0;
}
