import { keepForecastsDue } from "./keepForecastsDue.ts";
import { useAtRest } from "./useAtRest.ts";

/**
 * Keeps the app's forecasts, and scores them, whenever no session is open: on coming here, and once a session has ended. The
 * demo keeps those it came with.
 * @param restMs how long the page rests before
 */
export function useForecastsKept(restMs: number): void {
  useAtRest(restMs, keepForecastsDue);
}
