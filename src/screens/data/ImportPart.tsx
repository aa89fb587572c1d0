import { useRef, useState } from "react";
import type { Problem } from "#domain";
import { pickFile } from "#files";
import { useCombos } from "#live";
import { Button } from "#ui/Button.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { sayProblem } from "#ui/FieldFrame.tsx";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Part } from "#ui/Part.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import styles from "./Import.module.css";
import { ImportPreview } from "./ImportPreview.tsx";
import { type ImportSource, readSource } from "./importSource.ts";
import { whyNoLaps } from "./whyNoLaps.ts";

type Step =
  | { readonly kind: "waiting" }
  | { readonly kind: "refused"; readonly file: string; readonly problem: Problem }
  | { readonly kind: "preview"; readonly number: number; readonly source: ImportSource };

/** Old times from a spreadsheet or another file, as sessions of this logbook. */
export function ImportPart() {
  const [step, setStep] = useState<Step>({ kind: "waiting" });
  const [pasted, setPasted] = useState("");
  const [number, setNumber] = useState(0);
  const choose = useRef<HTMLButtonElement>(null);
  const combos = useCombos();
  const show = (source: ImportSource) => {
    const problem = whyNoLaps(source.text);
    if (problem !== undefined)
      return setStep({ kind: "refused", file: source.file ?? "The pasted text", problem });
    setNumber(number + 1);
    setStep({ kind: "preview", number, source });
  };
  const read = async () => {
    const file = await pickFile(".csv,.tsv,.txt,text/csv,text/plain,text/tab-separated-values");
    if (file === undefined) return;
    const reading = await readSource(file);
    if (reading.ok) show(reading.source);
    else setStep({ kind: "refused", file: file.name, problem: reading.problem });
  };
  const finish = () => {
    setStep({ kind: "waiting" });
    setPasted("");
    choose.current?.focus();
  };
  return (
    <Part title="Import laps" ruled>
      {step.kind === "preview" && combos !== undefined ? (
        <ImportPreview key={step.number} source={step.source} combos={combos} onDone={finish} />
      ) : (
        <p>
          A table with one lap a row, from a spreadsheet or a text file: date, car, track and lap time are
          enough. You see what it is read as before anything is stored.
        </p>
      )}
      <div className={styles["stack"]}>
        <div role="alert">
          {step.kind === "refused" && (
            <Notice tone="caution">
              <p>
                <strong>
                  <Name>{step.file}</Name> was not read.
                </strong>{" "}
                {sayProblem(step.problem)} Nothing was changed.
              </p>
            </Notice>
          )}
        </div>
        <div>
          <Button ref={choose} size="between" onClick={() => void read()}>
            {step.kind === "preview" ? "Choose another table" : "Choose a table of laps"}
          </Button>
        </div>
        {step.kind !== "preview" && (
          <Disclosure title="Paste a table" answer="copied from a spreadsheet">
            <form
              className={styles["stack"]}
              onSubmit={(event) => {
                event.preventDefault();
                if (pasted.trim() !== "") show({ text: pasted });
              }}
            >
              <TextArea
                label="Table"
                rows={6}
                spellCheck={false}
                value={pasted}
                onChange={setPasted}
                hint="One lap a row; the names of the columns in the first row help."
              />
              <div>
                <Button type="submit" size="between" disabled={pasted.trim() === ""}>
                  Read the pasted table
                </Button>
              </div>
            </form>
          </Disclosure>
        )}
      </div>
    </Part>
  );
}
