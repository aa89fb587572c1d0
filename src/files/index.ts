export * from "./backup.ts";
export { type ColumnKind, columnKinds, columnWord, isColumnKind, mostSectors } from "./columns.ts";
export * from "./datedFiles.ts";
export type { CsvTable } from "./exportRows.ts";
export * from "./fetchFile.ts";
export * from "./fileName.ts";
export * from "./folder.ts";
export { guarded, unguarded } from "./formulaGuard.ts";
export type { KnownNames } from "./guessColumns.ts";
export { guessDelimiter } from "./guessDelimiter.ts";
export { lapsTable } from "./lapsTable.ts";
export { exportedWithoutLaps, type OwnTable, ownTableOf } from "./ownTables.ts";
export * from "./pack.ts";
export * from "./pasteText.ts";
export * from "./pick.ts";
export { type CsvRow, readCsv } from "./readCsv.ts";
export { type ReadLaps, readLaps, type UnreadRow } from "./readLaps.ts";
export * from "./readText.ts";
export { type RigSetting, rigSettings, rigsTable } from "./rigsTable.ts";
export * from "./save.ts";
export { type SessionCounts, sessionsTable } from "./sessionsTable.ts";
export * from "./sha256.ts";
export * from "./share.ts";
export { sizeOfRows } from "./sizeOfRows.ts";
export { type DateOrder, readTableDate } from "./tableDate.ts";
export { cellsOf, readTable, type Table, type TableForm, tableSignature } from "./tableForm.ts";
export type { TableLap, WholeTable } from "./tableLap.ts";
export { type TableSession, tableSessions } from "./tableSessions.ts";
export { readTableTime, type TimeForm } from "./tableTime.ts";
export { targetsTable } from "./targetsTable.ts";
export {
  type CsvCell,
  type CsvStyle,
  type DecimalSign,
  type Delimiter,
  delimiters,
  writeCsv,
} from "./writeCsv.ts";
