import { Suspense, useState } from "react";
import { daysBetween } from "#domain";
import { useFigures } from "#live";
import { goTo, printAddress } from "#state/address.ts";
import { type AcrossFigure, acrossFigures, acrossTrend, acrossValue, inOrderDriven } from "#stats";
import { Choice } from "#ui/Choice.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { acrossReading, acrossTitle, acrossWords, sayAcross } from "#words";
import styles from "./Across.module.css";
import { AcrossRows } from "./AcrossRows.tsx";
import type { NamedLine } from "./acrossOrders.ts";
import type { AroundProps } from "./aroundProps.ts";
import { Finding } from "./Finding.tsx";
import { References } from "./References.tsx";

const AcrossChart = laterPart(() =>
  import("#charts/across/AcrossChart.tsx").then((file) => file.AcrossChart),
);

const figures = acrossFigures.map((value) => ({ value, label: acrossWords[value].name.toLowerCase() }));

const openCombo = (comboId: string) => goTo({ place: "review", comboId, period: { kind: "all" } });

/** All combos side by side, in figures that compare where lap times do not. */
export function AcrossPage({ combos, preferences, today }: AroundProps) {
  const { value: lines, isRenewing } = useFigures("acrossCombos", { today });
  if (lines === undefined) return <p>Working out the figures</p>;
  const nameOf = new Map(combos.map(({ id, name }) => [id, name]));
  const rows = lines.flatMap((line): NamedLine[] => {
    const name = nameOf.get(line.comboId);
    return name === undefined ? [] : [{ line, name }];
  });
  return (
    <div className={styles["page"]} aria-busy={isRenewing}>
      <h1>All combos</h1>
      {rows.length === 0 ? (
        <p>
          Nothing to compare yet: this page needs a session in the ledger.{" "}
          <a href={printAddress({ place: "log" })}>Start one in Log</a>
        </p>
      ) : (
        <>
          <AcrossRows rows={rows} today={today} />
          <OverTime rows={rows} today={today} />
        </>
      )}
      {combos.length > 0 && <References combos={combos} preferences={preferences} />}
    </div>
  );
}

function OverTime({ rows, today }: { readonly rows: readonly NamedLine[]; readonly today: string }) {
  const [figure, setFigure] = useState<AcrossFigure>("scatter");
  const lines = rows.map(({ line }) => line);
  const nameOf = new Map(rows.map(({ line, name }) => [line.comboId, name]));
  const ordered = inOrderDriven(lines);
  const withFigure = ordered.filter((line) => acrossValue(line, figure) !== undefined);
  const [first, last] = [withFigure[0], withFigure.at(-1)];
  const days = first === undefined || last === undefined ? 0 : daysBetween(first.firstOn, last.firstOn);
  const trend = acrossTrend(lines, figure);
  const said = { title: acrossTitle(figure, trend, days), reading: acrossReading(figure, trend) };
  const { column, axis } = acrossWords[figure];
  return (
    <>
      <Choice label="Chart shows" value={figure} options={figures} onChange={setFigure} />
      <Suspense fallback={<Finding {...said} />}>
        <AcrossChart
          {...said}
          level={2}
          asOf={today}
          fileName={`All combos ${column}`}
          figure={{ column, axis, say: (value) => sayAcross(figure, value) }}
          combos={ordered.map((line) => ({
            id: line.comboId,
            name: nameOf.get(line.comboId) ?? "",
            date: line.firstOn,
            startedAt: line.firstAt,
            laps: line.laps,
            value: acrossValue(line, figure),
          }))}
          onOpen={openCombo}
        />
      </Suspense>
    </>
  );
}
