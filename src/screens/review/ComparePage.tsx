import { useMemo } from "react";
import { LapStrip } from "#charts/strip/LapStrip.tsx";
import { type StripLines, type StripScale, stripScale } from "#charts/strip/stripScale.ts";
import { formatLapTime, type StripLap, sayDate, stripLaps } from "#domain";
import { type FoundSide, type FoundSides, useFigures } from "#live";
import { goTo, printAddress } from "#state/address.ts";
import type { SideFigures } from "#stats";
import { Columns } from "#ui/Columns.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { sideBySideReading, sideBySideTitle } from "#words";
import type { AroundProps } from "./aroundProps.ts";
import styles from "./Compare.module.css";
import { compareRows } from "./compareRows.tsx";
import { settingRows } from "./settingRows.ts";

/** Two runs or two sessions side by side, the earlier one first. */
export function ComparePage({ address }: AroundProps) {
  if (address.part !== "compare") return null;
  const { kind, ids } = address;
  return (
    <div className={styles["page"]}>
      <h1>{kind === "run" ? "Two runs side by side" : "Two sessions side by side"}</h1>
      {ids === undefined ? <NotThere /> : <Sides kind={kind} ids={ids} />}
    </div>
  );
}

function NotThere() {
  return <p>One of the two is not there. Choose two again where runs or sessions are listed.</p>;
}

function Sides(asked: { readonly kind: FoundKind; readonly ids: readonly [string, string] }) {
  const { value } = useFigures("sideBySide", asked);
  if (value === undefined) return <p>Working out what differs</p>;
  return value === null ? <NotThere /> : <Found kind={asked.kind} sides={value} />;
}

type FoundKind = "run" | "session";

const figureColumns = [
  { key: "figure", title: "figure" },
  { key: "first", title: "earlier", figures: true },
  { key: "second", title: "later", figures: true },
  { key: "difference", title: "difference", figures: true, strong: true },
] as const;

const settingColumns = [
  { key: "setting", title: "setting" },
  { key: "first", title: "earlier" },
  { key: "second", title: "later" },
] as const;

function Found({ kind, sides }: { readonly kind: FoundKind; readonly sides: FoundSides }) {
  const { first, second, figures } = sides;
  const pictures = useMemo(() => picturesOf(kind, sides), [kind, sides]);
  const rows = compareRows(figures);
  const settings = settingRows(first, second);
  const isApart = figures.apart !== undefined;
  return (
    <>
      <div>
        <p className={styles["finding"]}>{sideBySideTitle(figures)}</p>
        <p className={styles["reading"]}>{sideBySideReading(figures)}</p>
      </div>
      <div className={styles["strips"]}>
        <Side kind={kind} side={first} picture={pictures[0]} which="Earlier" />
        <Side kind={kind} side={second} picture={pictures[1]} which="Later" />
      </div>
      <Columns share={7}>
        <Part title="Figures">
          <RuledTable
            caption="Figures of both"
            captionHidden
            columns={isApart ? figureColumns.filter(({ key }) => key !== "difference") : figureColumns}
            rows={rows}
          />
          {figures.target && rows.some(({ id }) => id.startsWith("account")) && (
            <p className={styles["reading"]}>
              Where the time goes is measured against {formatLapTime(figures.target.ms)} for both.
            </p>
          )}
        </Part>
        <Part title="What else differs">
          {settings.length === 0 ? (
            <p>Nothing, as far as it is written down.</p>
          ) : (
            <RuledTable
              caption="Settings that differ"
              captionHidden
              columns={settingColumns}
              rows={settings}
            />
          )}
          <p className={styles["reading"]}>
            <a href={printAddress({ place: "rig" })}>The rig's records</a>
          </p>
        </Part>
      </Columns>
    </>
  );
}

interface Picture {
  readonly laps: readonly StripLap[];
  readonly lines: StripLines;
  readonly scale: StripScale | undefined;
}

/** Both strips, on one scale where their times compare. */
function picturesOf(kind: FoundKind, { first, second, figures }: FoundSides): readonly [Picture, Picture] {
  const lapsOf = ({ runs }: FoundSide) => stripLaps(runs, new Set(), kind === "run");
  const target = figures.target?.from === "pb" || figures.target === undefined ? undefined : figures.target;
  const linesOf = ({ usual, usualDecimals }: SideFigures): StripLines => ({
    usual: usual.known ? { ms: usual.value, decimals: usualDecimals } : undefined,
    target: target && { ms: target.ms },
  });
  const [a, b] = [lapsOf(first), lapsOf(second)];
  const scale = figures.apart === undefined ? stripScale([...a, ...b], linesOf(figures.first)) : undefined;
  return [
    { laps: a, lines: linesOf(figures.first), scale },
    { laps: b, lines: linesOf(figures.second), scale },
  ];
}

interface SideProps {
  readonly kind: FoundKind;
  readonly side: FoundSide;
  readonly picture: Picture;
  readonly which: "Earlier" | "Later";
}

function Side({ kind, side, picture, which }: SideProps) {
  const { session, runs, comboName } = side;
  const date = sayDate(session.date);
  const name = kind === "run" ? `Run ${runs[0]?.number} of ${date}` : date;
  return (
    <section aria-label={which} className={styles["side"]}>
      <h2 className={styles["head"]}>
        {which}: <a href={printAddress({ place: "log", sessionId: session.id })}>{name}</a>
      </h2>
      <p className={styles["reading"]}>
        <Name>{comboName}</Name>
      </p>
      <LapStrip
        {...picture}
        size="full"
        name={name}
        onOpen={(lapId) => goTo({ place: "log", sessionId: session.id, lapId })}
      />
    </section>
  );
}
