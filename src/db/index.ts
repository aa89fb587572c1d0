export * from "./backupFolder.ts";
export type { BadRow } from "./checks/badRow.ts";
export { type Around, type CheckedRows, checkBeside, checkRows } from "./checks/checkRows.ts";
export { idsOf } from "./checks/linkedRows.ts";
export { withAside } from "./checks/withAside.ts";
export * from "./digests.ts";
export * from "./drafts.ts";
export { dump, rowCounts, salvage } from "./dump.ts";
export { setAside } from "./edge/setAside.ts";
export { type BothEdited, editedOnBoth } from "./editedOnBoth.ts";
export { databasesThere, eraseDatabases } from "./eraseAll.ts";
export * from "./fault.ts";
export * from "./idMaker.ts";
export type { ImportedSession } from "./importedSession.ts";
export * from "./keepCopy.ts";
export * from "./keptAnswers.ts";
export * from "./keptCopies.ts";
export * from "./logbook.ts";
export {
  type Ahead,
  countChanges,
  type MergeCounts,
  merged,
  mergeRows,
  putRowsRight,
  rowsAhead,
} from "./merge.ts";
export { type Merged, mergeInto, putBookRight, rowsIn, type TakenBack, takeBackMerge } from "./mergeInto.ts";
export { migrateRows } from "./migrations/migrateRows.ts";
export { lowestSchema, newestSchema } from "./migrations/migrations.ts";
export { markOfRow, marksOf, type PartWanted, partOf } from "./partOf.ts";
export type { Patch } from "./patch.ts";
export type { Place } from "./places.ts";
export { defaultPreferences, preferencesId } from "./preferencesRow.ts";
export { type RawRows, rawRows } from "./rawRows.ts";
export { asideRows } from "./reads/asideRows.ts";
export * from "./reads/changeMarks.ts";
export * from "./reads/combos.ts";
export * from "./reads/deleted.ts";
export { lastPlanned } from "./reads/lastPlanned.ts";
export { latestRuns } from "./reads/latestRuns.ts";
export { type ComboNames, type LikelyName, likelyNames } from "./reads/likelyNames.ts";
export { type NamedChoice, namedChoices } from "./reads/namedChoices.ts";
export * from "./reads/newestStamp.ts";
export * from "./reads/rows.ts";
export { runsOfTest } from "./reads/runsOfTest.ts";
export { type RunsToJudgeBy, runsToJudgeBy } from "./reads/runsToJudgeBy.ts";
export * from "./reads/sessions.ts";
export { type AroundImport, aroundImport, type ImportOutlook, importOutlook } from "./reads/sessionsThere.ts";
export { type Twins, twins } from "./reads/twins.ts";
export * from "./reads/unreadable.ts";
export * from "./reads/waitingPlan.ts";
export { replaceLogbook } from "./replaceLogbook.ts";
export { type RestoreOptions, restoreAsNew } from "./restore.ts";
export {
  type BackupFolder,
  type Draft,
  type KeptBecause,
  type KeptCopy,
  openShelf,
  type SentRows,
  type Shelf,
  type ShelvedLogbook,
} from "./shelf.ts";
export * from "./shelfNotes.ts";
export * from "./shelvedLogbooks.ts";
export type { LogbookStatus, StatusSource } from "./status.ts";
export { type TypedBeside, typedBeside } from "./typedBeside.ts";
export * from "./unlisted.ts";
export { unmergeRows } from "./unmerge.ts";
export type { UnreadableRow } from "./unreadable.ts";
export { believedUpTo } from "./versions.ts";
export { bringBack, bringBackLap } from "./writes/bringBack.ts";
export { type CarPatch, editCar } from "./writes/cars.ts";
export type { Change, Edit } from "./writes/change.ts";
export * from "./writes/changePlan.ts";
export { type AskedCombo, addCombo, type Named, type NewCombo } from "./writes/combos.ts";
export * from "./writes/cornerReviews.ts";
export {
  type CopyHow,
  type CornerEdit,
  type CornerPatch,
  copyCorners,
  editCorners,
  removeCorner,
  setLowestSpeed,
} from "./writes/corners.ts";
export * from "./writes/drillCounts.ts";
export * from "./writes/forecasts.ts";
export { type GivenRun, giveRun } from "./writes/giveRun.ts";
export { importLaps } from "./writes/importLaps.ts";
export { joinCars, joinCombos, joinLayouts, joinTracks, type Same } from "./writes/joinSame.ts";
export { type AsideLinkFault, asideFault, asideLinkFault } from "./writes/judgeAside.ts";
export * from "./writes/laps.ts";
export { editLayout, type LayoutPatch } from "./writes/layouts.ts";
export { dropAside, mendAside } from "./writes/mendAside.ts";
export * from "./writes/moveLaps.ts";
export * from "./writes/moveRun.ts";
export * from "./writes/moveSession.ts";
export * from "./writes/names.ts";
export type { RunSettings } from "./writes/newRun.ts";
export * from "./writes/pages.ts";
export * from "./writes/planLines.ts";
export * from "./writes/plans.ts";
export * from "./writes/practice.ts";
export { type Purged, purgeDeleted } from "./writes/purge.ts";
export * from "./writes/references.ts";
export * from "./writes/rigs.ts";
export * from "./writes/rigTests.ts";
export type { NewRow, RowEdit } from "./writes/rowWrites.ts";
export * from "./writes/runs.ts";
export * from "./writes/sessionChanges.ts";
export * from "./writes/sessions.ts";
export * from "./writes/setPreferences.ts";
export * from "./writes/splitRun.ts";
export * from "./writes/splitSession.ts";
export type { Fields } from "./writes/stamp.ts";
export * from "./writes/targets.ts";
export * from "./writes/undo.ts";
