import { isEmptySearch, type SearchTerms } from "#domain";
import { useFigures } from "#live";
import { sayFound } from "#words";
import type { AroundProps } from "./aroundProps.ts";
import styles from "./Search.module.css";
import { SearchForm } from "./SearchForm.tsx";
import { FoundLaps, FoundSessions } from "./SearchResults.tsx";
import { parseSearch } from "./searchQuery.ts";

const most = 50;

/** Sessions and laps by words, remarks, focus, tyres, days and lap times. */
export function SearchPage({ address, preferences }: AroundProps) {
  const terms = parseSearch(address.part === "search" ? address.asked : "");
  return (
    <div className={styles["page"]}>
      <h1>Search the ledger</h1>
      <SearchForm terms={terms} preferences={preferences} />
      {isEmptySearch(terms) ? (
        <p>Fill in one field or more. Results match every field you fill in.</p>
      ) : (
        <Results terms={terms} />
      )}
    </div>
  );
}

function Results({ terms }: { readonly terms: SearchTerms }) {
  const { value: result, isRenewing } = useFigures("search", { terms, most });
  return (
    <div className={styles["results"]} aria-busy={isRenewing}>
      <div role="status">
        <p className={styles["count"]}>
          {result === undefined
            ? "Looking through the ledger"
            : sayFound(result.sessionCount, result.lapCount, most)}
        </p>
      </div>
      {result !== undefined && result.sessions.length > 0 && <FoundSessions sessions={result.sessions} />}
      {result !== undefined && result.laps.length > 0 && <FoundLaps laps={result.laps} />}
    </div>
  );
}
