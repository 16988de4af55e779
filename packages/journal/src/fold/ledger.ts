/** The entries behind the facts: sorted into stories, each in order, with corrections and withdrawals worked in. */
import { toInstant } from '../author.ts'
import { compareText } from '../chain.ts'
import type { StoredEntry } from '../envelope.ts'
import { KINDS, type Kind, readBody } from '../kinds/index.ts'
import type { KindDefinition } from '../kinds/kind.ts'
import type { Ledger, LedgerLine, Question } from './facts.ts'

/** The story of entries that are kept and not read. */
export const UNREAD = 'unread'

/** When it happened, then device and its sequence, then id: the same on every device. */
export function compareLines(a: LedgerLine, b: LedgerLine): number {
  return (
    compareText(a.instant, b.instant) ||
    compareText(a.deviceId, b.deviceId) ||
    a.deviceSeq - b.deviceSeq ||
    compareText(a.id, b.id)
  )
}

export interface PlacedLine {
  readonly line: LedgerLine
  readonly entity: string
}

/** An entry as the fold keeps it, and the story it belongs to. */
export function placeEntry({ envelope, hash, body }: StoredEntry): PlacedLine {
  const { happenedAt, prevHash: _, bodyHash: __, ...kept } = envelope
  const line = { ...kept, hash, instant: happenedAt.instant, zone: happenedAt.zone }
  if (body === null) return { line: { ...line, body: null, why: 'erased' }, entity: UNREAD }
  const read = readBody(envelope.kind, envelope.kindVersion, body.value)
  if (!read.ok) return { line: { ...line, body: null, why: read.why }, entity: UNREAD }
  return { line: { ...line, body: read.body }, entity: read.entity }
}

/**
 * Which of two copies of one id stands. An erased copy wins over its whole one; of two different lines that claim one
 * id the smaller hash stands, so that every device picks the same.
 */
export function standingCopy(kept: PlacedLine, arrived: PlacedLine): PlacedLine {
  if (kept.line.hash === arrived.line.hash) {
    if (arrived.line.why !== 'erased') return kept
    return kept.line.twin ? { ...arrived, line: { ...arrived.line, twin: true } } : arrived
  }
  const standing = kept.line.hash < arrived.line.hash ? kept : arrived
  return { ...standing, line: { ...standing.line, twin: true } }
}

/** Lines that corrected or withdrew the entry, in order, whether they stand or not. */
export function amendmentsOf(ledger: Ledger, entryId: string): readonly LedgerLine[] {
  return ledger.byEntity[`entry:${entryId}`] ?? []
}

/** Corrections of corrections of corrections: more than anyone writes by hand. */
const MOST_NESTED = 50

interface Amended {
  /** Null when withdrawn. */
  readonly line: LedgerLine | null
  readonly questions: readonly Question[]
}

/**
 * The line as it stands after corrections and withdrawals. The last of them decides; one that was itself withdrawn
 * counts for nothing. A correction that its kind cannot read, or that would move the entry to another story, changes
 * nothing and is asked about.
 */
export function amend(ledger: Ledger, line: LedgerLine, within: readonly string[] = []): Amended {
  // Unread lines stand as they are; so do amendments that name each other in a ring, or lie absurdly deep.
  if (line.why || within.includes(line.id) || within.length > MOST_NESTED) return { line, questions: [] }
  const inside = [...within, line.id]
  const standing = amendmentsOf(ledger, line.id).flatMap((each) => amend(ledger, each, inside).line ?? [])
  const last = standing.at(-1)
  if (!last) return { line, questions: [] }
  if (last.kind === 'entry-withdrawn') return { line: null, questions: [] }
  const { body, happenedAt } = last.body as { body: LedgerLine['body']; happenedAt?: string }
  const read = readBody(line.kind, KINDS[line.kind as Kind].version, body)
  const entity = entityOfLine(line)
  if (!read.ok || read.entity !== entity) {
    const params = { kind: line.kind, entryId: line.id }
    const question: Question = {
      code: 'question-correction-unreadable',
      params,
      entryIds: [line.id, last.id],
      entities: [entity],
    }
    return { line, questions: [question] }
  }
  const instant = happenedAt === undefined ? line.instant : toInstant(happenedAt)
  return { line: { ...line, body: read.body, instant }, questions: [] }
}

/** The story of a line that was read. */
export function entityOfLine({ kind, body }: LedgerLine): string {
  return (KINDS[kind as Kind] as unknown as KindDefinition).entity(body)
}

/**
 * Lines of a story as they stand, in order, with what must be asked about them. `mayBeAmended` false: the caller knows
 * that nothing corrects or withdraws any of them.
 */
export function standingLines(
  ledger: Ledger,
  entity: string,
  mayBeAmended = true,
): { lines: LedgerLine[]; questions: Question[] } {
  const lines: LedgerLine[] = []
  const questions: Question[] = []
  for (const line of ledger.byEntity[entity] ?? []) {
    const amended = mayBeAmended ? amend(ledger, line) : null
    if (amended) questions.push(...amended.questions)
    const standing = amended ? amended.line : line
    askOfLine(standing ?? line, entity, questions)
    if (standing) lines.push(standing)
  }
  return { lines: lines.sort(compareLines), questions }
}

/** A clock a few minutes off between two devices is common; more is asked about. */
const WRITTEN_BEFORE_TOLERANCE_MS = 10 * 60_000

function askOfLine(line: LedgerLine, entity: string, questions: Question[]): void {
  // Both are UTC to the millisecond, so their texts compare as their times do; most lines were written afterwards.
  const ahead = line.instant > line.writtenAt
  if (ahead && Date.parse(line.instant) - Date.parse(line.writtenAt) > WRITTEN_BEFORE_TOLERANCE_MS) {
    const params = { kind: line.kind, happenedAt: line.instant, writtenAt: line.writtenAt }
    questions.push({ code: 'question-happened-after-written', params, entryIds: [line.id], entities: [entity] })
  }
  if (line.twin) {
    const params = { kind: line.kind, entryId: line.id }
    questions.push({ code: 'question-two-entries-one-id', params, entryIds: [line.id], entities: [entity] })
  }
}
