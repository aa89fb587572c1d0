import type { DateOrder, DecimalSign, Delimiter, Table, TableForm } from "#files";
import { Select } from "#ui/Select.tsx";
import styles from "./Import.module.css";
import { hasWholeTimes, sayDateExample, sayTimeExample } from "./importWords.ts";

interface TableFormFieldsProps {
  readonly table: Table;
  readonly onForm: (patch: Partial<TableForm>) => void;
}

const delimiters: readonly { readonly value: Delimiter; readonly label: string }[] = [
  { value: ",", label: "comma" },
  { value: ";", label: "semicolon" },
  { value: "\t", label: "tab" },
];
const decimals: readonly { readonly value: DecimalSign; readonly label: string }[] = [
  { value: ".", label: "point" },
  { value: ",", label: "comma" },
];
const heads = [
  { value: "yes", label: "names of the columns" },
  { value: "no", label: "a lap like the others" },
] as const;
const wholes = [
  { value: "seconds", label: "seconds" },
  { value: "milliseconds", label: "milliseconds" },
] as const;
const orders: readonly { readonly value: DateOrder; readonly label: string }[] = [
  { value: "day", label: "day, month, year" },
  { value: "month", label: "month, day, year" },
  { value: "year", label: "year, month, day" },
];

/** How the table is written: what was found, with examples from it, to be said otherwise. */
export function TableFormFields({ table, onForm }: TableFormFieldsProps) {
  const { delimiter, hasHeader, decimal, wholeNumbers, dateOrder, columns } = table.form;
  const isOpen = dateOrder === undefined;
  return (
    <div className={styles["fields"]}>
      <Select
        label="Between the cells"
        value={delimiter}
        options={delimiters}
        onChange={(to) => onForm({ delimiter: to })}
        hint={`${table.width} ${table.width === 1 ? "column" : "columns"} found.`}
      />
      <Select
        label="First row"
        value={hasHeader ? "yes" : "no"}
        options={heads}
        onChange={(to) => onForm({ hasHeader: to === "yes" })}
      />
      {columns.includes("date") && (
        <Select<DateOrder | "open">
          label="Order of dates"
          value={dateOrder ?? "open"}
          options={isOpen ? [{ value: "open", label: "say which" }, ...orders] : orders}
          onChange={(to) => to !== "open" && onForm({ dateOrder: to })}
          hint={isOpen ? undefined : sayDateExample(table)}
          problem={isOpen ? `The dates do not tell their order: ${sayDateExample(table) ?? ""}` : undefined}
        />
      )}
      <Select
        label="Decimal sign"
        value={decimal}
        options={decimals}
        onChange={(to) => onForm({ decimal: to })}
        hint={sayTimeExample(table)}
      />
      {hasWholeTimes(table) && (
        <Select
          label="Whole numbers are"
          value={wholeNumbers}
          options={wholes}
          onChange={(to) => onForm({ wholeNumbers: to })}
          hint={sayTimeExample(table, /^\d{4,}$/)}
        />
      )}
    </div>
  );
}
