import type { Span } from "#physics";

/** Each end of a span by itself. */
export const spanOf = ({ low, mid, high }: Span, of: (value: number) => number): Span => ({
  low: of(low),
  mid: of(mid),
  high: of(high),
});

/** Seconds as whole ms. */
export const inMs = (seconds: Span): Span => spanOf(seconds, (value) => Math.round(value * 1000));

/** All of them added up, end by end. */
export function sumOf(spans: readonly Span[]): Span {
  const sum = (end: keyof Span) => spans.reduce((total, span) => total + span[end], 0);
  return { low: sum("low"), mid: sum("mid"), high: sum("high") };
}
