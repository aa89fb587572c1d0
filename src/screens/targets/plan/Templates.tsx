import { useEffect, useRef, useState } from "react";
import { addPlan, deletePlan, editPlan, planTemplates, takeTemplate } from "#db";
import { longestName, type Plan } from "#domain";
import { useDraft, useLogbook, useRows, useWrite, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Name } from "#ui/Name.tsx";
import { useFocusBack } from "#ui/useFocusBack.ts";
import { counted, linesOfTemplate, sayPlanSize, sayRunTask, templateOf } from "#words";
import styles from "./Plan.module.css";
import type { PlanContext } from "./planContext.ts";
import { blankName, readName, type TypedName } from "./typedName.ts";

/** Plans kept under a name, for any combo: this one can be kept, and any of them taken. */
export function Templates({ context }: { readonly context: PlanContext }) {
  const { plan } = context;
  const templates = useRows(planTemplates, []);
  const draft = useDraft<TypedName | null>(
    `plan template ${plan.comboId}`,
    null,
    (typed) => typed?.name ?? "",
  );
  const [isFresh, setFresh] = useState(false);
  if (templates === undefined || !draft.isRead) return null;
  const typed = draft.value;
  const open = (start: TypedName) => {
    setFresh(true);
    draft.set(start);
  };
  const named = templates.find(({ id }) => id === typed?.templateId);
  return (
    <div className={styles["templates"]}>
      <HalfTyped of={draft} />
      <Disclosure
        title="Templates"
        answer={templates.length === 0 ? "none kept yet" : counted(templates.length, "template")}
        startOpen={typed !== null}
        level={2}
      >
        <div className={styles["form"]}>
          {templates.length > 0 && (
            <ul className={styles["lines"]}>
              {templates.map((template) => (
                <li key={template.id} className={styles["line"]}>
                  {template === named && typed !== null ? (
                    <NameForm
                      context={context}
                      typed={typed}
                      templates={templates}
                      template={template}
                      isFresh={isFresh}
                      set={draft.set}
                    />
                  ) : (
                    <Template
                      context={context}
                      template={template}
                      onRename={() => open({ templateId: template.id, name: template.name ?? "" })}
                    />
                  )}
                </li>
              ))}
            </ul>
          )}
          <Keeping
            context={context}
            typed={named === undefined ? typed : null}
            templates={templates}
            isFresh={isFresh}
            set={draft.set}
            onOpen={() => open(blankName)}
          />
        </div>
      </Disclosure>
    </div>
  );
}

interface NameFormProps {
  readonly context: PlanContext;
  readonly typed: TypedName;
  /** All there are. */
  readonly templates: readonly Plan[];
  /** The one that gets another name; absent where the plan is kept. */
  readonly template?: Plan;
  /** It was opened by hand just now: it has the focus. */
  readonly isFresh: boolean;
  readonly set: (typed: TypedName | undefined) => void;
}

interface KeepingProps extends Omit<NameFormProps, "typed"> {
  readonly typed: TypedName | null;
  readonly onOpen: () => void;
}

/** A button that opens the form of a name, and the form. */
function Keeping({ typed, onOpen, ...props }: KeepingProps) {
  const opener = useRef<HTMLButtonElement>(null);
  useFocusBack(typed ?? undefined, () => opener.current);
  if (typed !== null) return <NameForm {...props} typed={typed} />;
  return (
    <div>
      <Button ref={opener} size="between" onClick={onOpen}>
        Keep this plan as a template
      </Button>
    </div>
  );
}

function NameForm({ context: { plan, combo }, typed, templates, template, isFresh, set }: NameFormProps) {
  const form = useWriteForm<TypedName, string, Awaited<ReturnType<typeof editPlan>>>({
    typed: { value: typed, set },
    reading: readName(typed, templates),
    write: (book, name) =>
      template === undefined
        ? addPlan(book, { name, layoutId: combo.layout.id, lines: templateOf(plan.lines) })
        : editPlan(book, { id: template.id, patch: { name }, expected: template }),
    isUndoOffered: true,
  });
  const { box } = form;
  useEffect(() => {
    if (isFresh) box.current?.querySelector("input")?.focus();
  }, [isFresh, box]);
  return (
    <form
      ref={box}
      noValidate
      aria-label={template === undefined ? "A new template" : "Another name"}
      className={styles["form"]}
      onSubmit={form.submit}
    >
      <Field
        label="Name of the template"
        hint="For example “Short evening”."
        size="between"
        maxLength={longestName}
        {...form.field("name")}
      />
      <ButtonRow
        others={
          <Button size="between" onClick={() => set(undefined)}>
            Cancel
          </Button>
        }
        main={
          <Button type="submit" variant="primary" size="between">
            {template === undefined ? "Keep it" : "Store the name"}
          </Button>
        }
      />
    </form>
  );
}

interface TemplateProps {
  readonly context: PlanContext;
  readonly template: Plan;
  readonly onRename: () => void;
}

function Template({ context: { plan, facts, combo }, template, onRename }: TemplateProps) {
  const { surroundings } = useLogbook();
  const write = useWrite();
  const { name = "", lines } = template;
  const take = () => {
    const { layout } = combo;
    const isSameLayout = template.layoutId === layout.id;
    const { newId } = surroundings;
    const taken = linesOfTemplate(lines, { facts, corners: layout.corners, isSameLayout, newId });
    void write((book) => takeTemplate(book, plan, { name, lines: taken }), { isUndoOffered: true });
  };
  return (
    <div className={styles["template"]}>
      <h3>
        <Name>{name}</Name>
      </h3>
      <p className={styles["soft"]}>
        {sayPlanSize(lines, { lapMs: facts.evening?.lapMs })}:{" "}
        {lines.map((line) => `${line.purpose} (${sayRunTask(line)})`).join(" · ")}
      </p>
      <div className={styles["buttons"]}>
        <Button aria-label={`Take: ${name}`} onClick={take}>
          Take it
        </Button>
        <Button aria-label={`Rename: ${name}`} onClick={onRename}>
          Rename
        </Button>
        <Button
          variant="quiet"
          aria-label={`Delete: ${name}`}
          onClick={() => void write((book) => deletePlan(book, template), { isUndoOffered: true })}
        >
          Delete
        </Button>
      </div>
    </div>
  );
}
