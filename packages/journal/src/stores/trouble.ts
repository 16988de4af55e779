/** What can go wrong with a store itself, by name, whatever the engine underneath calls it. */

export type TroubleCode =
  /** The file or a page of it is not what was written. Restore a backup, then exchange. */
  | 'file-damaged'
  /** No room to write. Nothing of this call was kept. */
  | 'disk-full'
  /** The place may be read and not written. */
  | 'read-only'
  /** Made by a newer version of this program. */
  | 'newer-version'
  /** Nobody answers at the address, or the answer broke off: it is not known whether the last call was kept. */
  | 'unreachable'

export class StoreTrouble extends Error {
  readonly code: TroubleCode
  /** The file, or the address without its password. */
  readonly where: string

  constructor(code: TroubleCode, where: string, cause: unknown) {
    super(`${where}: ${code}: ${cause instanceof Error ? cause.message : String(cause)}`, { cause })
    this.name = 'StoreTrouble'
    this.code = code
    this.where = where
  }
}
