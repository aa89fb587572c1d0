import { useRef, useState } from "react";
import { pickFile } from "#files";
import { Button } from "#ui/Button.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import { useFocusBack } from "#ui/useFocusBack.ts";
import { Incoming } from "./Incoming.tsx";
import styles from "./Restore.module.css";
import { useLook } from "./useLook.ts";

/** Takes in what another device sent: a file, or pasted text. */
export function ReceiveForm({ titles }: { readonly titles: readonly string[] }) {
  const looking = useLook();
  const { kind } = looking.step;
  const [text, setText] = useState("");
  const [isEmpty, setEmpty] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const isSeen = kind === "seen";
  useFocusBack(isSeen || undefined, () => form.current?.querySelector("textarea"));
  const read = () => {
    if (text.trim() === "") return setEmpty(true);
    return looking.look("The pasted text", new Blob([text]));
  };
  const choose = async () => {
    const file = await pickFile(".json,.gz,.txt,application/json,text/plain");
    if (file !== undefined) looking.look(file.name, file);
  };
  return (
    <>
      {!isSeen && (
        <form
          ref={form}
          className={styles["preview"]}
          onSubmit={(event) => {
            event.preventDefault();
            read();
          }}
        >
          <TextArea
            label="Text from the other device"
            value={text}
            onChange={(next) => {
              setText(next);
              setEmpty(false);
            }}
            rows={2}
            autoCapitalize="off"
            autoComplete="off"
            spellCheck={false}
            problem={
              isEmpty
                ? {
                    wrong: "There is no text yet",
                    right: "Paste what the other device copied, or choose a file",
                  }
                : undefined
            }
          />
          <div className={styles["buttons"]}>
            <Button type="submit" size="between" disabled={kind === "reading"}>
              Look at the text
            </Button>
            <Button size="between" disabled={kind === "reading"} onClick={() => void choose()}>
              Choose a received file
            </Button>
          </div>
        </form>
      )}
      <Incoming looking={looking} titles={titles} first="merge" onLeave={() => setText("")} />
    </>
  );
}
