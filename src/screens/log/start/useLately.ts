import { sessionBefore, waitingPlan } from "#db";
import type { Plan, Session } from "#domain";
import {
  type BestAndUsual,
  type DrivenCombo,
  useCombos,
  useFigures,
  useRows,
  useToday,
  useUntil,
} from "#live";

const most = 5;
const byDays = { dayStartsAt: 0 };

/** A combo driven lately, with its last session and, once they are worked out, its PB and usual lap. */
export interface LateCombo {
  readonly named: DrivenCombo;
  readonly last: Session;
  readonly figures: BestAndUsual | undefined;
  /** The driver's own plan that waits for its next session; looked up for the first of them alone. */
  readonly own: Plan | undefined;
}

/** The combos driven last, the newest first, five at most; undefined until they have been read. */
export function useLately(): readonly LateCombo[] | undefined {
  const combos = useCombos();
  const until = useUntil();
  const today = useToday(byDays);
  const wanted = combos?.filter(({ drivenAt = 0 }) => drivenAt > 0).slice(0, most);
  const ids = wanted?.map(({ id }) => id) ?? [];
  const [first] = ids;
  const read = useRows(
    async (book) => ({
      sessions: await Promise.all(ids.map((id) => sessionBefore(book, id, until))),
      own: first === undefined ? undefined : await waitingPlan(book, first),
    }),
    [ids.join(" "), until],
  );
  const figures = useFigures("bestAndUsual", { comboIds: ids, today }).value;
  if (wanted === undefined || read === undefined) return undefined;
  return wanted.flatMap((named) => {
    // Read a moment apart, the two lists may differ by a combo.
    const last = read.sessions.find((session) => session?.comboId === named.id);
    return last === undefined
      ? []
      : [
          {
            named,
            last,
            figures: figures?.find(({ comboId }) => comboId === named.id),
            own: read.own?.comboId === named.id ? read.own : undefined,
          },
        ];
  });
}
