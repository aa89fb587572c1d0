import { deleteRigTest, preferences } from "#db";
import { comboName, type Id, type Preferences } from "#domain";
import { useCombos, useFigures, useRows, useToday, useWrite } from "#live";
import { goTo, printAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Part } from "#ui/Part.tsx";
import { saidSides, sayPairsDriven } from "#words";
import { FinishedTest } from "./FinishedTest.tsx";
import { RunningTest } from "./RunningTest.tsx";
import styles from "./Test.module.css";
import { TestRuns } from "./TestRuns.tsx";

/** One rig test: while it lasts how far it is, and once it is over what it found. */
export function TestPage({ testId }: { readonly testId: Id }) {
  const chosen = useRows(preferences, []);
  return chosen === undefined ? null : <OfTest key={testId} testId={testId} chosen={chosen} />;
}

function OfTest({ testId, chosen }: { readonly testId: Id; readonly chosen: Preferences }) {
  const { value: pages } = useFigures("rigTestPages", { testId });
  const combos = useCombos();
  const today = useToday(chosen);
  const write = useWrite();
  if (pages === undefined || combos === undefined) return <p>Opening the test</p>;
  const [page] = pages;
  if (page === undefined)
    return (
      <Notice>
        <p>
          The test this address names is not in the logbook.{" "}
          <a href={printAddress({ place: "rig" })}>Back to the rig</a>
        </p>
      </Notice>
    );
  const { test, report, records } = page;
  const combo = combos.find(({ id }) => id === test.comboId);
  const name = combo === undefined ? "a deleted combo" : comboName(combo);
  const sides = saidSides(test, records);
  const remove = async () => {
    if (await write((book) => deleteRigTest(book, testId), { isUndoOffered: true }))
      goTo({ place: "rig" }, "replace");
  };
  return (
    <Part
      title={<Name>{test.question}</Name>}
      ruled
      aside={report.isOver ? undefined : sayPairsDriven(report)}
    >
      <dl className={styles["sides"]} aria-label="What is compared">
        <div>
          <dt>On</dt>
          <dd>
            <Name>{name}</Name>
          </dd>
        </div>
        <div>
          <dt>A</dt>
          <dd>
            <Name>{sides.sayA}</Name>
          </dd>
        </div>
        <div>
          <dt>B</dt>
          <dd>
            <Name>{sides.sayB}</Name>
          </dd>
        </div>
      </dl>
      {report.isOver ? (
        <FinishedTest page={page} report={report} sides={sides} name={name} today={today} />
      ) : (
        <RunningTest page={page} sides={sides} name={name} />
      )}
      <TestRuns page={page} sides={sides} />
      <div>
        <Button size="between" variant="caution" onClick={() => void remove()}>
          Delete this test
        </Button>
        <p className={styles["soft"]}>
          Its runs become ordinary practice: their laps stay, and level, trend and forecast go on with them.
        </p>
      </div>
    </Part>
  );
}
