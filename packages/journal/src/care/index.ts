/** The door of care: bundles, backups and moving a book. Needs files. */
export {
  type BackupFound,
  type BackupMade,
  type BackupSchedule,
  type BackupSetup,
  backupDue,
  backupsIn,
  backupTo,
  type Restored,
  restore,
} from './backup.ts'
export { BUNDLE_FORMAT, BUNDLE_VERSION, type BundleManifest, type BundleSetup, writeBundle } from './bundle.ts'
export { linesOfFile } from './json-lines.ts'
export { type MoveReport, moveKitchen } from './move.ts'
export { type BundleFault, type BundleFaultCode, type TakeInSetup, type TakenIn, takeIn } from './take-in.ts'
