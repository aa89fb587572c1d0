import { type Id, lapsInOrder, type Run } from "#domain";
import type { EntryContext } from "#entry";
import { writeEntry } from "#entry";
import { type FoundDraft, useDraftsFrom } from "#live";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import { editFrom } from "../entry/useLapDraft.ts";
import type { SessionFigures } from "../session/sessionFigures.ts";
import type { SessionData } from "../session/useSession.ts";
import { LostEdit } from "./LostEdit.tsx";

interface EditsLeftProps {
  readonly data: SessionData;
  /** The runs on the page, by the numbers they go by there. */
  readonly shown: SessionFigures["shown"];
  /** The run being driven. */
  readonly current: Run | undefined;
  readonly context: EntryContext;
  /** The lap whose editor is open. */
  readonly edited: Id | undefined;
  readonly onEdit: (lapId: Id | undefined) => void;
}

/**
 * Half-typed edits of laps whose editor is not on the page: it was left, its tab is gone, or the lap was deleted or moved
 * away in another tab. The text is offered back, with what can be done with it.
 */
export function EditsLeft({ data, shown, current, context, edited, onEdit }: EditsLeftProps) {
  const runWith = (lapId: Id) => shown.find(({ run }) => lapsInOrder(run).some(({ id }) => id === lapId));
  // Looked at again when the lap being edited is taken away from under its editor.
  const home = edited === undefined ? undefined : runWith(edited);
  const { list, takeOver, letGo, lookAgain } = useDraftsFrom("lap ", [data.session.id, edited, home?.run.id]);
  const goOn = async (found: FoundDraft) => {
    if (!found.isMine) await takeOver(found);
    onEdit(found.of);
  };
  const offer = (found: FoundDraft, where: string, onGoOn: () => void, deed: string) => (
    <Notice
      key={found.key}
      actions={
        <>
          <Button size="between" onClick={onGoOn}>
            {deed}
          </Button>
          <Button size="between" onClick={() => void letGo(found)}>
            Let it go
          </Button>
        </>
      }
    >
      <p>
        Half typed in {where}
        {found.when === undefined ? "" : `, ${found.when}`}:{" "}
        <strong>
          <Name>{editFrom(found.state).text}</Name>
        </strong>
      </p>
    </Notice>
  );
  return list.map((found) => {
    const there = runWith(found.of);
    if (there !== undefined) {
      const laps = lapsInOrder(there.run);
      const number = laps.findIndex(({ id }) => id === found.of) + 1;
      const lap = laps[number - 1];
      const isUnchanged = lap !== undefined && writeEntry(lap) === editFrom(found.state).text;
      if (found.of === edited || isUnchanged) return null;
      return offer(found, `lap ${number} of run ${there.number}`, () => void goOn(found), "Go on with it");
    }
    const grave = data.runs.find(({ laps }) => laps.some(({ id }) => id === found.of));
    const { sessionId, number } = editFrom(found.state);
    if (grave === undefined && sessionId !== data.session.id) return null;
    const was = number === undefined ? "a lap" : `lap ${number}`;
    if (!found.isMine)
      return offer(found, `${was}, which is no longer there`, () => void takeOver(found), "Take it up");
    return (
      <LostEdit
        key={found.key}
        found={found}
        was={was}
        grave={grave}
        home={grave ?? current ?? data.runs.findLast(({ summary }) => summary === undefined)}
        shown={shown}
        context={context}
        isFocused={found.of === edited}
        onBack={() => onEdit(found.of)}
        onSettled={() => {
          if (found.of === edited) onEdit(undefined);
          lookAgain();
        }}
      />
    );
  });
}
