import styles from "./VerdictShape.module.css";

/** What stands beside the word of a verdict, so that it is known before it is read. */
export type VerdictShapeOf = "faster" | "slower" | "steady" | "as usual" | "untidy" | "too few";

/** Drawn as if by hand: lines that are not quite straight, in a box of 64 by 48. */
const strokes: Readonly<Record<Exclude<VerdictShapeOf, "untidy">, string>> = {
  faster: "M4 10 C14 8 20 15 29 23 S47 39 60 38",
  slower: "M4 38 C14 40 20 33 29 25 S47 9 60 10",
  steady: "M4 18 C18 16.5 30 19 44 17.5 S58 18.5 60 17.5 M4 30 C16 31.5 30 29 42 30.5 S56 29.5 60 30.5",
  "as usual": "M4 24.5 C16 22.5 28 26 40 24 S56 23.5 60 24.5",
  "too few": "M30 6 C20 5.5 16 5.5 13 6.5 C11.5 20 11.8 30 13 41.5 C17 42.5 22 42 30 42",
};

const dots = [
  [8, 14],
  [20, 33],
  [28, 9],
  [38, 25],
  [46, 41],
  [57, 17],
] as const;

/** A falling line, a rising one, a narrow band, a flat line, scattered dots, an open bracket. */
export function VerdictShape({ of }: { readonly of: VerdictShapeOf }) {
  return (
    <svg viewBox="0 0 64 48" aria-hidden="true" className={styles["shape"]} data-of={of}>
      {of === "untidy" ? (
        dots.map(([x, y]) => <circle key={x} cx={x} cy={y} r={4.5} />)
      ) : (
        <path d={strokes[of]} />
      )}
    </svg>
  );
}
