import { type KeyItem, layKey } from "./layKey.ts";
import styles from "./Marks.module.css";

interface KeyProps {
  readonly items: readonly KeyItem[];
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly em: number;
}

/** What the marks mean, in rows under the chart. */
export function Key({ items, x, y, width, em }: KeyProps) {
  return (
    <g transform={`translate(${x} ${y})`}>
      {layKey(items, width, em).items.map((item) => (
        <g key={item.text} transform={`translate(${item.x} ${item.y})`}>
          <Sample mark={item.mark} em={em} />
          <text x={em * 2.2} dominantBaseline="central" fontSize={em} className={styles["words"]}>
            {item.text}
          </text>
        </g>
      ))}
    </g>
  );
}

function Sample({ mark, em }: { readonly mark: KeyItem["mark"]; readonly em: number }) {
  const half = em * 0.8;
  const line = `M0 0h${2 * half}`;
  switch (mark) {
    case "box":
      return <rect x={half - 4} y={-em / 2} width={8} height={em} className={styles["band"]} />;
    case "bar":
      return <rect y={-em / 3} width={2 * half} height={em * 0.67} className={styles["bar"]} />;
    case "halfBand":
      return <rect y={-em / 3} width={2 * half} height={em * 0.67} className={styles["band"]} />;
    case "paleBand":
      return <rect y={-em / 3} width={2 * half} height={em * 0.67} className={styles["bandPale"]} />;
    case "tick":
      return <path d={`M${half - 7} 0h14`} className={styles["tick"]} />;
    case "point":
      return <path d={`M${half} 0h0`} className={styles["point"]} />;
    case "whisker":
      return <path d={`M${half} ${-em / 2}v${em}m-4 0h8m-8 ${-em}h8`} className={styles["whisker"]} />;
    case "dot":
      return <path d={`M${half} 0h0`} className={styles["dot"]} />;
    case "ring":
      return <circle cx={half} r={4.5} className={styles["ring"]} />;
    case "walked":
      return <circle cx={half} r={5} className={styles["walked"]} />;
    case "line":
      return <path d={line} className={styles["line"]} />;
    case "limit":
      return <path d={line} className={styles["limit"]} />;
    case "solid":
      return <path d={line} className={styles["best"]} />;
    case "long":
      return <path d={line} className={styles["target"]} />;
    case "short":
      return <path d={line} className={styles["forecast"]} />;
  }
}
