import { useState } from "react";
import {
  changeSessionDate,
  combosWithNames,
  deleteSession,
  editSession,
  moveSessionToCombo,
  reopenSession,
  type SessionPatch,
  turnPage,
} from "#db";
import { comboName, type Focus, focuses, formatLapTime, instantOf, practiceDay, readDate } from "#domain";
import { readTime } from "#entry";
import { useLogbook, useRows, useWrite } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Field } from "#ui/Field.tsx";
import { Select } from "#ui/Select.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import { NewPageForm } from "./NewPageForm.tsx";
import styles from "./RunDialog.module.css";
import type { SessionData } from "./useSession.ts";

/** What belongs to the whole session, and the ways to put it right. Each change is stored at once. */
export function SessionDialog({
  data,
  onClose,
}: {
  readonly data: SessionData;
  readonly onClose: () => void;
}) {
  const { session } = data;
  const write = useWrite();
  const change = (patch: SessionPatch) =>
    void write((book) => editSession(book, { sessionId: session.id, patch, expected: session }));
  const [note, setNote] = useState(session.note);
  const [conditions, setConditions] = useState(session.conditions ?? "");
  const remove = async () => {
    const change = await write((book) => deleteSession(book, { sessionId: session.id }), {
      isUndoOffered: true,
    });
    if (change) {
      onClose();
      goTo({ place: "log" });
    }
  };
  return (
    <Dialog
      title="This session"
      onClose={onClose}
      actions={
        <>
          <Button size="between" variant="primary" onClick={onClose}>
            Done
          </Button>
          {session.endedAt !== undefined && (
            <Button
              size="between"
              onClick={() =>
                void write((book) => reopenSession(book, { sessionId: session.id })).then(onClose)
              }
            >
              Go on with it
            </Button>
          )}
          <Button size="between" variant="caution" onClick={remove}>
            Delete this session
          </Button>
        </>
      }
    >
      <div className={styles["form"]}>
        <Select<Focus>
          label="Focus"
          value={session.focus}
          options={focuses.map(({ focus, word }) => ({ value: focus, label: word }))}
          onChange={(focus) => change({ focus })}
        />
        <TargetOfTheDay data={data} onStore={(targetMs) => change({ targetMs })} />
        <Field
          label="Conditions"
          value={conditions}
          maxLength={2000}
          onChange={setConditions}
          onBlur={() =>
            conditions.trim() !== (session.conditions ?? "") &&
            change({ conditions: conditions.trim() || undefined })
          }
        />
        <TextArea
          label="Note to yourself"
          value={note}
          maxLength={20000}
          onChange={setNote}
          onBlur={() => note !== session.note && change({ note })}
          hint="Shown when you next drive this combo."
        />
        <DateOf data={data} />
        <Disclosure title="Wrong combo?">
          <MoveSession data={data} onMoved={onClose} />
        </Disclosure>
        <Disclosure title="Layout or physics changed?">
          <NewPageForm
            onTurn={async (isForAll, reason) => {
              const comboIds = isForAll ? ("all" as const) : [session.comboId];
              const turned = await write(
                (book) => turnPage(book, { comboIds, from: session.startedAt, reason }),
                {
                  isUndoOffered: true,
                },
              );
              if (turned) onClose();
            }}
          />
        </Disclosure>
      </div>
    </Dialog>
  );
}

/** A lap time for this session alone, stored when the field is left. */
function TargetOfTheDay({
  data,
  onStore,
}: {
  readonly data: SessionData;
  readonly onStore: (ms: number | undefined) => void;
}) {
  const { targetMs } = data.session;
  const [text, setText] = useState(targetMs === undefined ? "" : formatLapTime(targetMs));
  const read =
    text.trim() === "" ? undefined : readTime(text, { displayDecimals: data.preferences.displayDecimals });
  return (
    <Field
      label="Target of the day"
      value={text}
      inputMode="decimal"
      onChange={setText}
      hint="A lap time, 1:23.000. Leave it empty for none."
      problem={read?.ok === false ? read.problem : undefined}
      onBlur={() => {
        const next = read === undefined ? undefined : read.ok ? read.ms : targetMs;
        if (next !== targetMs) onStore(next);
      }}
    />
  );
}

const noon = 12;

/** The session's date and, where known, its time of day. */
function DateOf({ data }: { readonly data: SessionData }) {
  const { session, preferences } = data;
  const { surroundings } = useLogbook();
  const write = useWrite();
  const [text, setText] = useState<string>(session.date);
  const read = readDate(text);
  const today = practiceDay(surroundings.clock(), surroundings.zone(), preferences.dayStartsAt);
  const problem = !read.ok
    ? read.problem
    : read.date > today
      ? { wrong: `${read.date} has not come yet`, right: `Write a date up to ${today}` }
      : undefined;
  const store = () => {
    if (!read.ok || problem || read.date === session.date) return;
    const { date } = read;
    const shift = session.startedAt - instantOf(session.date, noon, session.zone);
    const startedAt = instantOf(date, noon, session.zone) + (session.isTimeOfDayKnown ? shift : 0);
    const { isTimeOfDayKnown } = session;
    void write(
      (book) => changeSessionDate(book, { sessionId: session.id, date, startedAt, isTimeOfDayKnown }),
      {
        isUndoOffered: true,
      },
    );
  };
  return (
    <Field
      label="Date"
      type="date"
      value={text}
      max={today}
      onChange={setText}
      onBlur={store}
      problem={problem}
    />
  );
}

function MoveSession({ data, onMoved }: { readonly data: SessionData; readonly onMoved: () => void }) {
  const write = useWrite();
  const combos = useRows((book) => combosWithNames(book), []) ?? [];
  const others = combos.filter(({ combo }) => combo.id !== data.combo.id);
  const move = async (comboId: string) => {
    if (comboId === "") return;
    const { id: sessionId } = data.session;
    if (await write((book) => moveSessionToCombo(book, { sessionId, comboId }), { isUndoOffered: true }))
      onMoved();
  };
  return (
    <Select
      label="Move the whole session to"
      value=""
      onChange={move}
      options={[
        { value: "", label: others.length === 0 ? "there is no other combo yet" : "choose a combo" },
        ...others.map((other) => ({ value: other.combo.id, label: comboName(other) })),
      ]}
    />
  );
}
