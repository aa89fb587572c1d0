import { type ColumnKind, cellsOf, columnKinds, columnWord, type Table } from "#files";
import { Name } from "#ui/Name.tsx";
import { Select } from "#ui/Select.tsx";
import styles from "./Import.module.css";

interface ColumnMatchProps {
  readonly table: Table;
  readonly onColumn: (index: number, kind: ColumnKind) => void;
}

const examples = 3;
const fewestSectors = 6;

/** Each column of the table, some of its cells, and what it holds. */
export function ColumnMatch({ table, onColumn }: ColumnMatchProps) {
  const { columns } = table.form;
  const highest = columns.reduce(
    (most, kind) => Math.max(most, Number(/^sector (\d+)$/.exec(kind)?.[1] ?? 0)),
    0,
  );
  const sectors = Array.from(
    { length: Math.max(fewestSectors, highest + 1) },
    (_, index): ColumnKind => `sector ${index + 1}`,
  );
  const kinds: readonly ColumnKind[] = ["none", ...columnKinds.map(({ kind }) => kind), ...sectors];
  const options = kinds.map((kind) => ({ value: kind, label: columnWord(kind) }));
  return (
    <ul className={styles["columns"]}>
      {columns.map((kind, index) => {
        const head = table.head?.[index]?.trim() ?? "";
        const name = head === "" ? `column ${index + 1}` : head;
        const cells = [...new Set(cellsOf(table, index))].slice(0, examples);
        return (
          <li key={index} className={styles["column"]}>
            <div>
              <div className={styles["name"]}>
                <Name>{name}</Name>
              </div>
              <div className={styles["examples"]}>
                {cells.length === 0 ? (
                  "empty"
                ) : (
                  <Name>{cells.map((cell) => cell.slice(0, 40)).join(" · ")}</Name>
                )}
              </div>
            </div>
            <Select
              label={`What “${name}” holds`}
              labelHidden
              value={kind}
              options={
                options.some(({ value }) => value === kind)
                  ? options
                  : [...options, { value: kind, label: columnWord(kind) }]
              }
              onChange={(to) => onColumn(index, to)}
            />
          </li>
        );
      })}
    </ul>
  );
}
