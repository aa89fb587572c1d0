import { useState } from "react";
import { type DecimalSign, type Delimiter, writeCsv } from "#files";
import { useLogbook, useShelvedNow } from "#live";
import { Button } from "#ui/Button.tsx";
import { Checkbox } from "#ui/Checkbox.tsx";
import { Choice } from "#ui/Choice.tsx";
import { Part } from "#ui/Part.tsx";
import { Select } from "#ui/Select.tsx";
import styles from "./Import.module.css";
import { type Exported, saveTable } from "./saveTable.ts";

const tables: readonly { readonly value: Exported; readonly label: string }[] = [
  { value: "laps", label: "laps" },
  { value: "sessions", label: "sessions" },
  { value: "targets", label: "targets" },
  { value: "rig", label: "rig records" },
];
const decimals: readonly { readonly value: DecimalSign; readonly label: string }[] = [
  { value: ".", label: "point" },
  { value: ",", label: "comma" },
];
const delimiters: readonly { readonly value: Delimiter; readonly label: string }[] = [
  { value: ",", label: "comma" },
  { value: ";", label: "semicolon" },
  { value: "\t", label: "tab" },
];

/** Tables for a spreadsheet. All there is, as JSON, is the backup. */
export function ExportPart() {
  const { book, surroundings } = useLogbook();
  const { title } = useShelvedNow();
  const [what, setWhat] = useState<Exported>("laps");
  const [decimal, setDecimal] = useState<DecimalSign>(".");
  const [delimiter, setDelimiter] = useState<Delimiter>(",");
  const [hasMark, setMark] = useState(true);
  const [isBusy, setBusy] = useState(false);
  const save = () => {
    setBusy(true);
    const write = (table: Parameters<typeof writeCsv>[0]) => writeCsv(table, { decimal, delimiter, hasMark });
    void saveTable({ book, surroundings, title, what, write }).finally(() => setBusy(false));
  };
  return (
    <Part title="Export" ruled>
      <p>A table for a spreadsheet. Laps can be imported again. Everything as JSON is the backup.</p>
      <div className={styles["stack"]}>
        <Choice size="between" label="Table" value={what} options={tables} onChange={setWhat} />
        <div className={styles["fields"]}>
          <Select
            label="Decimal sign"
            value={decimal}
            options={decimals}
            onChange={(to) => {
              setDecimal(to);
              // Spreadsheets that write a decimal comma separate cells by semicolons.
              setDelimiter(to === "," ? ";" : ",");
            }}
          />
          <Select label="Between the cells" value={delimiter} options={delimiters} onChange={setDelimiter} />
        </div>
        <Checkbox
          size="between"
          label="Mark the file as UTF-8"
          checked={hasMark}
          onChange={setMark}
          hint="By a byte order mark, which spreadsheets need and some programs stumble over."
        />
        <div>
          <Button size="between" disabled={isBusy} onClick={save}>
            Save as CSV
          </Button>
        </div>
      </div>
    </Part>
  );
}
