import { type ReactNode, useEffect, useMemo, useRef } from "react";
import { LapStrip } from "#charts/strip/LapStrip.tsx";
import { type StripLines, type StripScale, stripScale } from "#charts/strip/stripScale.ts";
import { type StripLap, sayDate, stripLaps } from "#domain";
import { type FoundSide, type FoundSides, useFigures } from "#live";
import { type Address, goTo, printAddress } from "#state/address.ts";
import { useComparing } from "#state/comparing.ts";
import type { SideFigures } from "#stats";
import { Button } from "#ui/Button.tsx";
import { Columns } from "#ui/Columns.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { type Row, RuledTable } from "#ui/RuledTable.tsx";
import { sideBySideReading, sideBySideTitle } from "#words";
import type { AroundProps } from "./aroundProps.ts";
import styles from "./Compare.module.css";
import { accountRows, compareRows, sectorRows } from "./compareRows.tsx";
import { settingRows } from "./settingRows.ts";

/** Two runs or two sessions side by side, the earlier one first. */
export function ComparePage({ address }: AroundProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    // The list that the second was chosen from is gone, and the focus with it.
    if (document.activeElement !== document.body) return;
    window.scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, []);
  if (address.part !== "compare") return null;
  const { kind, ids } = address;
  return (
    <div className={styles["page"]}>
      <h1 ref={heading} tabIndex={-1}>
        {kind === "run" ? "Two runs side by side" : "Two sessions side by side"}
      </h1>
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
  const settings = settingRows(first, second);
  const kinds = settings.find(({ id }) => id === "kind of run");
  const isApart = figures.apart !== undefined;
  const isUntold = figures.apart === "lasting test";
  const [account, sectors] = [accountRows(figures), sectorRows(figures)];
  const differs = (
    <Part title={isUntold ? "What differs" : "What else differs"}>
      {settings.length === 0 ? (
        <p>Nothing, as far as it is written down.</p>
      ) : (
        <RuledTable caption="Settings that differ" captionHidden columns={settingColumns} rows={settings} />
      )}
      <p className={styles["reading"]}>
        <a href={printAddress({ place: "rig" })}>The rig's records</a>
      </p>
    </Part>
  );
  return (
    <>
      <div>
        <p className={styles["finding"]}>{sideBySideTitle(figures)}</p>
        {kinds && (
          <p>
            Not the same kinds of run: {kinds.cells["first"]} in the earlier, {kinds.cells["second"]} in the
            later.
          </p>
        )}
        <p className={styles["reading"]}>{sideBySideReading(figures)}</p>
      </div>
      <div className={styles["strips"]}>
        <Side kind={kind} side={first} picture={isUntold ? undefined : pictures[0]} which="Earlier" />
        <Side kind={kind} side={second} picture={isUntold ? undefined : pictures[1]} which="Later" />
      </div>
      {isUntold ? (
        differs
      ) : (
        <Columns share={7}>
          <div className={styles["tables"]}>
            <Part title="Figures">
              <RuledTable
                caption="Figures of both"
                captionHidden
                columns={isApart ? figureColumns.filter(({ key }) => key !== "difference") : figureColumns}
                rows={compareRows(figures)}
              />
            </Part>
            <Differences title="Where the time goes" caption="Where the time of both goes" rows={account}>
              <p className={styles["reading"]}>Parts of a mean lap: they have no range of their own.</p>
            </Differences>
            <Differences title="Usual sectors" caption="Usual sectors of both" rows={sectors} />
          </div>
          {differs}
        </Columns>
      )}
      <Others kind={kind} sides={[first, second]} />
    </>
  );
}

interface DifferencesProps {
  readonly title: string;
  readonly caption: string;
  readonly rows: readonly Row[];
  readonly children?: ReactNode;
}

/** Figures of both and how far they lie apart; nothing where there are none. */
function Differences({ title, caption, rows, children }: DifferencesProps) {
  if (rows.length === 0) return null;
  return (
    <Part title={title}>
      <RuledTable caption={caption} captionHidden columns={figureColumns} rows={rows} />
      {children}
    </Part>
  );
}

/** The ways on: back to where either stands in a list, or one of the two beside another. */
function Others({
  kind,
  sides,
}: {
  readonly kind: FoundKind;
  readonly sides: readonly [FoundSide, FoundSide];
}) {
  const { choose, forget } = useComparing();
  const beside = (side: FoundSide) => {
    forget();
    choose({ kind, id: idOf(kind, side), name: nameOf(kind, side) });
    goTo(listOf(kind, side));
  };
  return (
    <Part title="Another pair">
      <div className={styles["others"]}>
        {sides.map((side) => (
          <Button key={idOf(kind, side)} onClick={() => beside(side)}>
            {nameOf(kind, side)} beside another
          </Button>
        ))}
        <a href={printAddress(listOf(kind, sides[1]))}>
          {kind === "run" ? "Back to the session" : "Back to the sessions"}
        </a>
      </div>
    </Part>
  );
}

const idOf = (kind: FoundKind, { session, runs }: FoundSide) =>
  kind === "run" ? (runs[0]?.run.id ?? session.id) : session.id;

function nameOf(kind: FoundKind, { session, runs }: FoundSide): string {
  const date = sayDate(session.date);
  return kind === "run" ? `Run ${runs[0]?.number} of ${date}` : date;
}

/** Where another one can be chosen. */
function listOf(kind: FoundKind, { session }: FoundSide): Address {
  return kind === "run"
    ? { place: "log", sessionId: session.id }
    : { place: "review", comboId: session.comboId, period: { kind: "12w" } };
}

interface Picture {
  readonly laps: readonly StripLap[];
  readonly lines: StripLines;
  readonly scale: StripScale | undefined;
}

/** Both strips, on one scale where their times compare. */
function picturesOf(
  kind: FoundKind,
  { first, second, figures, pb }: FoundSides,
): readonly [Picture, Picture] {
  const lapsOf = ({ runs }: FoundSide) => stripLaps(runs, new Set(), kind === "run");
  const target = figures.target?.from === "pb" || figures.target === undefined ? undefined : figures.target;
  const linesOf = ({ usual, usualDecimals }: SideFigures): StripLines => ({
    pb,
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
  /** Undefined where nothing may be told of its laps. */
  readonly picture: Picture | undefined;
  readonly which: "Earlier" | "Later";
}

function Side({ kind, side, picture, which }: SideProps) {
  const { session, comboName } = side;
  const name = nameOf(kind, side);
  return (
    <section aria-label={which} className={styles["side"]}>
      <h2 className={styles["head"]}>
        {which}: <a href={printAddress({ place: "log", sessionId: session.id })}>{name}</a>
      </h2>
      <p className={styles["reading"]}>
        <Name>{comboName}</Name>
      </p>
      {picture && (
        <LapStrip
          {...picture}
          size="full"
          name={name}
          onOpen={(lapId) => goTo({ place: "log", sessionId: session.id, lapId })}
        />
      )}
    </section>
  );
}
