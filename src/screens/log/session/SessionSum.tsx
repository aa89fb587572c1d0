import { Suspense } from "react";
import type { CalendarDate } from "#domain";
import type { SessionReport } from "#stats";
import { laterPart } from "#ui/laterPart.ts";
import { Part } from "#ui/Part.tsx";
import {
  accountLineNames,
  accountReading,
  accountTitle,
  sayCounts,
  sayGuestLaps,
  sayNoAccount,
} from "#words";

const BridgeChart = laterPart(() =>
  import("#charts/bridge/BridgeChart.tsx").then((file) => file.BridgeChart),
);

interface SessionSumProps {
  readonly report: SessionReport;
  readonly asOf: CalendarDate;
  readonly name: string;
}

/** Where the session's time went, as a bridge from the target to the average lap, and which laps were counted. */
export function SessionSum({ report, asOf, name }: SessionSumProps) {
  const { account, counts, guestLaps } = report;
  if (counts.driven + guestLaps === 0) return null;
  return (
    <Part title="Where this session's time went" titleHidden={account.known}>
      {account.known ? (
        <Suspense fallback={<p>Drawing the time account</p>}>
          <BridgeChart
            title={accountTitle(report)}
            reading={accountReading(report)}
            level={2}
            asOf={asOf}
            fileName={`${name} time account`}
            lines={(["pace", "repeatability", "mistakes", "others"] as const).map((line) => ({
              id: line,
              label: accountLineNames[line],
              ms: account.value[line],
            }))}
            balance={{ id: "balance", label: "mean lap", ms: account.value.balance }}
          />
        </Suspense>
      ) : (
        <p>{sayNoAccount(account.reason)}</p>
      )}
      <p>
        <small>{[sayCounts(counts), sayGuestLaps(guestLaps)].filter(Boolean).join(", ")}</small>
      </p>
    </Part>
  );
}
