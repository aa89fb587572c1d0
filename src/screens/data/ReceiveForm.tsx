import { pickFile } from "#files";
import { useForm, useTyped } from "#live";
import { Button } from "#ui/Button.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import { useFocusBack } from "#ui/useFocusBack.ts";
import { Incoming } from "./Incoming.tsx";
import styles from "./Restore.module.css";
import { useLook } from "./useLook.ts";

const noText = {
  wrong: "There is no text yet",
  right: "Paste what the other device copied, or choose a file",
};

/** Takes in what another device sent: a file, or pasted text. */
export function ReceiveForm({ titles }: { readonly titles: readonly string[] }) {
  const looking = useLook();
  const { kind } = looking.step;
  const typed = useTyped({ text: "" });
  const { text } = typed.value;
  const { box, field, submit } = useForm({
    typed,
    reading: text.trim() === "" ? { ok: false, problems: { text: noText } } : { ok: true, value: text },
    onRead: (read) => looking.look("The pasted text", new Blob([read])),
  });
  const isSeen = kind === "seen";
  useFocusBack(isSeen || undefined, () => box.current?.querySelector("textarea"));
  const choose = async () => {
    const file = await pickFile(".json,.gz,.txt,application/json,text/plain");
    if (file !== undefined) looking.look(file.name, file);
  };
  return (
    <>
      {!isSeen && (
        <form ref={box} className={styles["preview"]} onSubmit={submit}>
          <TextArea
            label="Text from the other device"
            {...field("text")}
            rows={2}
            autoCapitalize="off"
            autoComplete="off"
            spellCheck={false}
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
      <Incoming looking={looking} titles={titles} first="merge" onLeave={() => typed.set(undefined)} />
    </>
  );
}
